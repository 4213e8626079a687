/** No step keeps to itself what it was made of: whatever other fact was looked at for it is among the facts that "why" goes down to. */
import { expect, test } from 'vitest';
import { demoLedger } from '../../../cli/demo/demo.ts';
import { answer } from '../../../engine/ask/ask.ts';
import { rankedRules } from '../../../engine/ask/ranked-rules.ts';
import { allFacts } from '../../../engine/facts/index.ts';
import type { Known } from '../../../engine/facts/memory.ts';
import { openText } from '../../../engine/index.ts';
import { runRules } from '../../../engine/reason/run.ts';
import { shipped } from '../../helpers/flock-of.ts';

const today = '2026-05-14';
const moment = { on: today, asOf: null, lines: null };
const state = openText(shipped, 'demo', demoLedger(today)).state(moment);
const questions = Object.values(shipped.questions).filter(
  ({ kind, tries }) => kind !== 'about' && tries === null,
);

test.each(questions.map(({ id }) => id))('%s', async (question) => {
  const hidden: string[] = [];
  let kept = 0;
  const watching: Known = {
    recall: () => undefined,
    keep: (_, step, seen) => {
      kept += 1;
      for (const { read } of seen)
        if ('fact' in read && !step.facts.some(({ fact }) => fact === read.fact))
          hidden.push(`${step.fact} hides ${read.fact}`);
    },
  };
  const world = { book: shipped, facts: allFacts, state, problems: [] };
  const request = { question, groups: [], moment, until: null, supposing: [] };
  await answer(
    { ...world, memory: { facts: { around: () => watching }, run: runRules, ranked: rankedRules } },
    request,
    'now',
  );
  expect([hidden, kept > 0]).toEqual([[], true]);
});
