/** What the weather asks for, as whole answers: the deciding rule, the tasks and the cautions. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays } from '../../../engine/day.ts';
import type { Group, State } from '../../../engine/types.ts';
import { answered } from '../../helpers/answered.ts';
import { group, stateOf } from '../../helpers/state-of.ts';
import { type Told, weatherOf } from '../../helpers/weather-of.ts';

const on = '2026-06-12';
const out = { on: '2026-05-25', line: 2, place: 'pen', daysOnly: false } as const;
const inPen: Partial<Group> = { hatched: '2026-05-01', whereabouts: [out] };
const flock = (told: Told, of: Partial<Group> = inPen): State =>
  stateOf({ on, groups: [group(of)], weather: weatherOf({ [on]: told }) });

const bare = (id: string | null | undefined): string | null => id?.replace('weather-care/', '') ?? null;
const answerTo = async (state: State) => {
  const { parts } = await answered(state, 'weather-care', ['whites']);
  const [part] = parts;
  return {
    rule: bare(part?.rule),
    steps: part?.steps.map((step) => bare(step.id)).sort(),
    cautions: part?.cautions.map((each) => bare(each.rule)),
    unknown: part?.unknown.map((each) => each.fact),
  };
};
const nothing = { steps: [], cautions: [], unknown: [] };

describe('on grass', () => {
  test('a mild day asks for nothing', async () => {
    expect(await answerTo(flock({ high: 22, low: 12 }))).toEqual({ rule: 'calm', ...nothing });
  });

  test('a warm day asks for shade and water', async () => {
    expect(await answerTo(flock({ high: 27, humidity: 0.5, low: 15 }))).toEqual({
      rule: 'heat-watch',
      steps: ['cool-water', 'shade'],
      cautions: [],
      unknown: [],
    });
  });

  test('a dangerous day asks for all there is, dry heat too', async () => {
    expect(await answerTo(flock({ high: 37.8, humidity: 0.3, low: 18 }))).toEqual({
      rule: 'heat-danger',
      steps: ['cool-water', 'deep-shade', 'feed-back', 'feed-off', 'leave-in-peace', 'look-at-noon'],
      cautions: ['heat-kills'],
      unknown: [],
    });
  });

  test('a cold wet windy night asks for a roof', async () => {
    expect(await answerTo(flock({ high: 12, low: 3, rain: 12, wind: 9 }))).toEqual({
      rule: 'cold-danger',
      steps: ['bring-in', 'cover', 'tie-down'],
      cautions: ['cold-piles'],
      unknown: [],
    });
  });

  test('cold rain that is not colder than they can stand still asks for cover', async () => {
    expect(await answerTo(flock({ high: 16, low: 10, rain: 12 }))).toEqual({
      rule: 'wet-act',
      steps: ['close-the-sides', 'cover'],
      cautions: ['cold-piles'],
      unknown: [],
    });
  });

  test('a hot day before a cold night asks for both, the worse first', async () => {
    expect(await answerTo(flock({ high: 31, low: -4 }))).toMatchObject({
      rule: 'heat-act',
      steps: [
        'close-the-sides',
        'cool-water',
        'feed-back',
        'feed-off',
        'leave-in-peace',
        'look-at-noon',
        'shade',
      ],
    });
    expect(await answerTo(flock({ high: 31, low: -8 }))).toMatchObject({ rule: 'cold-danger' });
  });

  test('one half of the day known is answered by itself', async () => {
    expect(await answerTo(flock({ low: 12 }))).toEqual({ rule: 'calm-night', ...nothing });
    expect(await answerTo(flock({ high: 22 }))).toEqual({ rule: 'calm-day', ...nothing });
  });

  test('nothing known is asked for, the day and the night and no more', async () => {
    expect(await answerTo(flock({}))).toEqual({
      rule: null,
      ...nothing,
      unknown: ['today-high', 'coldest-air'],
    });
  });
});

describe('elsewhere', () => {
  test('chicks in the brooder want their lamps in a cold night, and air on a hot day', async () => {
    const chicks = { hatched: '2026-06-06', arrived: '2026-06-07' };
    expect(await answerTo(flock({ high: 15, low: 4 }, chicks))).toEqual({
      rule: 'brooder-night',
      steps: ['lamps-for-the-cold'],
      cautions: [],
      unknown: [],
    });
    expect(await answerTo(flock({ high: 38, low: 35 }, chicks))).toMatchObject({ rule: 'brooder-hot' });
  });

  test('there is nothing to do for birds that are gone', async () => {
    const gone = { ...inPen, processed: [{ on: '2026-06-10', line: 5, count: 50, dressed: null }] };
    expect(await answerTo(flock({ high: 37, low: 20 }, gone))).toEqual({ rule: 'none-left', ...nothing });
  });
});

test('no weather leaves birds without an answer, wherever and however old they are', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.integer({ min: -30, max: 20 }),
      fc.integer({ min: 0, max: 40 }),
      fc.option(fc.integer({ min: 0, max: 100 }), { nil: undefined }),
      fc.record({ rain: fc.integer({ min: 0, max: 30 }), wind: fc.integer({ min: 0, max: 25 }) }),
      fc.integer({ min: 1, max: 90 }),
      fc.boolean(),
      async (low, more, percent, rough, age, isOut) => {
        const hatched = addDays(on, -age);
        const humidity = percent === undefined ? {} : { humidity: percent / 100 };
        const whereabouts = isOut ? [{ ...out, on: hatched }] : [];
        const state = flock(
          { low, high: low + more, ...rough, ...humidity },
          { hatched, arrived: hatched, whereabouts },
        );
        expect((await answerTo(state)).rule).not.toBeNull();
      },
    ),
    { numRuns: 60 },
  );
});
