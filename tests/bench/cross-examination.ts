/**
 * What it costs to ask back, as ratios to the answer itself: what has changed since yesterday, and the search for what would turn
 * it beside the answer without that search and without a look ahead. `npx tsx tests/bench/cross-examination.ts` prints the table.
 */
import { cpus } from 'node:os';
import { demoLedger } from '../../cli/demo/demo.ts';
import { answer, type Depth } from '../../engine/ask/ask.ts';
import { rememberWorkings } from '../../engine/ask/world.ts';
import { addDays } from '../../engine/day.ts';
import { allFacts } from '../../engine/facts/index.ts';
import { openText } from '../../engine/index.ts';
import type { Moment, Request } from '../../engine/types.ts';
import { rulebook } from '../helpers/rulebook-of.ts';

const today = '2026-05-14';
const yesterday = addDays(today, -1);
const now: Moment = { on: today, asOf: null, lines: null };
const then: Moment = { on: yesterday, asOf: yesterday, lines: null };
const rounds = 20;
/** Rounds before those, so that none of them pays for compiling. */
const warming = 4;
const { book } = rulebook();
const ledger = demoLedger(today);

/** Milliseconds of processor time: what else runs on the machine counts for nothing. */
const costOf = async (work: () => Promise<unknown>): Promise<number> => {
  const from = process.cpuUsage();
  await work();
  const { user, system } = process.cpuUsage(from);
  return (user + system) / 1000;
};

/** An answer as deep as said, over a flock opened anew so that nothing is remembered. */
const answerTo = (request: Request, depth: Depth): (() => Promise<unknown>) => {
  const state = openText(book, 'demo', ledger).state(now);
  const world = { book, facts: allFacts, state, problems: [], memory: rememberWorkings() };
  return () => answer(world, request, depth);
};

/** What is taken in turn, each time prepared anew. */
const works = {
  ask: (request) => {
    const engine = openText(book, 'demo', ledger);
    return () => engine.ask(request);
  },
  changed: (request) => {
    const engine = openText(book, 'demo', ledger);
    return () => engine.audit(null).compare(request, { moment: then, advice: null });
  },
  now: (request) => answerTo(request, 'now'),
  when: (request) => answerTo(request, 'when'),
  all: (request) => answerTo(request, 'all'),
} satisfies Readonly<Record<string, (request: Request) => () => Promise<unknown>>>;

type Name = keyof typeof works;

/** The mean of all rounds for each, so that collecting garbage falls on whatever made it: a short work may have a round without. */
const costsOf = async (question: string): Promise<Readonly<Record<Name, number>>> => {
  const request: Request = { question, groups: [], moment: now, until: null, supposing: [] };
  const mean: Record<Name, number> = { ask: 0, changed: 0, now: 0, when: 0, all: 0 };
  for (let round = -warming; round < rounds; round += 1)
    for (const name of Object.keys(works) as Name[]) {
      const cost = await costOf(works[name](request));
      if (round >= 0) mean[name] += cost / rounds;
    }
  return mean;
};

const cell = (text: string, width: number): string => text.padStart(width);

const rowOf = async (id: string, turns: boolean): Promise<string> => {
  const { ask, changed, now: bare, when, all } = await costsOf(id);
  const search = turns ? [(all / bare).toFixed(1), ((all - when) / bare).toFixed(1)] : ['', ''];
  const cells = [cell(ask.toFixed(1), 7), cell(changed.toFixed(1), 9), cell((changed / ask).toFixed(2), 5)];
  return `| ${[id.padEnd(16), ...cells, ...search.map((each) => cell(each, 6))].join(' | ')} |`;
};

const rows: string[] = [];
for (const { id, kind, turns } of Object.values(book.questions))
  if (kind !== 'about') rows.push(await rowOf(id, turns));

process.stdout.write(
  [
    `Node ${process.version}, ${cpus().length} × ${cpus()[0]?.model ?? 'unknown'}, mean of ${rounds}, processor time in ms`,
    '',
    '| question         |  answer | changed   | ratio | whole  | search |',
    '|------------------|---------|-----------|-------|--------|--------|',
    ...rows,
    '',
    'ratio: what-changed to one answer. whole, search: the answer with look ahead and search, and the search by itself, to the',
    'bare answer.',
    '',
  ].join('\n'),
);
