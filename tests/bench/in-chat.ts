/** How long a question takes in an open chat over 10,000 entries, from Enter to the text: every question, asked in turn. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { plain } from '../../cli/say/plain.ts';
import { openOwn } from '../../cli/talk/open-flock.ts';
import { nothingYet } from '../../cli/talk/reply.ts';
import { turn } from '../../cli/talk/turn.ts';
import { lexiconFor } from '../helpers/learned.ts';
import { rulebook } from '../helpers/rulebook-of.ts';
import { longLedger } from './long-ledger.ts';
import { median, printTable, quantile } from './table.ts';

const today = '2026-05-14';
const rounds = 2;
const { book } = rulebook();
const folder = mkdtempSync(join(tmpdir(), 'penside-bench-'));
const path = join(folder, 'flock.jsonl');
const taken = new Map<string, number[]>();

try {
  writeFileSync(path, longLedger(today, 10_000));
  const lexicon = lexiconFor(book);
  const opening = { book, lexicon, path, today, asOf: null, now: `${today}T07:00:00+00:00`, by: null };
  const flock = openOwn(opening);
  const ask = async (words: string): Promise<number> => {
    const from = performance.now();
    const reply = await turn(flock, words, nothingYet, {
      on: today,
      group: null,
      write: false,
      notes: false,
    });
    plain(reply.tokens, 80);
    return performance.now() - from;
  };
  for (let round = 0; round <= rounds; round += 1) {
    for (const { id, example } of Object.values(book.questions)) {
      const ms = await ask(example);
      // The first round warms up.
      if (round > 0) taken.set(id, [...(taken.get(id) ?? []), ms]);
    }
  }
} finally {
  rmSync(folder, { recursive: true });
}

const all = [...taken.values()].flat();
const slowest = [...taken].sort((one, other) => median(other[1]) - median(one[1])).slice(0, 12);
const ms = (value: number): string => value.toFixed(1);
printTable('A question in the chat over 10,000 entries, ms', [
  ['', 'p50', 'p90', 'p99'],
  ['all questions', ms(median(all)), ms(quantile(all, 0.9)), ms(quantile(all, 0.99))],
  ...slowest.map(([id, each]) => [id, ms(median(each)), ms(quantile(each, 0.9)), ms(quantile(each, 0.99))]),
]);
