import { describe, expect, test } from 'vitest';
import type { Weighing } from '../../../../engine/types.ts';
import { group, stateOf } from '../../../helpers/state-of.ts';
import { workOut, worth } from '../../../helpers/work-out.ts';

const weighing = (
  on: string,
  mean: number,
  count: number,
  line: number,
  spread: number | null = null,
): Weighing => ({
  on,
  line,
  mean,
  count,
  spread,
});
const weighed = (...weighings: readonly Weighing[]) =>
  stateOf({ on: '2026-06-10', groups: [group({ weighings })] });

describe('the last weighing', () => {
  test('is not known when there was none', () => {
    const workings = workOut(weighed());
    expect(workings.step('weighed', 'whites').value).toBe(false);
    expect(workings.step('growth-ratio', 'whites')).toMatchObject({
      value: null,
      missing: [{ fact: 'last-weighed', group: 'whites' }],
    });
  });

  test('is all that was weighed on its day', () => {
    const state = weighed(
      weighing('2026-05-29', 0.9, 5, 4),
      weighing('2026-06-05', 1.5, 1, 5),
      weighing('2026-06-05', 1.8, 2, 6),
    );
    const facts = ['last-weighed', 'days-since-weighed', 'birds-weighed', 'weighed-mean'];
    expect(facts.map((fact) => worth(state, fact))).toEqual(['2026-06-05', 5, 3, 5.1 / 3]);
    expect(workOut(state).step('weighed-mean', 'whites').entries).toEqual([
      { on: '2026-06-05', line: 5 },
      { on: '2026-06-05', line: 6 },
    ]);
  });

  test('stands beside the plan line of its own day', () => {
    const state = weighed(weighing('2026-06-12', 2.05, 5, 4));
    // 42 days: 2.5 kg published, 0.82 of it planned for.
    expect(worth({ ...state, on: '2026-06-12' }, 'growth-ratio')).toBeCloseTo(1, 6);
  });

  test('of nothing on the scale does not count', () => {
    expect(worth(weighed(weighing('2026-06-05', 0, 1, 4)), 'weighed')).toBe(false);
  });
});

describe('how many to weigh', () => {
  test('is fewer when single weights lie close together, and never more than there are', () => {
    const usual = Number(worth(weighed(), 'birds-to-weigh'));
    const even = Number(worth(weighed(weighing('2026-06-05', 1.6, 20, 4, 0.08)), 'birds-to-weigh'));
    expect(usual).toBe(16);
    expect(even).toBeLessThan(usual);
    expect(worth(stateOf({ groups: [group({ boxed: 4 })] }), 'birds-to-weigh')).toBe(4);
  });

  test('takes its spread from the single weights as far as they are many', () => {
    // 12 % counted like 10 birds, and 5 % of 20 birds: √((10 × 0.12² + 19 × 0.05²) / 29).
    const spread = worth(weighed(weighing('2026-06-05', 1.6, 20, 4, 0.08)), 'bird-spread');
    expect(spread).toBeCloseTo(Math.sqrt((10 * 0.12 ** 2 + 19 * 0.05 ** 2) / 29), 12);
  });
});
