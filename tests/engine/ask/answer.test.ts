/** A whole answer over a rulebook and facts made up for it, so that every key of it can be looked at. */
import { describe, expect, test } from 'vitest';
import { answer } from '../../../engine/ask/ask.ts';
import type { World } from '../../../engine/ask/world.ts';
import type { Fact } from '../../../engine/facts/define.ts';
import type { Request, Value } from '../../../engine/types.ts';
import { factsOf, on, request, world } from '../../helpers/small-flock.ts';
import { changed, smallRulebook } from '../../helpers/small-rulebook.ts';
import { group, stateOf } from '../../helpers/state-of.ts';

const figure = (id: string, value: number, unit: string) => ({
  id,
  value,
  unit,
  from: '2026-01-01',
  source: 'own-judgement',
  own: false,
});
const shown = (value: Value | null, unit: string | null) => ({ value, unit });

test('an answer says everything once: verdict, reasons in order, what is missing, results, workings', async () => {
  const { workings, ...rest } = await answer(world(factsOf({ whites: 13, reds: 21 })), request());
  const old = {
    template: 'they are {age} old, and the least is {out/youngest}',
    // A figure that a sentence speaks of comes with its date and source, like one that is compared.
    values: (age: number) => ({
      age: shown(age, 'day'),
      'out/youngest': { ...shown(14, 'day'), figure: figure('out/youngest', 14, 'day') },
    }),
  };
  expect(rest).toEqual({
    request: request(),
    question: 'go-out',
    parts: [
      {
        group: 'whites',
        verdict: 'no',
        rule: 'go-out/too-young',
        headline: {
          template: 'Not yet: the {group} are too young.',
          values: { group: shown('whites', null) },
        },
        reasons: [
          {
            n: 1,
            rule: 'go-out/too-young',
            group: 'whites',
            outcome: 'held',
            says: { template: old.template, values: old.values(13) },
            fact: { id: 'age', value: 13, unit: 'day' },
            operator: 'less-than',
            figure: figure('out/youngest', 14, 'day'),
            other: null,
            source: 'own-judgement',
            why: 'a younger bird cannot hold its warmth',
          },
        ],
        unknown: [],
        cautions: [],
        remarks: [],
        steps: [],
        when: null,
        turnsOn: [],
        passedOver: [
          {
            rule: 'go-out/may-go',
            gives: 'yes',
            outcome: 'failed',
            stoppedBy: [
              {
                rule: 'go-out/may-go',
                group: 'whites',
                outcome: 'failed',
                says: { template: old.template, values: old.values(13) },
                fact: { id: 'age', value: 13, unit: 'day' },
                operator: 'at-least',
                figure: figure('out/youngest', 14, 'day'),
                other: null,
                source: 'own-judgement',
                why: 'old enough for the night',
              },
            ],
          },
        ],
        unless: [],
      },
      {
        group: 'reds',
        verdict: 'cannot-say',
        rule: null,
        headline: null,
        reasons: [
          {
            n: 2,
            rule: 'go-out/may-go',
            group: 'reds',
            outcome: 'unknown',
            says: {
              template: 'tonight is {night-low}, and {night-floor} is the least',
              values: { 'night-low': shown(null, 'C'), 'night-floor': shown(10, 'C') },
            },
            fact: { id: 'night-low', value: null, unit: 'C' },
            operator: 'at-least',
            figure: null,
            other: { id: 'night-floor', value: expect.closeTo(10, 9), unit: 'C' },
            source: 'own-judgement',
            why: 'old enough for the night',
          },
        ],
        unknown: [{ fact: 'night-low', group: null }],
        cautions: [],
        remarks: [],
        steps: [],
        when: null,
        turnsOn: [],
        // Nothing decided, so every rule was passed over.
        passedOver: [
          {
            rule: 'go-out/may-go',
            gives: 'yes',
            outcome: 'unknown',
            stoppedBy: [expect.objectContaining({ outcome: 'unknown' })],
          },
          {
            rule: 'go-out/too-young',
            gives: 'no',
            outcome: 'failed',
            stoppedBy: [expect.objectContaining({ fact: { id: 'age', value: 21, unit: 'day' } })],
          },
        ],
        unless: [],
      },
    ],
    results: [
      { id: 'age', fact: 'age', group: 'whites', value: 13, unit: 'day' },
      { id: 'age', fact: 'age', group: 'reds', value: 21, unit: 'day' },
    ],
    assumed: [],
    pictures: [],
    problems: [],
    ref: `4-${smallRulebook().book.hash}-${on}`,
  });
  expect(workings.map(({ fact, group: of, value }) => [fact, of, value])).toEqual([
    ['age', 'whites', 13],
    ['night-low', null, null],
    ['night-floor', 'whites', null],
    ['age', 'reds', 21],
    ['night-low', null, null],
    ['night-floor', 'reds', expect.closeTo(10, 9)],
  ]);
});

describe('groups', () => {
  const verdicts = async (of: World, more: Partial<Request> = {}) =>
    (await answer(of, request(more))).parts.map((part) => [part.group, part.verdict]);
  const warm = factsOf({ whites: 13, reds: 21, blues: 30 }, 20);

  test('are those that the question concerns, else those that are named', async () => {
    expect(await verdicts(world(warm))).toEqual([
      ['whites', 'no'],
      ['reds', 'yes'],
    ]);
    expect(await verdicts(world(warm), { groups: ['blues', 'reds'] })).toEqual([
      ['blues', 'yes'],
      ['reds', 'yes'],
    ]);
  });

  test('are all of them where it concerns none, or where it concerns everybody', async () => {
    const elsewhere = changed('questions/go-out.yaml', 'one-of: [brooder]', 'one-of: [gone]');
    const everybody = changed('questions/go-out.yaml', 'concerns: {fact: place, one-of: [brooder]}\n', '');
    for (const over of [elsewhere, everybody])
      expect((await verdicts(world(warm, over))).map(([name]) => name)).toEqual(['whites', 'reds', 'blues']);
  });

  test('that are not there on that day get an answer with nothing in it', async () => {
    const { parts, results } = await answer(world(warm), request({ groups: ['greys', 'reds'] }));
    expect(parts.map(({ group: name, verdict }) => [name, verdict])).toEqual([
      ['reds', 'yes'],
      ['greys', 'cannot-say'],
    ]);
    expect(parts[1]).toEqual({
      group: 'greys',
      verdict: 'cannot-say',
      rule: null,
      headline: null,
      reasons: [],
      unknown: [],
      cautions: [],
      remarks: [],
      steps: [],
      when: null,
      turnsOn: [],
      passedOver: [],
      unless: [],
    });
    expect(results.map((result) => result.group)).toEqual(['reds', 'reds']);
  });

  test('need not be there at all', async () => {
    const empty = { ...world(warm), state: stateOf({ on, groups: [] }) };
    expect(await answer(empty, request())).toMatchObject({
      parts: [],
      results: [],
      assumed: [],
      workings: [],
    });
  });
});

describe('results', () => {
  const summed = changed('questions/go-out.yaml', '{id: age, fact: age}', '{id: age, fact: age, total: sum}');
  const ages = async (facts: ReadonlyMap<string, Fact>, names: readonly string[]) =>
    (await answer(world(facts, summed), request({ groups: names }))).results
      .filter(({ id }) => id === 'age')
      .map((result) => [result.group, result.value]);

  test('of several groups are added up where the question says so, total first', async () => {
    expect(await ages(factsOf({ whites: 13, reds: 21 }), ['whites', 'reds'])).toEqual([
      [null, 34],
      ['whites', 13],
      ['reds', 21],
    ]);
  });

  test('have no total for one group, nor where one of them is not known: half a sum is none', async () => {
    expect(await ages(factsOf({ whites: 13, reds: 21 }), ['reds'])).toEqual([['reds', 21]]);
    expect(await ages(factsOf({ whites: 13 }), ['whites', 'reds'])).toEqual([['whites', 13]]);
  });
});

describe('a chore', () => {
  const out = (day: string) => ({ on: day, line: 3, place: 'pen', daysOnly: false }) as const;
  const stepsOf = async (
    own: readonly ReturnType<typeof out>[],
    others: readonly ReturnType<typeof out>[],
  ) => {
    const state = stateOf({
      on,
      groups: [group({ name: 'reds', whereabouts: own }), group({ name: 'whites', whereabouts: others })],
    });
    const { parts } = await answer(
      { ...world(factsOf({ reds: 21 }, 20)), state },
      request({ groups: ['reds'] }),
    );
    return parts.flatMap(({ steps }) => steps.map(({ id, at, order, done }) => ({ id, at, order, done })));
  };
  const chore = { id: 'go-out/may-go', at: 'morning', order: 10 };

  test('comes with the rule that won, and is ticked off by a record of that day for that group alone', async () => {
    expect(await stepsOf([], [])).toEqual([{ ...chore, done: false }]);
    expect(await stepsOf([out(on)], [])).toEqual([{ ...chore, done: true }]);
    expect(await stepsOf([out('2026-05-07')], [out(on)])).toEqual([{ ...chore, done: false }]);
  });
});

test('a question that the rulebook has not is a bug of the caller', async () => {
  await expect(answer(world(factsOf({})), request({ question: 'go-home' }))).rejects.toThrow(
    'no such question: go-home',
  );
});
