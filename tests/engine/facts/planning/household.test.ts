import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { State } from '../../../../engine/types.ts';
import { settingsOf } from '../../../helpers/settings-of.ts';
import { stateOf } from '../../../helpers/state-of.ts';
import { workOut, worth, worthUntil } from '../../../helpers/work-out.ts';

const place = (given: Readonly<Record<string, number>>, more: Partial<State> = {}): State =>
  stateOf({ settings: settingsOf(given), ...more });

describe('birds for a year', () => {
  test.each([
    [{}, 1, 52],
    [{ eaters: 6 }, 1.5, 78],
    [{ eaters: 6, 'birds-a-week': 2 }, 2, 104],
    [{ 'birds-a-week': 0 }, 0, 0],
  ])('%j: %d a week, %i in a year', (given, pace, birds) => {
    expect(worth(place(given), 'birds-a-week')).toBe(pace);
    expect(worth(place(given), 'birds-for-eating')).toBe(birds);
  });

  test('says what it takes for granted', () => {
    const ids = (state: State) =>
      workOut(state)
        .step('birds-a-week', null)
        .assumed.map((each) => each.id);
    expect(ids(place({}))).toEqual(['bird-a-week']);
    expect(ids(place({ 'birds-a-week': 1 }))).toEqual([]);
    expect(
      workOut(place({}))
        .step('eaters', null)
        .assumed.map((each) => each.id),
    ).toEqual(['usual-eaters']);
  });

  test('a span of so many days counts only those, a begun bird whole', () => {
    expect(worthUntil(place({ 'birds-a-week': 1 }), 'birds-for-eating', '2026-05-15')).toBe(2);
  });

  test('more eaters or a longer time never need fewer', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20 }), (eaters) => {
        const birds = (count: number) => Number(worth(place({ eaters: count }), 'birds-for-eating'));
        expect(birds(eaters + 1)).toBeGreaterThanOrEqual(birds(eaters));
      }),
    );
  });
});

describe('how long so many last', () => {
  const asked = (birds: number) =>
    workOut(place({ 'birds-a-week': 2 }), undefined, [
      { what: { fact: 'birds-to-last' }, value: birds, adds: false },
    ]);

  test('those asked about', () => {
    expect(asked(20).step('birds-last', null).value).toBe(70);
    expect(asked(20).step('birds-last-until', null).value).toBe('2026-07-17');
  });

  test('else those alive and in the freezer', () => {
    expect(worth(place({ 'birds-a-week': 2 }), 'birds-counted')).toBe(50);
  });

  test('nobody eating leaves it unknown', () => {
    expect(worth(place({ 'birds-a-week': 0 }), 'birds-last')).toBeNull();
  });
});
