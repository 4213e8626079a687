/** The brooder question answered by all its rules together. */
import { describe, expect, test } from 'vitest';
import type { Sign, State, WeatherDay } from '../../../engine/types.ts';
import { answered } from '../../helpers/answered.ts';
import { group, stateOf } from '../../helpers/state-of.ts';

const night = (on: string, fahrenheit: number): Record<string, WeatherDay> => ({
  [on]: {
    on,
    low: { on, line: 5, value: (fahrenheit - 32) / 1.8 },
    high: null,
    rain: null,
    wind: null,
    humidity: null,
  },
});
const seen = (sign: string, on: string): Sign => ({
  sign,
  on,
  line: 9,
  count: null,
  group: 'whites',
  words: sign,
});

/** What matters of the one part: the deciding rule, what is asked for, the chores, and the rules of the reasons. */
const brooder = async (state: State, groups: readonly string[] = []) => {
  const { parts, results } = await answered(state, 'brooder-heat', groups);
  return {
    rule: parts[0]?.rule,
    asks: parts[0]?.unknown.map((each) => each.fact),
    chores: parts[0]?.steps.map((each) => each.id.replace('brooder-heat/', '')),
    because: [...new Set(parts[0]?.reasons.map((each) => each.rule.replace('brooder-heat/', '')))],
    results: Object.fromEntries(results.map((each) => [each.id, each.value])),
  };
};

const week = '2026-05-08';
const threeWeeks = '2026-05-23';

test('by age and by the night: target, lamps and the day the heat comes off', async () => {
  expect(await brooder(stateOf({ weather: night(week, 41) }))).toEqual({
    rule: 'brooder-heat/by-age',
    asks: ['behaviour'],
    chores: ['look-in', 'by-age'],
    because: ['by-age'],
    results: { target: expect.closeTo(290 / 9, 10), lamps: 2, 'heat-off': '2026-05-29' },
  });
});

test('without a night on record the target stands, and the night is asked for', async () => {
  expect(await brooder(stateOf())).toMatchObject({
    rule: 'brooder-heat/target-alone',
    asks: ['behaviour', 'surroundings'],
    results: { target: expect.closeTo(290 / 9, 10) },
  });
});

describe('what the chicks do outranks the thermometer', () => {
  test.each([
    ['piled', 'too-cold'],
    ['spread-out', 'too-hot'],
    ['panting', 'too-hot'],
    ['one-side', 'draught'],
    ['even', 'lie-evenly'],
  ])('%s: %s, and its chore stands in the round instead of the other', async (sign, rule) => {
    expect(await brooder(stateOf({ weather: night(week, 41), signs: [seen(sign, week)] }))).toMatchObject({
      rule: `brooder-heat/${rule}`,
      asks: [],
      chores: expect.arrayContaining([rule, 'look-in']),
      because: [rule],
    });
  });

  test('what they did two days ago does not', async () => {
    const state = stateOf({ weather: night(week, 41), signs: [seen('piled', '2026-05-06')] });
    expect((await brooder(state)).rule).toBe('brooder-heat/by-age');
  });
});

describe('less heat', () => {
  test.each([
    ['feathered, and the night is warm enough', 52, [], 'may-come-off'],
    ['feathered, and the night is too cold', 48, [], 'by-age'],
    ['short of feathers', 52, ['downy'], 'by-age'],
    ['heat off, and the night is warm enough', 52, ['heat-off'], 'stays-off'],
    ['heat off, and the night is too cold', 48, ['heat-off'], 'heat-back'],
    ['heat off, and no night on record', undefined, ['heat-off'], 'off-unless-cold'],
    ['surroundings as warm as the warm spot, in down', 85, ['downy'], 'warm-already'],
  ])('%s', async (_, low, signs, rule) => {
    const state = stateOf({
      on: threeWeeks,
      weather: low === undefined ? {} : night(threeWeeks, low),
      signs: signs.map((sign) => seen(sign, threeWeeks)),
    });
    expect((await brooder(state)).rule).toBe(`brooder-heat/${rule}`);
  });

  test('birds on grass need none set', async () => {
    const out = group({ whereabouts: [{ on: week, line: 4, place: 'pen', daysOnly: false }] });
    expect(await brooder(stateOf({ groups: [out] }), ['whites'])).toMatchObject({
      rule: 'brooder-heat/not-in-brooder',
      chores: [],
      results: { lamps: 0 },
    });
  });
});

describe('cautions', () => {
  const cautions = async (state: State) =>
    (await answered(state, 'brooder-heat')).parts[0]?.cautions.map((each) =>
      each.rule.replace('brooder-heat/', ''),
    );
  const lamps = ['hang-lamps-twice', 'lamp-distance', 'lamp-guard', 'no-coated-bulbs'];

  test('about lamps always stand while the heat is in use, whatever the verdict', async () => {
    expect(await cautions(stateOf())).toEqual(lamps);
    expect(await cautions(stateOf({ signs: [seen('piled', week)] }))).toEqual(lamps);
  });

  test('fall away with the heat off', async () => {
    expect(await cautions(stateOf({ signs: [seen('heat-off', week)] }))).toEqual([]);
  });

  test('say when the brooder gets tight or reads wrong', async () => {
    const set = (what: string, value: number) => [{ what, value, on: week, line: 3, size: null, said: '' }];
    const settings = { brooder: set('brooder', 2), 'brooder-temperature': set('brooder-temperature', 25) };
    expect(await cautions(stateOf({ settings }))).toEqual(['crowded', ...lamps, 'reads-too-cold']);
  });
});
