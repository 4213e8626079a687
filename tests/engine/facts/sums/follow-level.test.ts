import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { followLevel, type Reading, type Wandering } from '../../../../engine/facts/sums/follow-level.ts';

const wandering: Wandering = { level: 0, variance: 0.04, drift: 0.0002, gate: 3 };
const reading = (at: number, value: number, variance = 0.003): Reading => ({ at, value, variance });

/** Where the level cannot drift, the belief is the mean of what was believed and all readings, each by its precision. */
const jointly = (readings: readonly Reading[]): number => {
  const weights = [1 / wandering.variance, ...readings.map((each) => 1 / each.variance)];
  const values = [wandering.level, ...readings.map((each) => each.value)];
  const total = weights.reduce((sum, each) => sum + each, 0);
  return weights.reduce((sum, each, index) => sum + each * (values[index] ?? 0), 0) / total;
};

describe('followLevel', () => {
  test('without drift is the mean weighted by certainty', () => {
    const small = fc.double({ min: -0.1, max: 0.1, noNaN: true });
    fc.assert(
      fc.property(fc.array(small, { minLength: 1, maxLength: 6 }), (values) => {
        const readings = values.map((value, index) => reading(index, value, 0.01));
        const last = followLevel(readings, { ...wandering, drift: 0, gate: 100 }).at(-1);
        expect(last?.level).toBeCloseTo(jointly(readings), 10);
      }),
    );
  });

  test('forgets slowly: a reading long ago counts less than one of now', () => {
    const [, late] = followLevel([reading(0, -0.1), reading(70, 0.1)], wandering);
    expect(late?.level).toBeGreaterThan(0.02);
  });

  test('holds one odd reading back and goes on', () => {
    const good = [reading(14, 0.02), reading(21, -0.01)];
    const [, before] = followLevel(good, wandering);
    const [, , odd, after] = followLevel([...good, reading(28, -0.79), reading(35, 0)], wandering);
    expect(odd?.odd).toBe(true);
    expect(Math.abs((odd?.level ?? 1) - (before?.level ?? 0))).toBeLessThan(0.02);
    expect(after).toMatchObject({ odd: false });
    expect(Math.abs(after?.level ?? 1)).toBeLessThan(0.02);
  });

  test('holds a first reading back that no flock could be, such as one in the wrong unit', () => {
    const [first] = followLevel([reading(14, Math.log(2.2))], wandering);
    expect(first?.odd).toBe(true);
    expect(first?.level).toBeLessThan(0.06);
  });

  test('believes a jump that a second reading confirms', () => {
    const readings = [reading(14, 0), reading(21, 0), reading(28, -0.5), reading(35, -0.52)];
    expect(followLevel(readings, wandering).at(-1)?.odd).toBe(false);
    expect(followLevel(readings, wandering).at(-1)?.level).toBeCloseTo(-0.5, 1);
  });

  test('a normal reading between two odd ones keeps them apart', () => {
    const readings = [reading(14, 0), reading(21, -0.6), reading(28, 0), reading(35, -0.6)];
    expect(followLevel(readings, wandering).map((each) => each.odd)).toEqual([false, true, false, true]);
  });

  test('readings without any doubt are taken as they are', () => {
    const sure = { ...wandering, drift: 0 };
    expect(followLevel([reading(1, 0.1, 0), reading(2, 0.1, 0)], sure)).toEqual([
      { at: 1, level: 0.1, variance: 0, odd: false },
      { at: 2, level: 0.1, variance: 0, odd: false },
    ]);
  });

  test('of nothing is nothing', () => {
    expect(followLevel([], wandering)).toEqual([]);
  });
});
