import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { State, Supposition } from '../../../engine/types.ts';
import { settingsOf } from '../../helpers/settings-of.ts';
import { stateOf } from '../../helpers/state-of.ts';
import { workOut } from '../../helpers/work-out.ts';

const say = (fact: string, value: number | string): Supposition => ({ what: { fact }, value, adds: false });
const flock = (given: Partial<State> = {}): State =>
  stateOf({ on: '2026-06-10', settings: settingsOf({ 'process-on': '2026-06-20' }), ...given });
const value = (fact: string, supposing: readonly Supposition[] = [], state = flock()) =>
  Number(workOut(state, state.on, supposing).step(fact, 'whites').value);

describe('meat', () => {
  test('is that of the processing day, of the birds expected to be alive then', () => {
    const state = flock();
    const workings = workOut(state);
    const of = (fact: string) => Number(workings.step(fact, 'whites').value);
    expect(of('yield-age')).toBe(50);
    expect(of('meat-birds')).toBeLessThan(50);
    expect(of('meat-birds')).toBeGreaterThan(48);
    expect(of('meat-total')).toBeCloseTo(of('meat-birds') * of('yield-live') * 0.72, 9);
    expect(workings.steps().flatMap(({ assumed }) => assumed.map(({ id }) => id))).toContain(
      'losses-as-usual',
    );
  });

  test('of another day or age is more or less', () => {
    const [early, late] = ['2026-06-16', '2026-06-27'].map((on) =>
      value('meat-a-bird', [say('yield-on', on)]),
    );
    expect(early).toBeLessThan(value('meat-a-bird'));
    expect(late).toBeGreaterThan(value('meat-a-bird'));
    expect(value('meat-a-bird', [say('yield-age', 57)])).toBe(late);
  });

  test('of a weight that is named is that of one bird, or of as many as are named', () => {
    const told = say('weight-told', 3);
    expect(value('meat-total', [told])).toBeCloseTo(3 * 0.72, 12);
    expect(value('meat-total', [told, say('birds-told', 12)])).toBeCloseTo(12 * 3 * 0.72, 12);
  });

  test('of a weight that is named has the range of the dressing share alone', () => {
    const told = [say('weight-told', 3)];
    expect(value('meat-total-low', told)).toBeCloseTo(3 * 0.7, 9);
    expect(value('meat-total-high', told)).toBeCloseTo(3 * 0.75, 9);
  });

  test('lies within its range, which is wider than that of the weight alone', () => {
    fc.assert(
      fc.property(fc.integer({ min: 30, max: 70 }), (age) => {
        const supposing = [say('yield-age', age)];
        const [low, middle, high] = ['meat-total-low', 'meat-total', 'meat-total-high'].map((id) =>
          value(id, supposing),
        );
        expect(low).toBeLessThan((middle ?? 0) * 0.95);
        expect(high).toBeGreaterThan((middle ?? 0) * 1.05);
      }),
      { numRuns: 20 },
    );
  });

  test('that a question names for itself is left out of the sum over the groups', () => {
    expect(
      workOut(flock(), '2026-06-10', [say('birds-told', 1)]).step('meat-in-all', 'whites').value,
    ).toBeNull();
    expect(value('meat-in-all')).toBe(value('meat-total'));
  });
});
