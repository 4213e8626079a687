/** What decides whether birds may leave the brooder, fact by fact, for a group hatched on 1 May 2026. */
import { describe, expect, test } from 'vitest';
import type { Group, Setting, Sign, State, WeatherDay } from '../../../engine/types.ts';
import { group, stateOf } from '../../helpers/state-of.ts';
import { bookForTests, workOut, worth } from '../../helpers/work-out.ts';

const celsius = (fahrenheit: number): number => ((fahrenheit - 32) * 5) / 9;

let line = 10;
const sign = (name: string, on: string, of: string | null = 'whites'): Sign => {
  line += 1;
  return { on, line, sign: name, count: null, group: of, words: name };
};
const set = (
  what: string,
  value: Setting['value'],
  on = '2026-05-02',
): Record<string, readonly Setting[]> => ({
  [what]: [{ on, line: 3, what, value, size: null, said: String(value) }],
});
const weather = (on: string, rain: number | null, wind: number | null): Record<string, WeatherDay> => {
  const noted = (value: number | null) => (value === null ? null : { on, line: 9, value });
  return { [on]: { on, low: null, high: null, rain: noted(rain), wind: noted(wind), humidity: null } };
};
const out = (on: string, daysOnly: boolean, at = 40): Group['whereabouts'][number] => ({
  on,
  line: at,
  place: 'pen',
  daysOnly,
});
const at = (on: string, given: Partial<State> = {}): State => stateOf({ on, ...given });

describe('feathered', () => {
  test('is what was seen last, not what the age says', () => {
    const seen = (...signs: readonly Sign[]) => worth(at('2026-05-30', { signs }), 'feathered');
    expect(seen(sign('bald', '2026-05-28'))).toBe(false);
    expect(seen(sign('bald', '2026-05-28'), sign('feathered', '2026-05-29'))).toBe(true);
    expect(seen(sign('feathered', '2026-05-28'), sign('downy', '2026-05-29'))).toBe(false);
  });

  test('takes no notice of what was seen on others, only of what was seen on all or on them', () => {
    const seen = (of: string | null) =>
      worth(at('2026-05-30', { signs: [sign('bald', '2026-05-28', of)] }), 'feathered');
    expect([seen('reds'), seen(null), seen('whites')]).toEqual([true, false, false]);
  });

  // Common practice, no source: three weeks for fast birds, a little longer for others.
  test.each([
    ['fast', '2026-05-21', false],
    ['fast', '2026-05-22', true],
    ['slow', '2026-05-24', false],
    ['slow', '2026-05-25', true],
  ])('goes by age where nobody looked: %s birds on %s, %j', (kind, on, feathered) => {
    const step = workOut(at(on, { groups: [group({ kind })] })).step('feathered', 'whites');
    expect([step.value, step.assumed.map(({ id }) => id)]).toEqual([feathered, ['feathered-by-age']]);
  });
});

describe('the coldest night they can stand', () => {
  const floor = (on: string, given: Partial<State> = {}) => worth(at(on, given), 'night-floor');

  // Own judgement, a rule of thumb: 65 °F at two weeks, 50 at three, 40 at four, freezing at five.
  test.each([
    ['2026-05-14', null],
    ['2026-05-15', 65],
    ['2026-05-22', 50],
    ['2026-05-29', 40],
    ['2026-06-05', 32],
    ['2026-08-01', 32],
  ])('on %s is %j °F', (on, fahrenheit) => {
    expect(floor(on)).toEqual(fahrenheit === null ? null : expect.closeTo(celsius(fahrenheit), 9));
  });

  test('is higher by ten degrees when rain or wind is coming, but not by twenty when both are', () => {
    const on = '2026-05-22';
    const floors = [
      weather(on, 1.9, 6.7),
      weather(on, 2, null),
      weather(on, null, 6.71),
      weather('2026-05-24', 30, 30),
      weather('2026-05-25', 30, 30),
    ].map((each) => floor(on, { weather: each }));
    expect(floors).toEqual([50, 60, 60, 60, 50].map((fahrenheit) => expect.closeTo(celsius(fahrenheit), 9)));
  });

  test('is higher by five degrees for birds that were seen to be thin, not for those that are only young', () => {
    const on = '2026-05-29';
    expect(floor(on, { signs: [sign('bald', '2026-05-28')] })).toBeCloseTo(celsius(45), 9);
    expect(floor(on, { signs: [sign('bald', '2026-05-27'), sign('feathered', '2026-05-28')] })).toBeCloseTo(
      celsius(40),
      9,
    );
    expect(floor('2026-05-15')).toBeCloseTo(celsius(65), 9);
  });
});

describe('days of hardening off', () => {
  const days = (given: Partial<State>, on = '2026-05-20') =>
    workOut(at('2026-05-20', given), on).step('days-of-hardening', 'whites');

  test('count from the first record of less heat', () => {
    expect(days({ signs: [sign('heat-down', '2026-05-15'), sign('heat-off', '2026-05-18')] }).value).toBe(5);
  });

  test('count from the first day out', () => {
    expect(days({ groups: [group({ whereabouts: [out('2026-05-17', true)] })] }).value).toBe(3);
  });

  test('begin again after the heat was turned up', () => {
    const signs = [
      sign('heat-down', '2026-05-10'),
      sign('heat-on', '2026-05-14'),
      sign('heat-off', '2026-05-18'),
    ];
    expect(days({ signs }).value).toBe(2);
    expect(days({ signs: signs.slice(0, 2) })).toMatchObject({
      value: null,
      missing: [{ fact: 'days-of-hardening', group: 'whites' }],
    });
  });

  test('are asked for today; for a later day they are taken to begin today, aloud', () => {
    expect(days({})).toMatchObject({
      value: null,
      missing: [{ fact: 'days-of-hardening', group: 'whites' }],
    });
    expect(days({}, '2026-05-26')).toMatchObject({
      value: 6,
      assumed: [
        { id: 'hardening-begins', group: 'whites', values: { from: { value: '2026-05-20', unit: 'date' } } },
      ],
    });
  });
});

describe('room in the pen', () => {
  const pen = { ...set('pen', 12), ...set('pens', 2) };

  test('is shared by all who would live out, those who live out already counted once', () => {
    const living = group({ name: 'reds', boxed: 20, whereabouts: [out('2026-05-10', false)] });
    const state = at('2026-05-20', { settings: pen, groups: [group({ boxed: 28 }), living] });
    const room = (name: string) => worth(state, 'pen-room', state.on, name);
    expect([room('whites'), room('reds')]).toEqual([0.5, 1.2]);
    expect(worth(state, 'birds-in-pens')).toBe(20);
  });

  test('does not count those who are only out by day', () => {
    const living = group({ name: 'reds', boxed: 20, whereabouts: [out('2026-05-10', true)] });
    expect(worth(at('2026-05-20', { groups: [group(), living] }), 'birds-in-pens')).toBe(0);
  });

  test('takes one pen where no number is set, and asks for its size', () => {
    const one = workOut(at('2026-05-20', { settings: set('pen', 12) }));
    expect(one.step('pen-room', 'whites').value).toBe(0.24);
    expect(one.step('pens', null).assumed).toEqual([{ id: 'one-pen', group: null, values: {} }]);
    expect(workOut(at('2026-05-20')).step('pen-room', 'whites')).toMatchObject({
      value: null,
      missing: [{ fact: 'pen-area', group: null }],
    });
  });

  test('is nothing to ask about when there are no birds', () => {
    const gone = at('2026-05-20', { settings: pen, groups: [group({ boxed: 3, dead: 3 })] });
    expect(worth(gone, 'pen-room')).toBeNull();
  });
});

test('the cover is as set, and asked for when it is not', () => {
  expect(
    [true, false].map((is) => worth(at('2026-05-20', { settings: set('pen-cover', is) }), 'pen-covered')),
  ).toEqual([true, false]);
  expect(workOut(at('2026-05-20')).step('pen-covered', null).missing).toEqual([
    { fact: 'pen-covered', group: null },
  ]);
});

describe('losses to hunters', () => {
  const taken = (on: string, cause: string, count: number) => ({ on, line: 30, cause, count });

  test('count for two weeks, over all groups, and no other losses with them', () => {
    const state = at('2026-05-30', {
      groups: [
        group({
          losses: [
            taken('2026-05-16', 'hawk', 8),
            taken('2026-05-17', 'hawk', 2),
            taken('2026-05-29', 'crush', 4),
          ],
        }),
        group({
          name: 'reds',
          losses: [taken('2026-05-30', 'hawk', 1), taken('2026-05-29', 'never heard of', 16)],
        }),
      ],
    });
    expect(bookForTests.figures['pasture/hunters-remembered']?.values[0]?.value).toBe(14);
    expect(worth(state, 'hunters-lately')).toBe(3);
  });
});
