/** A whole answer as tokens, in the order in which it is read: claim, reasons, what is open, what would turn it, the rest. */
import { describe, expect, test } from 'vitest';
import {
  sayAnswer,
  sayClaim,
  sayClaims,
  sayMissing,
  sayTogether,
  sayTurnsOn,
} from '../../../cli/say/answer.ts';
import { answer } from '../../../engine/ask/ask.ts';
import type { Answer, Assumed, Part } from '../../../engine/types.ts';
import { factsOf, request, world } from '../../helpers/small-flock.ts';
import { changed, smallRulebook } from '../../helpers/small-rulebook.ts';
import { speechIn } from '../../helpers/small-speech.ts';

const us = speechIn('us');
const both = (low?: number): Promise<Answer> =>
  answer(world(factsOf({ whites: 13, reds: 21 }, low)), request());
const firstOf = ({ parts: [part] }: Answer): Part => {
  if (part === undefined) throw new Error('no part');
  return part;
};
const note = 'out/youngest 14 days, own judgement';

test('an answer for two groups claims for both, then gives the reasons of each', async () => {
  expect(sayAnswer(us, await both(18))).toEqual([
    { t: 'claim', text: 'Not yet: the whites are too young.' },
    { t: 'claim', text: 'Yes, the reds can go out.' },
    { t: 'heading', text: 'The whites' },
    { t: 'reason', n: 1, text: 'They are 13 days old, and the least is 14 days', outcome: 'held', note },
    {
      t: 'next',
      text: 'It would turn to yes if how old they are were 14 days instead of 13 days and the coldest night were 65 °F instead of 64 °F.',
    },
    { t: 'heading', text: 'The reds' },
    { t: 'reason', n: 2, text: 'They are 21 days old, and the least is 14 days', outcome: 'held', note },
    {
      t: 'reason',
      n: 3,
      text: 'Tonight is 64 °F, and 50 °F is the least',
      outcome: 'held',
      note: 'out/lowest-night 50 °F, own judgement',
    },
    {
      t: 'next',
      text: expect.stringMatching(/^It would turn to no if how old they are .*13 days.*21 days\.$/),
    },
    { t: 'detail', text: 'Taken for granted: no frost is on record, so none is taken.' },
  ]);
});

test('an answer that waits for something says for what, asks for it, and gives a line to type', async () => {
  const open = await answer(world(factsOf({ reds: 21 })), request({ groups: ['reds'] }));
  expect(sayAnswer(us, open)).toEqual([
    { t: 'claim', text: 'I cannot say yet for the reds: I do not know the coldest night.' },
    {
      t: 'reason',
      n: 1,
      text: 'The coldest night',
      outcome: 'not known',
      note: 'out/lowest-night 50 °F, own judgement',
    },
    { t: 'unknown', text: 'How cold will it be?', tell: 'low of 48 tonight' },
  ]);
});

test('an answer for another day begins with that day', async () => {
  const [heading] = sayAnswer({ ...us, today: '2026-05-01' }, await both(18));
  expect(heading).toEqual({ t: 'heading', text: 'For Friday 8 May' });
});

describe('what comes after the reasons', () => {
  const said = async (more: Partial<Part>, system: 'us' | 'metric' = 'us') => {
    const whole = await answer(world(factsOf({ reds: 21 }, 18)), request({ groups: ['reds'] }));
    const part = { ...firstOf(whole), reasons: [], turnsOn: [], ...more };
    return sayAnswer(speechIn(system), { ...whole, parts: [part], assumed: [] }).slice(1);
  };
  const frost: Assumed = { id: 'no-frost', group: null, values: {} };

  test('is the day on which it turns, with what that rests on, each thing once', async () => {
    expect(await said({ when: { on: '2026-05-14', verdict: 'no', assumed: [frost, frost] } })).toEqual([
      {
        t: 'next',
        text: 'It is expected to turn to no on Thursday 14 May. That rests on this: no frost is on record, so none is taken.',
      },
    ]);
    expect(await said({ when: { on: '2027-05-14', verdict: 'yes', assumed: [] } })).toEqual([
      { t: 'next', text: 'It is expected to turn to yes on Friday 14 May 2027.' },
    ]);
  });

  test('is the nearest change that would turn it, and no other', async () => {
    const turns = [8.5, 3].map((to) => ({
      fact: 'night-low',
      group: null,
      from: 18,
      to,
      unit: 'C',
      verdict: 'no' as const,
    }));
    expect(await said({ turnsOn: turns }, 'metric')).toEqual([
      { t: 'next', text: sayTurnsOn(speechIn('metric'), turns[0] as (typeof turns)[0]) },
    ]);
  });

  test('is what could overrule it, what to mind, and what else there is to say', async () => {
    const says = (template: string) => ({ template, values: { group: { value: 'reds', unit: null } } });
    expect(
      await said({
        unless: [{ rule: 'go-out/hawk', says: says('A hawk is after the {group}.') }],
        cautions: [{ rule: 'go-out/dark', says: says('Shut the {group} in.'), source: 'own-judgement' }],
        remarks: [{ rule: 'go-out/remark', says: says('The {group} like grass.'), source: 'own-judgement' }],
      }),
    ).toEqual([
      { t: 'detail', text: 'This holds unless: A hawk is after the reds.' },
      { t: 'caution', text: 'Shut the reds in.' },
      { t: 'detail', text: 'The reds like grass.' },
    ]);
  });
});

describe('a question back', () => {
  test('is in the words of the fact, with the group in it, or else made from its name', () => {
    const book = smallRulebook(
      changed(
        'facts/birds.yaml',
        'ask: How cold will it be?, tell: low of 48 tonight',
        "ask: 'How are the {group}?', tell: 'the {group} are well'",
      ),
    ).book;
    const speech = speechIn('us', book);
    expect(sayMissing(speech, { fact: 'night-low', group: 'reds' })).toEqual({
      ask: 'How are the reds?',
      tell: 'the reds are well',
    });
    expect(sayMissing(speech, { fact: 'night-low', group: null }).ask).toBe('How are the birds?');
    expect(sayMissing(speech, { fact: 'place', group: 'reds' })).toEqual({
      ask: 'Not on record: where they live.',
      tell: null,
    });
  });
});

test('a part of a group that is not there has nothing to say, and says so', async () => {
  const gone = firstOf(await answer(world(factsOf({})), request({ groups: ['greys'] })));
  expect(sayClaim(us, gone)).toBe('Nothing to say for the greys here.');
});

describe('all groups together', () => {
  const over = {
    ...changed(
      'questions/go-out.yaml',
      '{id: age, fact: age}',
      '{id: age, fact: age, total: sum}\n  - {id: low, fact: night-low}',
    ),
  };
  const asked = async (template: string, ages: Readonly<Record<string, number>>) => {
    const text =
      over['questions/go-out.yaml']?.replace('turns: true', `turns: true\ntogether: '${template}'`) ?? '';
    const of = world(factsOf(ages, 18), { 'questions/go-out.yaml': text });
    return sayTogether(speechIn('us', of.book), await answer(of, request()));
  };

  test('are summed up in one sentence', async () => {
    expect(await asked('In all {age}.', { whites: 13, reds: 21 })).toBe('In all 34 days.');
  });

  test('are not where a sum is missing, or where there is one group only', async () => {
    expect(await asked('In all {age}.', { whites: 13 })).toBeNull();
    expect(await asked('In all {age} and {place}.', { whites: 13, reds: 21 })).toBeNull();
    const alone = await answer(world(factsOf({ reds: 21 }, 18), over), request({ groups: ['reds'] }));
    expect(sayTogether(us, alone)).toBeNull();
  });
});

test('a claim whose words do not say whose it is names its group, where the groups differ', async () => {
  const { parts } = await both(18);
  const saying = (template: string, ...values: readonly string[]): readonly Part[] =>
    parts.map((part, at) => ({
      ...part,
      headline: { template, values: { lost: { value: values[at] ?? null, unit: null } } },
    }));
  expect(sayClaims(us, saying('Yes, {lost} is as usual.', 'one', 'none'))).toEqual([
    'The whites: yes, one is as usual.',
    'The reds: yes, none is as usual.',
  ]);
  expect(sayClaims(us, saying('Scald at {lost}.', 'that', 'that'))).toEqual([
    'Scald at that.',
    'Scald at that.',
  ]);
  expect(sayClaims(us, parts)).toEqual(['Not yet: the whites are too young.', 'Yes, the reds can go out.']);
});
