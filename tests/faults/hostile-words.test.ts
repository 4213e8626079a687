/** Questions and records that nobody would say: always a reply, nothing written by asking, and nothing written that is not sound. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { clean } from '../../cli/say/clean.ts';
import { jsonLine } from '../../cli/say/json-line.ts';
import { plain } from '../../cli/say/plain.ts';
import { openOwn } from '../../cli/talk/open-flock.ts';
import { nothingYet } from '../../cli/talk/reply.ts';
import { turn } from '../../cli/talk/turn.ts';
import { shipped } from '../helpers/flock-of.ts';
import { lexiconFor } from '../helpers/learned.ts';
import { whites } from '../helpers/ledger-of.ts';
import { isFull, often, patience, tell } from './extent.ts';
import { rawText, sentenceOf, slowest } from './hostile.ts';

const today = '2026-05-14';
const lexicon = lexiconFor(shipped);
let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'penside-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const openNew = async (name: string) => {
  const path = join(folder, name);
  const flock = openOwn({
    book: shipped,
    lexicon,
    path,
    today,
    asOf: null,
    now: `${today}T07:00:00+00:00`,
    by: 'Ada',
  });
  await flock.record([whites]);
  return { flock, path };
};

const questions = Object.values(shipped.questions).flatMap(({ phrasings }) => phrasings);
const records = Object.values(shipped.records).flatMap(({ phrasings }) => phrasings);

test.each([
  ['questions', questions, false],
  ['records', records, true],
] as const)(
  '%s spoilt and raw',
  async (what, known, mayWrite) => {
    const times = often(150, 100_000);
    const took = slowest();
    const lines = fc.sample(
      fc.oneof({ weight: 1, arbitrary: sentenceOf(known) }, { weight: 4, arbitrary: rawText }),
      times,
    );
    let written = 0;
    let { flock, path } = await openNew('0.jsonl');
    let before = readFileSync(path, 'utf8');
    for (const [index, words] of lines.entries()) {
      // A small file a hundred lines long at most: what is timed is the line, not a lifetime of records.
      if (index % 100 === 99) {
        ({ flock, path } = await openNew(`${index}.jsonl`));
        before = readFileSync(path, 'utf8');
      }
      const reply = await took.timeLong(() =>
        turn(flock, words, nothingYet, { on: today, group: null, write: mayWrite }),
      );
      const rows = [...plain(reply.tokens, 60), jsonLine(reply.json)];
      expect({ words, rows }).toEqual({ words, rows: rows.map(clean) });
      const after = readFileSync(path, 'utf8');
      if (after === before) continue;
      expect({ words, mayWrite, isAdded: after.startsWith(before) }).toEqual({
        words,
        mayWrite: true,
        isAdded: true,
      });
      // What was written was said to be, and brought nothing grave with it.
      expect({ words, recorded: reply.record?.recorded }).toEqual({
        words,
        recorded: after
          .slice(before.length)
          .trimEnd()
          .split('\n')
          .map((line) => JSON.parse(line)),
      });
      expect({
        words,
        grave: flock
          .engine()
          .check(today)
          .filter(({ grave }) => grave),
      }).toEqual({ words, grave: [] });
      written += 1;
      before = after;
    }
    if (isFull) expect(took.worst()).toBeLessThan(100);
    tell({ what, times, lost: 0, note: `${written} wrote a record, slowest ${took.worst().toFixed(1)} ms` });
  },
  patience,
);
