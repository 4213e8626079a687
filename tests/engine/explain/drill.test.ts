/** One level down an answer, step by step to the entry it came from. */
import { expect, test } from 'vitest';
import { stepOf, stepsBehind, stepsInto } from '../../../engine/explain/drill.ts';
import { ask, flockOf, partOf } from '../../helpers/flock-of.ts';
import { ready, today } from '../ask/go-out-flock.ts';

const answer = await ask(flockOf(...ready), 'go-out', today);
const reasonFor = (fact: string) => {
  const found = partOf(answer).reasons.find((reason) => reason.fact.id === fact);
  if (found === undefined) throw new Error(`no reason about ${fact}`);
  return found;
};

test('a reason leads to its fact and to the fact it was held against', () => {
  expect(stepsBehind(answer, reasonFor('night-low')).map(({ fact, group }) => [fact, group])).toEqual([
    ['night-low', null],
    ['night-floor', 'reds'],
  ]);
  expect(stepsBehind(answer, reasonFor('age')).map(({ fact }) => fact)).toEqual(['age']);
});

test('a step leads to the steps that went into it, down to the ledger line', () => {
  const [room] = stepsBehind(answer, reasonFor('pen-room'));
  if (room === undefined) throw new Error('no step');
  expect(stepsInto(answer, room).map(({ fact }) => fact)).toEqual([
    'pen-area',
    'pens',
    'birds-in-pens',
    'alive',
    'place',
  ]);
  expect(stepOf(answer, 'pen-area', 'reds')?.entries).toEqual([{ on: '2026-05-04', line: 2 }]);
});

test('what was never worked out, or not for that group, is not made up', () => {
  expect(stepOf(answer, 'feed-left', null)).toBeUndefined();
  expect(stepOf(answer, 'age', 'whites')).toBeUndefined();
});
