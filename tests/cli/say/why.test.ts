/** "why" and "why 2": the rules behind an answer, and one reason down to figures and ledger lines. */
import { expect, test } from 'vitest';
import { sayWhy, sayWorking } from '../../../cli/say/why.ts';
import { answer } from '../../../engine/ask/ask.ts';
import { factsOf, request, world } from '../../helpers/small-flock.ts';
import { speechIn } from '../../helpers/small-speech.ts';

const us = speechIn('us');
const told = (supposing: ReturnType<typeof request>['supposing'] = []) =>
  answer(world(factsOf({ reds: 21 }, 18)), request({ groups: ['reds'], supposing }));
const lines = ['{"kind":"arrive"}', '{"kind":"weather","low":"64.4 F"}'];

const oldEnough = {
  t: 'reason',
  n: 1,
  text: 'They are 21 days old, and the least is 14 days',
  outcome: 'held',
  note: 'out/youngest 14 days, own judgement',
};
const warmEnough = {
  t: 'reason',
  n: 2,
  text: 'Tonight is 64 °F, and 50 °F is the least',
  outcome: 'held',
  note: 'out/lowest-night 50 °F, own judgement',
};
const rule = { t: 'detail', text: 'Rule go-out/may-go: old enough for the night (own judgement).' };

test('why gives the claim, its rule once, every reason, what was taken for granted, and how to go on', async () => {
  expect(sayWhy(us, await told())).toEqual([
    { t: 'claim', text: 'Yes, the reds can go out.' },
    rule,
    oldEnough,
    warmEnough,
    { t: 'detail', text: 'Taken for granted: no frost is on record, so none is taken.' },
    { t: 'next', text: 'Say "why 1" to "why 2" to open one of them.' },
  ]);
});

test('why 2 opens both sides of the comparison: working, parts, figures and lines', async () => {
  const whole = await told();
  const reason = whole.parts[0]?.reasons[1];
  if (reason === undefined) throw new Error('no second reason');
  expect(sayWorking(us, whole, lines, reason)).toEqual([
    warmEnough,
    { t: 'heading', text: 'The coldest night: 64 °F' },
    { t: 'detail', text: 'As told.' },
    { t: 'detail', text: `Line 2: ${lines[1]}` },
    { t: 'detail', text: 'Taken for granted: no frost is on record, so none is taken.' },
    { t: 'heading', text: 'The coldest night they can stand: 50 °F' },
    { t: 'detail', text: '50 °F at 21 days.' },
    { t: 'detail', text: '2.1 How old they are: 21 days.' },
    { t: 'figure', text: 'out/lowest-night 50 °F, own judgement' },
    rule,
    { t: 'next', text: 'Say "why 2.1" to go on down.' },
  ]);
});

test('what was supposed is said to be supposed, not worked out', async () => {
  const whole = await told([{ what: { fact: 'night-low' }, value: 20, adds: false }]);
  const reason = whole.parts[0]?.reasons[1];
  if (reason === undefined) throw new Error('no second reason');
  expect(sayWorking(us, whole, lines, reason).slice(1, 3)).toEqual([
    { t: 'heading', text: 'The coldest night: 68 °F' },
    { t: 'detail', text: 'Supposed.' },
  ]);
});

test('without a reason there is nothing to open', async () => {
  const nothing = await answer(world(factsOf({})), request({ groups: ['greys'] }));
  expect(sayWhy(us, nothing)).toEqual([{ t: 'claim', text: 'Nothing to say for the greys here.' }]);
});
