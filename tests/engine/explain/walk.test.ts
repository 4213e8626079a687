/** Any number that an answer of the demo says can be walked down to entries, figures and assumptions, with nothing left over. */
import { describe, expect, test } from 'vitest';
import { demoLedger } from '../../../cli/demo/demo.ts';
import {
  partsOf,
  stepOf,
  stepsAt,
  stepsBehind,
  stepsInto,
  stepsSaid,
} from '../../../engine/explain/drill.ts';
import { openText } from '../../../engine/index.ts';
import type { Answer, Step } from '../../../engine/types.ts';
import { ask, shipped } from '../../helpers/flock-of.ts';

const today = '2026-05-14';
const flock = openText(shipped, 'demo', demoLedger(today));
const questions = Object.values(shipped.questions).filter(({ kind }) => kind !== 'about');

/** Nothing of the kind is on record: there is no line to point at. */
const isNothing = (step: Step): boolean =>
  step.value === null || ['0', 'false', 'no', 'none', ''].includes(String(step.value));

/** Facts of the question itself, or of a group that it tries: they rest on what was asked. */
const ofTheQuestion = new Set(['span-days', 'today-is', 'batch-hatch', 'batch-arrives', 'batch-kind']);

const isGround = (step: Step): boolean =>
  step.facts.length > 0 ||
  step.figures.length > 0 ||
  step.entries.length > 0 ||
  step.assumed.length > 0 ||
  step.supposed;

/** Every step below some steps, themselves included. */
const below = (answer: Answer, steps: readonly Step[], seen = new Set<Step>()): ReadonlySet<Step> => {
  for (const step of steps) {
    if (seen.has(step)) continue;
    seen.add(step);
    below(answer, stepsInto(answer, step), seen);
  }
  return seen;
};

describe.each(questions.map(({ id }) => id))('%s', (question) => {
  test('says no value that leads nowhere', async () => {
    const answer = await ask(flock, question, today);
    const said = stepsSaid(answer);
    expect(said.length).toBeGreaterThan(0);
    const all = [...below(answer, said)];
    const lost = all.flatMap((step) =>
      step.facts.filter(({ fact, group }) => stepOf(answer, fact, group) === undefined),
    );
    expect(lost).toEqual([]);
    const bare = all.filter((step) => !isGround(step) && !isNothing(step) && !ofTheQuestion.has(step.fact));
    expect(bare.map(({ fact, value }) => [fact, value])).toEqual([]);
  });

  test('rests on lines that are there and figures with a source', async () => {
    const answer = await ask(flock, question, today);
    const all = [...below(answer, stepsSaid(answer))];
    const lines = all.flatMap(({ entries }) => entries);
    expect(lines.filter(({ line }) => flock.lines[line - 1] === undefined)).toEqual([]);
    const figures = all.flatMap((step) => step.figures);
    expect(figures.filter(({ source }) => shipped.sources[source] === undefined)).toEqual([]);
  });

  test('gives every fact, figure and other side that a reason names a way down', async () => {
    const answer = await ask(flock, question, today);
    for (const reason of answer.parts.flatMap(({ reasons }) => reasons)) {
      const ids = stepsBehind(answer, reason).map(({ fact }) => fact);
      const named = Object.keys(reason.says.values).filter(
        (name) => !['group', 'on', 'until'].includes(name) && !name.includes('/'),
      );
      expect(ids).toEqual(expect.arrayContaining([reason.fact.id, ...named]));
    }
  });
});

test('a way of numbers leads to the part with that number, or nowhere', async () => {
  const answer = await ask(flock, 'feed-amount', today, { groups: ['whites'] });
  const [reason] = answer.parts.flatMap(({ reasons }) => reasons);
  if (reason === undefined) throw new Error('no reason');
  const top = stepsBehind(answer, reason);
  const parts = partsOf(answer, top);
  expect(stepsAt(answer, top, [])).toEqual(top);
  expect(stepsAt(answer, top, [4])).toEqual([parts[3]]);
  const birds = parts.findIndex(({ fact }) => fact === 'alive') + 1;
  expect(stepsAt(answer, top, [birds, 1])?.map(({ fact }) => fact)).toEqual(['lost']);
  expect(stepsAt(answer, top, [parts.length + 1])).toBeUndefined();
  expect(stepsAt(answer, top, [0])).toBeUndefined();
});
