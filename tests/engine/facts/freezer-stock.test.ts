/** Birds in the freezer: nothing comes from nowhere and nothing gets lost, and the oldest are eaten first. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays } from '../../../engine/day.ts';
import type { Eaten, Share, State } from '../../../engine/types.ts';
import { setTo } from '../../helpers/bought.ts';
import { group, stateOf } from '../../helpers/state-of.ts';
import { worth } from '../../helpers/work-out.ts';

const done = (name: string, on: string, count: number, dressed: number | null) =>
  group({
    name,
    hatched: addDays(on, -56),
    arrived: addDays(on, -55),
    boxed: count,
    processed: [{ on, line: 5, count, dressed }],
  });

const ate = (on: string, count: number, mass: number | null = null): Eaten => ({ on, line: 20, count, mass });
const handed = (on: string, count: number): Share => ({
  on,
  line: 30,
  who: 'Jo',
  count,
  step: 'handed',
  paid: null,
});

const flock = (more: Partial<State> = {}): State =>
  stateOf({
    on: '2026-07-01',
    groups: [done('spring', '2026-06-01', 20, 40), done('early', '2026-05-01', 10, 15)],
    ...more,
  });

const freezer = (state: State, fact: string) => worth(state, fact, state.on, null);

describe('birds and meat', () => {
  test('left are those that went in less those that came out', () => {
    const state = flock({ eaten: [ate('2026-06-10', 3)], shares: [handed('2026-06-12', 4)] });
    expect(
      ['frozen-in', 'frozen-eaten', 'handed', 'freezer-left'].map((fact) => freezer(state, fact)),
    ).toEqual([30, 3, 4, 23]);
    // All birds weigh 55 kg together; the seven are of the oldest, which weigh 1.5 kg each.
    expect(Number(freezer(state, 'freezer-left-weight'))).toBeCloseTo(55 - 7 * 1.5, 9);
  });

  test('taken out weigh the same when another batch has been put in since', () => {
    const out = (groups: State['groups']) =>
      freezer(flock({ groups, eaten: [ate('2026-05-20', 4), ate('2026-06-10', 8)] }), 'frozen-weight-out');
    const early = done('early', '2026-05-01', 12, 18);
    expect(out([early])).toBeCloseTo(18, 9);
    expect(out([done('spring', '2026-06-01', 20, 40), early])).toBeCloseTo(18, 9);
    // Two of the second batch, 2 kg each, once the first is used up.
    const fewer = done('early', '2026-05-01', 10, 15);
    expect(out([done('spring', '2026-06-01', 20, 40), fewer])).toBeCloseTo(15 + 2 * 2, 9);
  });

  test('are taken at the weight that was told', () => {
    expect(Number(freezer(flock({ eaten: [ate('2026-06-10', 1, 2.5)] }), 'freezer-left-weight'))).toBeCloseTo(
      52.5,
      9,
    );
  });

  test('of which more came out than went in leave nothing, and that is said', () => {
    const state = flock({ eaten: [ate('2026-06-10', 31)] });
    expect(freezer(state, 'freezer-left')).toBe(0);
    expect(freezer(state, 'freezer-left-weight')).toBe(0);
    expect(freezer(state, 'freezer-empty-on')).toBeNull();
  });

  test('never come from nowhere: in is eaten, handed over and left, in birds and in weight', () => {
    const birds = fc.integer({ min: 1, max: 60 });
    const weights = fc.double({ min: 1, max: 4, noNaN: true });
    const out = fc.array(fc.record({ count: fc.integer({ min: 1, max: 4 }), isGift: fc.boolean() }), {
      maxLength: 12,
    });
    fc.assert(
      fc.property(fc.array(fc.tuple(birds, weights), { minLength: 1, maxLength: 4 }), out, (lots, taken) => {
        const groups = lots.map(([count, each], index) =>
          done(`batch ${index}`, addDays('2026-05-01', index), count, count * each),
        );
        const all = lots.reduce((sum, [count]) => sum + count, 0);
        // Only what is there can be taken.
        let left = all;
        const valid = taken.filter(({ count }) => {
          if (count > left) return false;
          left -= count;
          return true;
        });
        const state = stateOf({
          on: '2026-07-01',
          groups,
          eaten: valid.filter(({ isGift }) => !isGift).map(({ count }) => ate('2026-06-10', count)),
          shares: valid.filter(({ isGift }) => isGift).map(({ count }) => handed('2026-06-10', count)),
        });
        const [stay, eaten, given] = ['freezer-left', 'frozen-eaten', 'handed'].map((fact) =>
          Number(freezer(state, fact)),
        );
        expect(Number(stay) + Number(eaten) + Number(given)).toBe(all);
        const [inside, outside, rest] = ['frozen-weight-in', 'frozen-weight-out', 'freezer-left-weight'].map(
          (fact) => Number(freezer(state, fact)),
        );
        expect(Number(rest) + Number(outside)).toBeCloseTo(Number(inside), 6);
      }),
      { numRuns: 40 },
    );
  });
});

describe('how long they last', () => {
  test('goes by what was eaten in the last weeks, once they are enough', () => {
    // Four in 28 days is one a week, so 26 last 26 weeks.
    const eaten = ['2026-06-04', '2026-06-11', '2026-06-18', '2026-06-25'].map((on) => ate(on, 1));
    expect(freezer(flock({ eaten }), 'eating-rate')).toBe(1);
    expect(freezer(flock({ eaten }), 'freezer-empty-on')).toBe(addDays('2026-07-01', 26 * 7));
  });

  test('goes by what is set before that', () => {
    const settings = { 'birds-a-week': setTo('birds-a-week', 2) };
    const state = flock({ settings, eaten: [ate('2026-06-28', 4)] });
    expect(freezer(state, 'eating-rate')).toBe(2);
    expect(freezer(state, 'freezer-empty-on')).toBe(addDays('2026-07-01', 91));
  });
});

describe('the oldest', () => {
  test.each([
    [0, '2026-05-01', 0],
    [9, '2026-05-01', 0],
    [10, '2026-06-01', 0],
  ])('after %i eaten are from %s', (count, oldest) => {
    const state = flock({ eaten: count === 0 ? [] : [ate('2026-06-10', count)] });
    expect(freezer(state, 'oldest-frozen')).toBe(oldest);
  });

  test('are past their time after a year', () => {
    expect(freezer(flock({ on: '2027-05-01' }), 'past-keeping')).toBe(0);
    expect(freezer(flock({ on: '2027-05-02' }), 'past-keeping')).toBe(10);
    expect(freezer(flock({ on: '2027-06-02' }), 'past-keeping')).toBe(30);
    expect(freezer(flock(), 'oldest-best-before')).toBe('2027-05-01');
  });
});
