/** How old the birds are, how many are alive and where, worked by hand for a group of fifty. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Group } from '../../../engine/types.ts';
import { group, stateOf } from '../../helpers/state-of.ts';
import { workOut, worth } from '../../helpers/work-out.ts';

const of = (given: Partial<Group>, on = '2026-06-01') => stateOf({ on, groups: [group(given)] });
const loss = (count: number, line = 5) => ({ on: '2026-05-10', line, count, cause: 'unknown' });
const processed = (count: number) => ({ on: '2026-05-30', line: 20, count, dressed: null });
const kept = (count: number, until: string | null, line = 11) => ({ on: '2026-05-20', line, count, until });
const lives = (place: 'brooder' | 'pen', daysOnly = false, line = 12) => ({
  on: '2026-05-24',
  line,
  place,
  daysOnly,
});

test('age counts from the hatch, not from the day they came', () => {
  const state = of({ hatched: '2026-05-01', arrived: '2026-05-03' });
  expect(workOut(state).step('age', 'whites')).toMatchObject({
    value: 31,
    unit: 'day',
    entries: [{ on: '2026-05-03', line: 1 }],
  });
  expect(worth(state, 'age', '2026-05-01')).toBe(0);
});

describe('the living', () => {
  test('are the box less the dead in it, the lost and the processed', () => {
    const state = of({ boxed: 52, dead: 1, losses: [loss(2), loss(1, 6)], processed: [processed(10)] });
    const workings = workOut(state);
    expect(workings.step('alive', 'whites')).toMatchObject({ value: 38, unit: 'bird' });
    expect(workings.step('lost', 'whites')).toMatchObject({
      value: 3,
      entries: [
        { on: '2026-05-10', line: 5 },
        { on: '2026-05-10', line: 6 },
      ],
    });
  });

  test('are never more for another loss', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 5 }), { maxLength: 8 }),
        fc.integer({ min: 1, max: 5 }),
        (counts, more) => {
          const losses = counts.map((count, index) => loss(count, index + 2));
          const before = worth(of({ boxed: 90, losses }), 'alive');
          expect(worth(of({ boxed: 90, losses: [...losses, loss(more, 20)] }), 'alive')).toBe(
            Number(before) - more,
          );
        },
      ),
    );
  });

  test.each([
    [{}, 'yes'],
    [{ boxed: 3, losses: [loss(3)] }, 'no'],
    [{ boxed: 3, losses: [loss(4)] }, 'no'],
    [{ hatched: '2026-06-02' }, 'no'],
  ])('%j: are there any: %s', (given, any) => {
    expect(worth(of(given), 'has-birds')).toBe(any);
  });
});

describe('birds kept back', () => {
  test('are those not yet due, and never more than are alive', () => {
    expect(
      worth(of({ kept: [kept(4, null), kept(3, '2026-06-01', 12), kept(9, '2026-05-31', 13)] }), 'kept-back'),
    ).toBe(7);
    expect(worth(of({ boxed: 5, kept: [kept(8, null)] }), 'kept-back')).toBe(5);
  });
});

describe('where they live', () => {
  test.each([
    ['from the start', [], 'brooder'],
    ['put out for good', [lives('pen')], 'pen'],
    ['out by day only', [lives('pen', true)], 'brooder'],
    ['fetched in again', [lives('pen'), lives('brooder', false, 13)], 'brooder'],
    ['out by day, then for good', [lives('pen', true), lives('pen', false, 13)], 'pen'],
  ] as const)('%s: %s', (_, whereabouts, place) => {
    expect(worth(of({ whereabouts }), 'place')).toBe(place);
  });

  test('is nowhere once all are gone', () => {
    expect(worth(of({ boxed: 10, processed: [processed(10)], whereabouts: [lives('pen')] }), 'place')).toBe(
      'gone',
    );
  });
});

test('kind and sexes are as told', () => {
  const state = of({ kind: 'slow', sexes: 'pullets' });
  expect([worth(state, 'kind'), worth(state, 'sexes')]).toEqual(['slow', 'pullets']);
});
