/**
 * How much processor time a season plan takes, which shall be less than a second: one, two and three batches of a year and
 * two kinds, in a flock with birds and in an empty one. `npx tsx tests/bench/season-plan.ts` prints the table and fails
 * where it is more.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Flock } from '../../cli/talk/flock.ts';
import { openDemo, openOwn } from '../../cli/talk/open-flock.ts';
import { nothingYet } from '../../cli/talk/reply.ts';
import { turn } from '../../cli/talk/turn.ts';
import { lexiconFor } from '../helpers/learned.ts';
import { rulebook } from '../helpers/rulebook-of.ts';

const today = '2026-05-14';
const rounds = 5;
const { book } = rulebook();
const lexicon = lexiconFor(book);
const folder = mkdtempSync(join(tmpdir(), 'penside-'));
const empty = join(folder, 'flock.jsonl');

const lines = [
  ['one batch', 'plan one batch of 20 birds'],
  ['two batches', 'plan two batches of 20 birds'],
  ['three batches', 'plan three batches of 20 birds'],
  ['two kinds', 'plan one batch of whites and one batch of reds'],
  ['a month asked', 'why not start chicks in january'],
] as const;

/** Processor time in milliseconds that a plan may take. */
const most = 1000;

const flocks: readonly (readonly [string, () => Flock])[] = [
  ['with birds', () => openDemo({ book, lexicon, today, asOf: null })],
  [
    'empty',
    () =>
      openOwn({ book, lexicon, path: empty, today, asOf: null, now: `${today}T07:00:00+00:00`, by: null }),
  ],
];

/** Milliseconds of processor time, all threads, from the words to the tokens, over a flock opened anew so that nothing is remembered. */
const answerOf = async (flock: Flock, words: string): Promise<number> => {
  const from = process.cpuUsage();
  await turn(flock, words, nothingYet, { on: today, group: null, write: false, notes: false });
  const { user, system } = process.cpuUsage(from);
  return (user + system) / 1000;
};

const median = (numbers: readonly number[]): number =>
  [...numbers].sort((one, other) => one - other)[Math.floor(numbers.length / 2)] ?? 0;

const runs = flocks.flatMap(([flock, open]) =>
  lines.map(([name, words]) => ({ flock, name, once: () => answerOf(open(), words), taken: [] as number[] })),
);
for (const { once } of runs) await once();
// Taken in turn, so that a busy moment of the machine falls on all of them.
for (let round = 0; round < rounds; round += 1) for (const { once, taken } of runs) taken.push(await once());

const row = (name: string, of: (flock: string) => number): string =>
  `| ${name.padEnd(13)} | ${flocks.map(([flock]) => of(flock).toFixed(0).padStart(10)).join(' | ')} |`;
const of = (name: string, flock: string): number =>
  median(runs.find((run) => run.name === name && run.flock === flock)?.taken ?? []);

process.stdout.write(
  [
    `Node ${process.version}, ${cpus().length} × ${cpus()[0]?.model ?? 'unknown'}, processor time in ms, median of ${rounds}, ${most} wanted`,
    '',
    `| plan          | ${flocks.map(([flock]) => flock.padStart(10)).join(' | ')} |`,
    `|---------------|${flocks.map(() => '------------').join('|')}|`,
    ...lines.map(([name]) => row(name, (flock) => of(name, flock))),
    '',
  ].join('\n'),
);
rmSync(folder, { recursive: true });
if (runs.some(({ taken }) => median(taken) > most)) process.exitCode = 1;
