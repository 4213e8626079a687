/** The answer for scripts: always the same keys, units of the place, digits as they are. */
import { describe, expect, test } from 'vitest';
import { answerAsJson, emptyJson, type Heard, jointVerdict } from '../../../cli/say/as-json.ts';
import { answer } from '../../../engine/ask/ask.ts';
import type { Gives, Part } from '../../../engine/types.ts';
import { shipped } from '../../helpers/flock-of.ts';
import { factsOf, on, request, world } from '../../helpers/small-flock.ts';
import { smallRulebook } from '../../helpers/small-rulebook.ts';
import { speechIn } from '../../helpers/small-speech.ts';

const heard: Heard = {
  question: 'go-out',
  group: 'reds',
  on,
  until: null,
  slots: { horizon: null },
  supposing: [],
  assumed: ['tonight means 8 May'],
};
const reds = request({ groups: ['reds'] });

test('one answer, key by key', async () => {
  const json = answerAsJson(
    speechIn('us'),
    'can the reds go out',
    heard,
    await answer(world(factsOf({ reds: 21 }, 18)), reds),
  );
  expect(json).toEqual({
    asked: 'can the reds go out',
    heard: { ...heard, assumed: ['tonight means 8 May', 'no frost is on record, so none is taken'] },
    verdict: 'yes',
    headline: 'Yes, the reds can go out.',
    results: [
      { id: 'age', value: 21, unit: 'day', group: 'reds' },
      { id: 'first-day', value: on, unit: 'date', group: 'reds' },
    ],
    when: null,
    'turns-on': [
      {
        fact: 'age',
        from: 21,
        to: 13,
        unit: 'day',
        and: null,
        says: expect.stringContaining('13 days'),
      },
    ],
    reasons: [
      {
        n: 1,
        rule: 'go-out/may-go',
        outcome: 'held',
        says: 'They are 21 days old, and the least is 14 days',
        fact: { id: 'age', value: 21, unit: 'day' },
        operator: 'at-least',
        figure: { id: 'out/youngest', value: 14, unit: 'day', from: '2026-01-01' },
        source: 'own judgement',
        why: 'old enough for the night',
      },
      {
        n: 2,
        rule: 'go-out/may-go',
        outcome: 'held',
        says: 'Tonight is 64 °F, and 50 °F is the least',
        // Not rounded as in the sentence: 18 °C are 64.4 °F.
        fact: { id: 'night-low', value: 64.4, unit: 'F' },
        operator: 'at-least',
        figure: { id: 'out/lowest-night', value: 50, unit: 'F', from: '2026-01-01' },
        source: 'own judgement',
        why: 'old enough for the night',
      },
    ],
    unknown: [],
    cautions: [],
    steps: [
      { id: 'go-out/may-go', says: 'Move the reds out.', due: 'morning', done: false, rule: 'go-out/may-go' },
    ],
    choices: [],
    difference: null,
    'passed-over': [
      {
        rule: 'go-out/too-young',
        group: 'reds',
        gives: 'no',
        outcome: 'failed',
        'stopped-by': [
          {
            rule: 'go-out/too-young',
            outcome: 'failed',
            says: 'They are 21 days old, and the least is 14 days',
            fact: { id: 'age', value: 21, unit: 'day' },
            operator: 'less-than',
            figure: { id: 'out/youngest', value: 14, unit: 'day', from: '2026-01-01' },
            source: 'own judgement',
            why: 'a younger bird cannot hold its warmth',
          },
        ],
      },
    ],
    picture: null,
    ref: `4-${smallRulebook().book.hash}-${on}`,
  });
});

test('what is not known has the question and a line to type', async () => {
  const json = answerAsJson(speechIn('metric'), '', heard, await answer(world(factsOf({ reds: 21 })), reds));
  expect(json.verdict).toBe('cannot-say');
  expect(json.headline).toBe('I cannot say yet for the reds: I do not know the coldest night.');
  expect(json.unknown).toEqual([
    { fact: 'night-low', ask: 'How cold will it be?', tell: 'low of 48 tonight' },
  ]);
  expect(json.reasons).toMatchObject([{ fact: { id: 'night-low', value: null }, outcome: 'unknown' }]);
});

test('every answer has the same keys, with or without a meaning, in either system', async () => {
  const keys = Object.keys(emptyJson('?', heard));
  const answers = await Promise.all(
    [18, undefined].map((low) => answer(world(factsOf({ reds: 21 }, low)), reds)),
  );
  for (const each of answers) {
    for (const system of ['us', 'metric'] as const) {
      const json = answerAsJson(speechIn(system), '?', heard, each);
      expect(Object.keys(json)).toEqual(keys);
      expect(JSON.parse(JSON.stringify(json))).toEqual(json);
    }
  }
  expect(emptyJson('?', heard)).toEqual({
    asked: '?',
    heard,
    verdict: 'not-understood',
    headline: '',
    results: [],
    when: null,
    'turns-on': [],
    reasons: [],
    unknown: [],
    cautions: [],
    steps: [],
    choices: [],
    difference: null,
    'passed-over': [],
    picture: null,
    ref: null,
  });
});

test('a share stays a share, and digits that only the conversion made are dropped', async () => {
  const whole = await answer(world(factsOf({ reds: 21 }, 18)), reds);
  const results = [
    { id: 'share', fact: 'share', group: null, value: 0.1 + 0.2, unit: 'ratio' },
    { id: 'low', fact: 'night-low', group: null, value: 12.777777777777779, unit: 'C' },
    { id: 'kind', fact: 'kind', group: 'reds', value: 'slow', unit: null },
  ];
  const inSystem = (system: 'us' | 'metric') =>
    answerAsJson(speechIn(system, shipped), '?', heard, { ...whole, results }).results;
  expect(inSystem('us')).toEqual([
    { id: 'share', value: 0.3, unit: 'ratio', group: null },
    { id: 'low', value: 55, unit: 'F', group: null },
    { id: 'kind', value: 'slow', unit: null, group: 'reds' },
  ]);
  // A fact may be shown to people in percent; for scripts it is a ratio all the same.
  const words = {
    id: 'share',
    name: '',
    how: '',
    ask: null,
    tell: null,
    fixed: false,
    supposedBy: [],
    shown: { us: 'percent', metric: 'percent' },
  };
  const book = { ...shipped, facts: { ...shipped.facts, share: words } };
  expect(answerAsJson(speechIn('us', book), '?', heard, { ...whole, results }).results[0]).toEqual({
    id: 'share',
    value: 0.3,
    unit: 'ratio',
    group: null,
  });
});

describe('one verdict for several groups', () => {
  const joint = (...verdicts: readonly Gives[]) =>
    jointVerdict(verdicts.map((verdict) => ({ verdict }) as Part));

  test('is the one that asks for the most care', () => {
    expect(joint('yes', 'yes')).toBe('yes');
    expect(joint('yes', 'no')).toBe('no');
    expect(joint('no', 'cannot-say', 'yes')).toBe('cannot-say');
    expect(joint('amount', 'amount')).toBe('amount');
    expect(joint()).toBe('cannot-say');
  });
});
