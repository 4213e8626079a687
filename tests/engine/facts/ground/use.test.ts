/** Ground used and left, counted by hand: a pen of 12 m² on ground of 240 m² of no known shape. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { move, onGrass, out, pen, setting } from '../../../helpers/ground-of.ts';
import { group } from '../../../helpers/state-of.ts';
import { workOut, worth } from '../../../helpers/work-out.ts';

const on = '2026-06-10';
const moved = (count: number) => Array.from({ length: count }, (_, index) => move('2026-06-05', 100 + index));

describe('ground', () => {
  test('is used up by each coming out and each move of the last year', () => {
    const moves = [move('2025-06-10', 1), move('2025-06-11', 2), move('2026-06-04', 19), move(on, 20)];
    expect(worth(onGrass({ moves }), 'ground-used')).toBe(48);
    expect(
      workOut(onGrass({ moves }))
        .step('ground-used', null)
        .entries.map(({ line }) => line),
    ).toEqual([12, 2, 19, 20]);
  });

  test('is used for its part by a move that is shorter than the pen, and once by one that is longer', () => {
    const usedAfter = (distance: number) =>
      worth(onGrass({ moves: [move(on, 20, { distance })] }), 'ground-used');
    expect([usedAfter(1), usedAfter(4), usedAfter(9)]).toEqual([15, 24, 24]);
  });

  test('leaves so many whole moves, and none below nothing', () => {
    const left = (count: number) => worth(onGrass({ moves: moved(count) }), 'places-left');
    expect([left(0), left(18), left(19), left(25)]).toEqual([19, 1, 0, 0]);
  });

  test('of a size that is not a multiple of the pen leaves no half move, and loses none to rounding', () => {
    const left = (ground: number, floor: number) =>
      worth(
        onGrass(
          { settings: { pen: setting('pen', floor), ground: setting('ground', ground) } },
          { whereabouts: [] },
        ),
        'places-left',
      );
    expect([left(23.9, 12), left(24, 12), left(0.3, 0.1)]).toEqual([1, 2, 3]);
  });

  test('is never more for another move', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 30 }), (count) => {
        const before = Number(worth(onGrass({ moves: moved(count) }), 'places-left'));
        expect(worth(onGrass({ moves: [...moved(count), move(on, 200)] }), 'places-left')).toBe(
          Math.max(0, before - 1),
        );
      }),
      { numRuns: 20 },
    );
  });

  test('is asked for where it was never measured', () => {
    expect(workOut(onGrass({ settings: { pen } })).step('places-left', null).missing).toEqual([
      { fact: 'ground-area', group: null },
    ]);
    expect(workOut(onGrass({ settings: {} })).step('places-left', null).missing).toEqual([
      { fact: 'ground-area', group: null },
      { fact: 'pen-area', group: null },
    ]);
  });

  test('rests for a year from the last move, or from the day they came out', () => {
    expect(worth(onGrass({ moves: [move('2026-06-05', 20)] }), 'ground-free-on')).toBe('2027-06-05');
    expect(worth(onGrass(), 'ground-free-on')).toBe('2027-06-03');
    expect(worth(onGrass({}, { whereabouts: [] }), 'ground-free-on')).toBeNull();
  });
});

describe('two groups on one ground', () => {
  const reds = group({
    name: 'reds',
    kind: 'slow',
    hatched: '2026-05-01',
    boxed: 20,
    line: 2,
    whereabouts: [out('2026-06-05', 14)],
  });
  const whites = group({ whereabouts: [out('2026-06-03')] });
  const needed = (pens: number) => {
    const settings = { pen, ground: setting('ground', 240), pens: setting('pens', pens) };
    const workings = workOut(onGrass({ settings, groups: [whites, reds] }), on, [
      { what: { fact: 'ready-on' }, value: '2026-06-12', adds: false },
    ]);
    return workings.step('places-needed', null).value;
  };

  test('in two pens need what both need, and in one pen what the one needs that needs more', () => {
    expect([needed(2), needed(1)]).toEqual([4, 2]);
  });

  test('that are still in the brooder need none', () => {
    const settings = { pen, ground: setting('ground', 240), pens: setting('pens', 2) };
    const inside = { ...reds, whereabouts: [] };
    const workings = workOut(onGrass({ settings, groups: [whites, inside] }), on, [
      { what: { fact: 'ready-on' }, value: '2026-06-12', adds: false },
    ]);
    expect(workings.step('places-needed', null).value).toBe(2);
  });
});

test('a group that one pen has no room for uses the ground of two, and says so', () => {
  const many = onGrass(
    { settings: { pen, ground: setting('ground', 240), pens: setting('pens', 3) }, moves: [move(on, 20)] },
    { boxed: 100 },
  );
  const step = workOut(many).step('pens-of-group', 'whites');
  expect([step.value, step.assumed]).toEqual([
    2,
    [{ id: 'pens-by-room', group: 'whites', values: { pens: { value: 2, unit: null } } }],
  ]);
  expect([worth(many, 'ground-used'), worth(many, 'places-left'), worth(many, 'moves-left')]).toEqual([
    48, 16, 8,
  ]);
});
