import { describe, expect, test } from 'vitest';
import type { Share } from '../../../engine/types.ts';
import { group, stateOf } from '../../helpers/state-of.ts';
import { workOut, worth } from '../../helpers/work-out.ts';

const on = '2026-05-08';
const share = (who: string, count: number, step: Share['step'], line: number): Share => ({
  who,
  count,
  step,
  line,
  on,
  paid: null,
});

const batch = group({
  boxed: 50,
  dead: 1,
  losses: [{ on, line: 2, count: 2, cause: 'hawk' }],
  processed: [{ on, line: 3, count: 10, dressed: null }],
  kept: [{ on, line: 4, count: 3, until: null }],
});

describe('a group', () => {
  test('adds up by hand', () => {
    const facts = ['boxed', 'dead-on-arrival', 'arrived-alive', 'lost', 'processed', 'alive', 'kept-back'];
    const workings = workOut(stateOf({ groups: [batch] }));
    expect(facts.map((fact) => workings.step(fact, 'whites').value)).toEqual([50, 1, 49, 2, 10, 37, 3]);
  });

  test('names the lines it was counted from', () => {
    const { entries } = workOut(stateOf({ groups: [batch] })).step('processed', 'whites');
    expect(entries).toEqual([{ on, line: 3 }]);
  });
});

describe('promises', () => {
  const shares = [
    share('ann', 6, 'promised', 5),
    share('ann', 2, 'handed', 6),
    share('bo', 4, 'promised', 7),
    // More than was promised: ann's birds are still owed.
    share('bo', 5, 'handed', 8),
    share('cy', 1, 'handed', 9),
    share('ann', 2, 'paid', 10),
  ];

  test('are what each was promised less what each was handed', () => {
    expect(worth(stateOf({ shares }), 'promised', on, null)).toBe(4);
  });

  test('can be kept with what is alive or processed and not kept back, handed over or eaten', () => {
    const state = stateOf({ groups: [batch], shares, eaten: [{ on, line: 11, count: 1, mass: null }] });
    // 37 alive less 3 kept back, 10 processed, 8 handed over, 1 eaten.
    expect(worth(state, 'birds-to-hand', on, null)).toBe(35);
  });

  test('of a flock without records are none', () => {
    expect(worth(stateOf(), 'promised', on, null)).toBe(0);
  });
});
