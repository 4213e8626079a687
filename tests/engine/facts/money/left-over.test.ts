/** What becomes of feed that is still there when a batch is over: who bears it, and how much of it there is. */
import { describe, expect, test } from 'vitest';
import type { State } from '../../../../engine/types.ts';
import { bought, setTo } from '../../../helpers/bought.ts';
import { group, stateOf } from '../../../helpers/state-of.ts';
import { worth } from '../../../helpers/work-out.ts';

/** Forty whites, all processed on 1 July, on 300 kg for 300.00, of which 240 kg are on record as given. */
const spring = group({
  boxed: 40,
  processed: [{ on: '2026-07-01', line: 5, count: 40, dressed: 80 }],
});
const feedOf = (mass: number, on = '2026-06-01') => ({ on, line: 20, group: null, mass, ration: null });
const summer = group({ name: 'reds', boxed: 20, arrived: '2026-07-20', hatched: '2026-07-19', line: 30 });

const state = (more: Partial<State> = {}): State =>
  stateOf({
    on: '2026-07-10',
    groups: [spring],
    purchases: [bought('2026-05-02', 'feed', '300.00', { mass: 300 })],
    feedings: [feedOf(240)],
    ...more,
  });

const money = (given: State, fact: string, name: string | null = null) => worth(given, fact, given.on, name);

describe('feed left in the bin', () => {
  test('is not borne by the batch that left it, at its part of what was paid', () => {
    expect(money(state(), 'feed-passed-on', 'whites')).toBeCloseTo(60, 9);
    expect(money(state(), 'feed-passed-on-worth', 'whites')).toBe(60);
    expect(money(state(), 'cost-feed', 'whites')).toBe(240);
    expect(money(state(), 'batch-paid', 'whites')).toBe(240);
    expect([money(state(), 'all-feed-passed-on-worth'), money(state(), 'spent')]).toEqual([60, 300]);
  });

  test('is borne by the batch that comes next, beside what is bought for it', () => {
    const next = state({
      on: '2026-08-01',
      groups: [spring, summer],
      purchases: [
        bought('2026-05-02', 'feed', '300.00', { mass: 300 }),
        bought('2026-07-21', 'feed', '50.00', { mass: 40 }),
      ],
    });
    expect(money(next, 'feed-taken-over', 'reds')).toBe(60);
    expect([money(next, 'batch-paid', 'whites'), money(next, 'batch-paid', 'reds')]).toEqual([240, 110]);
  });

  test('is what was counted after the last bird, less what was bought by then', () => {
    const counted = (mass: number) =>
      state({
        purchases: [
          bought('2026-05-02', 'feed', '300.00', { mass: 300 }),
          bought('2026-07-03', 'feed', '20.00', { mass: 20, line: 25 }),
        ],
        settings: {
          'feed-in-stock': setTo('feed-in-stock', mass, '2026-07-05').map((each) => ({ ...each, line: 40 })),
        },
      });
    expect(money(counted(50), 'cost-feed', 'whites')).toBe(270);
    expect(money(counted(0), 'cost-feed', 'whites')).toBe(300);
  });

  test('is nothing where no feeding is on record: all that was bought is taken to be eaten', () => {
    expect(money(state({ feedings: [] }), 'feed-passed-on-worth', 'whites')).toBe(0);
    expect(money(state({ feedings: [] }), 'cost-feed', 'whites')).toBe(300);
  });

  test('is not taken from what was bought for one batch alone', () => {
    const alone = state({
      purchases: [bought('2026-05-02', 'feed', '300.00', { mass: 300, group: 'whites' })],
    });
    expect(money(alone, 'feed-passed-on-worth', 'whites')).toBe(0);
    expect(money(alone, 'cost-feed', 'whites')).toBe(300);
  });

  test('is nothing while birds for the table are there', () => {
    expect(
      money(state({ on: '2026-06-20', groups: [group({ boxed: 40 })] }), 'feed-passed-on', 'whites'),
    ).toBe(0);
  });
});
