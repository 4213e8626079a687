/** The flocks that answers are replayed over: the five seasons as lived, the demo, and what the conversations leave on record. */
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { demoLedger } from '../../cli/demo/demo.ts';
import { openOwn } from '../../cli/talk/open-flock.ts';
import { type Memory, nothingYet } from '../../cli/talk/reply.ts';
import { turn } from '../../cli/talk/turn.ts';
import type { Lexicon } from '../../cli/understand/lexicon.ts';
import { addDays } from '../../engine/day.ts';
import type { Rulebook } from '../../engine/types.ts';
import { isShell } from '../helpers/play-shell.ts';
import { seasons } from '../seasons/five.ts';
import { liveSeason } from '../seasons/live.ts';

/** A flock file, and the days it is asked about with how much of it is believed on each. */
export interface Golden {
  readonly name: string;
  readonly ledger: string;
  readonly moments: readonly { readonly on: string; readonly lines: number }[];
}

const linesOf = (ledger: string): readonly string[] => ledger.split('\n').filter((line) => line !== '');

/** Lives the seasons; the answers of every so many mornings are asked for, each as it was known before the day's work. */
const livedSeasons = async (book: Rulebook, lexicon: Lexicon, step: number): Promise<readonly Golden[]> => {
  const golden: Golden[] = [];
  for (const season of seasons) {
    const { ledger } = await liveSeason(book, lexicon, season, season.days);
    const written = linesOf(ledger).map((line): string => JSON.parse(line).written);
    const mornings = Array.from({ length: Math.ceil(season.days / step) }, (_, at) =>
      addDays(season.first, at * step),
    );
    golden.push({
      name: season.name,
      ledger,
      moments: mornings.map((on) => ({
        on,
        lines: written.filter((when) => when < `${on}T07:30`).length,
      })),
    });
  }
  return golden;
};

/** What a conversation with an own flock leaves on record; null where it leaves nothing. */
const toldIn = async (
  book: Rulebook,
  lexicon: Lexicon,
  name: string,
  text: string,
): Promise<Golden | null> => {
  const folder = mkdtempSync(join(tmpdir(), 'penside-'));
  const path = join(folder, 'flock.jsonl');
  try {
    let today = /^today: (\S+)/m.exec(text)?.[1] ?? '';
    let memory: Memory = nothingYet;
    for (const line of text.split('\n')) {
      if (line.startsWith('today: ')) today = line.slice('today: '.length);
      if (!line.startsWith('> ')) continue;
      const now = `${today}T07:00:00+00:00`;
      const flock = openOwn({ book, lexicon, path, today, asOf: null, now, by: null });
      ({ memory } = await turn(flock, line.slice('> '.length), memory, {
        on: today,
        group: null,
        write: true,
      }));
    }
    const ledger = readFileSync(path, 'utf8');
    return { name, ledger, moments: [{ on: today, lines: linesOf(ledger).length }] };
  } catch (error) {
    // A conversation that only asks leaves no file.
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return null;
    throw error;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};

const conversations = new URL('../conversations/', import.meta.url);

/** What each conversation leaves on record, by the name of its file. */
const toldInConversations = async (book: Rulebook, lexicon: Lexicon): Promise<readonly Golden[]> => {
  const golden: Golden[] = [];
  for (const file of readdirSync(conversations)
    .filter((name) => name.endsWith('.txt'))
    .sort()) {
    const text = readFileSync(new URL(file, conversations), 'utf8');
    const isAsked = isShell(text) || !/^flock: empty$/m.test(text);
    const told = isAsked ? null : await toldIn(book, lexicon, file.replace(/\.txt$/, ''), text);
    if (told !== null) golden.push(told);
  }
  return golden;
};

/** The demo as it is on one day; it is dated back from any. */
const demo = (): Golden => {
  const on = '2026-05-14';
  const ledger = demoLedger(on);
  return { name: 'the demo', ledger, moments: [{ on, lines: linesOf(ledger).length }] };
};

/** All of them. @param step days between two mornings of a season that are asked about */
export const goldenFlocks = async (
  book: Rulebook,
  lexicon: Lexicon,
  step: number,
): Promise<readonly Golden[]> => [
  ...(await livedSeasons(book, lexicon, step)),
  demo(),
  ...(await toldInConversations(book, lexicon)),
];
