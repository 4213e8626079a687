/**
 * How long a season plan takes: two and three batches and two kinds, as ratios of one batch and of a bare daily round.
 * `npx tsx tests/bench/season-plan.ts` prints the table.
 */
import { cpus } from 'node:os';
import { openDemo } from '../../cli/talk/open-flock.ts';
import { nothingYet } from '../../cli/talk/reply.ts';
import { turn } from '../../cli/talk/turn.ts';
import { lexiconFor } from '../helpers/learned.ts';
import { rulebook } from '../helpers/rulebook-of.ts';

const today = '2026-05-14';
const rounds = 5;
const { book } = rulebook();
const lexicon = lexiconFor(book);

const lines = [
  ['daily round', 'what needs doing today'],
  ['one batch', 'plan one batch of 20 birds'],
  ['two batches', 'plan two batches of 20 birds'],
  ['three batches', 'plan three batches of 20 birds'],
  ['two kinds', 'plan one batch of whites and one batch of reds'],
] as const;

/** Milliseconds from the words to the tokens, over a flock opened anew so that nothing is remembered. */
const answerOf = async (words: string): Promise<number> => {
  const flock = openDemo({ book, lexicon, today, asOf: null });
  const from = performance.now();
  await turn(flock, words, nothingYet, { on: today, group: null, write: false, notes: false });
  return performance.now() - from;
};

const median = (numbers: readonly number[]): number =>
  [...numbers].sort((one, other) => one - other)[Math.floor(numbers.length / 2)] ?? 0;

const taken = new Map<string, number[]>(lines.map(([name]) => [name, []]));
for (const [, words] of lines) await answerOf(words);
// Taken in turn, so that a busy moment of the machine falls on all of them.
for (let round = 0; round < rounds; round += 1)
  for (const [name, words] of lines) taken.get(name)?.push(await answerOf(words));

const of = (name: string): number => median(taken.get(name) ?? []);
const row = (name: string): string => {
  const ratios = [of(name) / of('one batch'), of(name) / of('daily round')];
  return `| ${name.padEnd(14)} | ${of(name).toFixed(0).padStart(5)} | ${ratios.map((each) => each.toFixed(2).padStart(9)).join(' | ')} |`;
};

process.stdout.write(
  [
    `Node ${process.version}, ${cpus().length} × ${cpus()[0]?.model ?? 'unknown'}, median of ${rounds}`,
    '',
    '| answer         |    ms | one batch | daily rnd |',
    '|----------------|-------|-----------|-----------|',
    ...lines.map(([name]) => row(name)),
    '',
  ].join('\n'),
);
