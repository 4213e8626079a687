/** Getting ready for chicks and their first hours, answered by all rules together. */
import { describe, expect, test } from 'vitest';
import type { State } from '../../../engine/types.ts';
import { answered } from '../../helpers/answered.ts';
import { group, stateOf } from '../../helpers/state-of.ts';

const told = (values: Readonly<Record<string, number | string>>): State['settings'] =>
  Object.fromEntries(
    Object.entries(values).map(([what, value]) => [
      what,
      [{ what, value, on: '2026-05-01', line: 20, size: null, said: String(value) }],
    ]),
  );
const expecting = (values: Readonly<Record<string, number | string>> = {}): State =>
  stateOf({ groups: [], settings: told({ 'chicks-coming': 50, 'chicks-on': '2026-05-12', ...values }) });
const came = (given: Parameters<typeof group>[0] = {}): State =>
  stateOf({ groups: [group({ hatched: '2026-05-07', arrived: '2026-05-08', ...given })] });

const gist = async (state: State, question: string) => {
  const { parts, results } = await answered(state, question);
  const short = (rule: string): string => rule.replace(`${question}/`, '');
  return {
    verdict: parts[0]?.verdict,
    rule: short(parts[0]?.rule ?? ''),
    asks: parts[0]?.unknown.map(({ fact }) => fact),
    steps: parts[0]?.steps.map(({ rule }) => short(rule)),
    cautions: parts[0]?.cautions.map(({ rule }) => short(rule)),
    results: Object.fromEntries(results.map(({ id, value }) => [id, value])),
  };
};

const lampCautions = ['hang-lamps-twice', 'lamp-distance', 'lamp-guard', 'no-coated-bulbs'];

describe('what must stand ready', () => {
  test('told of number and day: everything, with the hour by which it must be warm', async () => {
    expect(await gist(expecting({ 'room-temperature': 10 }), 'brooder-setup')).toEqual({
      verdict: 'list',
      rule: 'ready',
      asks: [],
      steps: ['switch-on', 'floor', 'bedding', 'lamps', 'warm-spot', 'drinkers', 'feeders', 'starter'],
      cautions: [
        'hang-lamps-twice',
        'lamp-distance',
        'lamp-guard',
        'no-cedar',
        'no-coated-bulbs',
        'no-newspaper',
      ],
      results: {
        floor: expect.closeTo(12.5 * 0.09290304, 9),
        lamps: 2,
        drinkers: 2,
        'feeder-length': expect.closeTo(50 * 0.0254, 9),
        starter: expect.closeTo(50 * 0.1475 * 0.9, 9),
        'warm-by': '2026-05-11T07:00',
      },
    });
  });

  test('the day not told: it is asked for, and the rest stands', async () => {
    const state = stateOf({ groups: [], settings: told({ 'chicks-coming': 50 }) });
    expect(await gist(state, 'brooder-setup')).toMatchObject({ verdict: 'list', rule: 'ready-undated' });
  });

  test('nothing told: number and day are asked for', async () => {
    expect(await gist(stateOf({ groups: [] }), 'brooder-setup')).toMatchObject({
      verdict: 'cannot-say',
      rule: 'not-told',
      asks: expect.arrayContaining(['chicks-coming', 'chicks-due']),
      steps: [],
    });
  });

  test('a brooder too small and a lamp too few are said', async () => {
    const { cautions } = await gist(expecting({ brooder: 1, lamps: 1 }), 'brooder-setup');
    expect(cautions).toEqual(expect.arrayContaining([...lampCautions, 'brooder-too-small', 'too-few-lamps']));
  });
});

describe('the first hours', () => {
  test('come this morning: warmth, water, feed, the weak, and the crops at night', async () => {
    expect(await gist(came({ hatchHour: '09:00' }), 'chick-arrival')).toEqual({
      verdict: 'list',
      rule: 'first-hours',
      asks: [],
      steps: ['warm-first', 'water-first', 'feed-next', 'weak-ones', 'feel-crops'],
      cautions: ['wash-hands'],
      results: { 'hours-left': expect.closeTo(50 / 24, 9) },
    });
  });

  test('four days on the way: water before all else', async () => {
    expect((await gist(came({ hatched: '2026-05-04' }), 'chick-arrival')).rule).toBe('too-long');
  });

  test('dead in the box go to the hatchery, and many of them to the eye', async () => {
    const one = await gist(came({ dead: 1 }), 'chick-arrival');
    const two = await gist(came({ dead: 2 }), 'chick-arrival');
    expect([one.steps?.includes('tell-the-hatchery'), one.cautions?.includes('many-dead')]).toEqual([
      true,
      false,
    ]);
    expect(two.cautions).toContain('many-dead');
  });

  test('the second day is for vents and for those that do not eat', async () => {
    const state = { ...came(), on: '2026-05-09' };
    expect(await gist(state, 'chick-arrival')).toMatchObject({
      rule: 'second-day',
      steps: ['look-at-vents'],
    });
  });

  test('none on record yet: what to do in turn, and the line that puts them on record', async () => {
    expect(await gist(stateOf({ groups: [] }), 'chick-arrival')).toMatchObject({
      rule: 'when-they-come',
      steps: ['bring-them-warm', 'offer-water', 'offer-feed', 'help-the-weak', 'count-and-tell'],
      results: {},
    });
  });
});

describe('the daily round', () => {
  const rules = async (state: State) => {
    const { parts } = await answered(state, 'today');
    return parts[0]?.steps.map(({ rule }) => rule.split('/')[0]) ?? [];
  };

  test('has them only on the days they belong to', async () => {
    expect(await rules(expecting())).toContain('brooder-setup');
    expect(await rules({ ...expecting(), on: '2026-05-02' })).not.toContain('brooder-setup');
    expect(await rules(came())).toContain('chick-arrival');
    const later = await rules({ ...came(), on: '2026-05-12' });
    expect(later).not.toContain('chick-arrival');
    expect(later).not.toContain('brooder-setup');
  });
});
