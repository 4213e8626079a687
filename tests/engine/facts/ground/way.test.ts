/** The pen's way over ground of 16 by 9 m: three strips of 16 m, each with room for four pens of 4 m. */
import { describe, expect, test } from 'vitest';
import type { PenMove, State } from '../../../../engine/types.ts';
import { move, onGrass, out, pen, setting } from '../../../helpers/ground-of.ts';
import { group } from '../../../helpers/state-of.ts';
import { workOut, worth } from '../../../helpers/work-out.ts';

const settings = { pen, ground: setting('ground', 144, [16, 9]), pens: setting('pens', 2) };
const at = (given: Partial<State> = {}): State => onGrass({ settings, ...given });
const moved = (count: number, given: Partial<PenMove> = {}): PenMove[] =>
  Array.from({ length: count }, (_, index) => move('2026-06-04', 100 + index, given));
const wayOf = (state: State, name = 'whites') => {
  const workings = workOut(state);
  return ['way-on', 'strip-now', 'strip-left', 'strip-next'].map((id) => workings.step(id, name).value);
};

describe('one pen', () => {
  test('goes along the first strip, turns into the next, and stops where none is left', () => {
    const wayAfter = (count: number) => wayOf(at({ moves: moved(count) }));
    expect([0, 3, 4, 8, 11, 12].map(wayAfter)).toEqual([
      ['along', '1', 3, '2'],
      ['turn', '1', 0, '2'],
      ['along', '2', 3, '3'],
      ['last', '3', 3, null],
      ['none', '3', 0, null],
      ['none', null, null, null],
    ]);
  });

  test('leaves the room of the strips that it has not been on', () => {
    const left = (count: number) => worth(at({ moves: moved(count) }), 'places-left', '2026-06-10', null);
    expect([left(0), left(5), left(11), left(14)]).toEqual([11, 6, 0, 0]);
  });

  test('goes where a strip is named, in figures or by its letter', () => {
    expect(wayOf(at({ moves: moved(1, { strip: 'strip 3' }) }))).toEqual(['along', '3', 3, '1']);
    expect(wayOf(at({ moves: moved(1, { strip: 'lane b' }) }))).toEqual(['along', '2', 3, '3']);
  });

  test('has no map where pen or ground were not told as sizes, or the birds are not out', () => {
    expect(wayOf(onGrass())[0]).toBe('unmapped');
    expect(wayOf(at({ groups: [group()] }))[0]).toBe('unmapped');
  });
});

test('two pens each have a strip, and neither is sent into that of the other', () => {
  const reds = group({ name: 'reds', line: 2, whereabouts: [out('2026-06-05', 14)] });
  const both = at({ groups: [group({ whereabouts: [out('2026-06-03')] }), reds], moves: moved(3) });
  expect([wayOf(both), wayOf(both, 'reds')]).toEqual([
    ['turn', '1', 0, '3'],
    ['along', '2', 3, '3'],
  ]);
});

test('a batch that comes after another goes on where that stopped', () => {
  const gone = group({
    name: 'spring',
    line: 2,
    boxed: 40,
    whereabouts: [out('2026-05-20', 10)],
    processed: [{ on: '2026-06-01', line: 11, count: 40, dressed: null }],
  });
  const state = at({
    groups: [gone, group({ whereabouts: [out('2026-06-03', 12)] })],
    moves: [move('2026-05-21', 90), move('2026-05-22', 91)],
  });
  expect(wayOf(state)).toEqual(['turn', '1', 0, '2']);
});

describe('a strip asked about', () => {
  const lies = (strip: number, state = at({ moves: moved(5) })) => {
    const workings = workOut(state, state.on, [{ what: { fact: 'strip-asked' }, value: strip, adds: false }]);
    return ['strip-state', 'strip-used-on', 'ground-free-on'].map((id) => workings.step(id, 'whites').value);
  };

  test('rests for a year from its last day, is in use, is free, or is not there', () => {
    expect([1, 2, 3, 4].map((strip) => lies(strip))).toEqual([
      ['resting', '2026-06-04', '2027-06-04'],
      ['in-use', '2026-06-10', '2027-06-10'],
      ['free', null, '2027-06-04'],
      ['not-there', null, '2027-06-04'],
    ]);
  });

  test('is free again a year after, to the day', () => {
    const later = (on: string) => lies(1, at({ moves: moved(5), on }))[0];
    expect([later('2027-06-03'), later('2027-06-04')]).toEqual(['resting', 'free']);
  });
});

describe('strips', () => {
  const strips = (given: State['settings'], area?: number) =>
    workOut(
      onGrass({ settings: { pen, ...given } }),
      '2026-06-10',
      area === undefined ? [] : [{ what: { fact: 'ground-area' }, value: area, adds: false }],
    );

  test('lie along the longer side, as many as the pen is wide', () => {
    const workings = strips({ ground: setting('ground', 200, [10, 20]) });
    expect([workings.step('strips', null).value, workings.step('strip-length', null).value]).toEqual([3, 20]);
  });

  test('are as told, and make up the ground where that was not told', () => {
    const told = {
      strips: setting('strips', 5),
      'strip-length': setting('strip-length', 40),
      'strip-width': setting('strip-width', 3.5),
    };
    const workings = strips(told);
    expect([workings.step('strips', null).value, workings.step('ground-area', null).value]).toEqual([5, 700]);
  });

  test('of a length that was told are as many as the ground has room for', () => {
    const given = { ground: setting('ground', 600), 'strip-length': setting('strip-length', 40) };
    expect(strips(given).step('strips', null).value).toBe(5);
  });

  test('of supposed ground are counted anew', () => {
    const given = { ground: setting('ground', 200, [10, 20]), strips: setting('strips', 2) };
    expect([strips(given).step('strips', null).value, strips(given, 360).step('strips', null).value]).toEqual(
      [2, 6],
    );
  });

  test('are asked for by their length where only an area is known', () => {
    expect(strips({ ground: setting('ground', 600) }).step('strips', null).missing).toEqual([
      { fact: 'strip-length', group: null },
    ]);
  });
});
