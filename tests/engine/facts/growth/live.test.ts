import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays } from '../../../../engine/day.ts';
import { group, stateOf } from '../../../helpers/state-of.ts';
import { workOut } from '../../../helpers/work-out.ts';

const hatched = '2026-05-01';
const facts = ['live-weight-low', 'live-weight', 'live-weight-high'];
const live = (age: number, ahead = 0, weighed = true) => {
  const weighings = weighed ? [{ on: addDays(hatched, 28), line: 3, mean: 1, count: 10, spread: null }] : [];
  const state = stateOf({ on: addDays(hatched, age), groups: [group({ weighings })] });
  const workings = workOut(state, addDays(hatched, age + ahead));
  return { workings, numbers: facts.map((fact) => Number(workings.step(fact, 'whites').value)) };
};

describe('the live weight', () => {
  test('lies in its range, at every age', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 154 }), fc.boolean(), (age, weighed) => {
        const [low, middle, high] = live(age, 0, weighed).numbers;
        expect(low).toBeGreaterThan(0);
        expect(middle).toBeGreaterThan(Number(low));
        expect(high).toBeGreaterThan(Number(middle));
        expect(Number(middle) ** 2).toBeCloseTo(Number(low) * Number(high), 6);
      }),
    );
  });

  test('is narrower when they have been weighed', () => {
    const width = (weighed: boolean): number => {
      const [low, , high] = live(28, 0, weighed).numbers;
      return Number(high) / Number(low);
    };
    expect(width(true)).toBeLessThan(1.2);
    expect(width(false)).toBeGreaterThan(1.8);
  });

  test('of a day to come is said to rest on growth as it was', () => {
    const { workings } = live(35, 14);
    expect(workings.step('live-weight', 'whites').assumed).toEqual([
      { id: 'growth-keeps-pace', group: 'whites', values: {} },
    ]);
    expect(live(35).workings.step('live-weight', 'whites').assumed).toEqual([]);
  });
});
