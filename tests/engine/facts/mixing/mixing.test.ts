/** Two groups compared by hand: which two are meant, and how they stand to each other. */
import { describe, expect, test } from 'vitest';
import { allFacts } from '../../../../engine/facts/index.ts';
import { openWorkings } from '../../../../engine/facts/workings.ts';
import type { Group, State, Supposition } from '../../../../engine/types.ts';
import { move, out, pen, setting } from '../../../helpers/ground-of.ts';
import { group, stateOf } from '../../../helpers/state-of.ts';
import { bookForTests } from '../../../helpers/work-out.ts';

const on = '2026-06-10';
const weighed = (mean: number): Group['weighings'] => [{ on, line: 30, mean, count: 30, spread: null }];
const whites = group({ arrived: '2026-05-02', weighings: weighed(2) });
const reds = group({
  name: 'reds',
  kind: 'slow',
  hatched: '2026-05-11',
  arrived: '2026-05-12',
  line: 2,
  boxed: 20,
  weighings: weighed(1),
});
const late = group({ name: 'late', hatched: '2026-06-01', arrived: '2026-06-02', line: 5 });
const gone = group({ name: 'spring', boxed: 0, line: 6 });
const settings = { pen, pens: setting('pens', 2), brooder: setting('brooder', 6) };

const workOut = (
  given: Partial<State> = {},
  named: readonly string[] = [],
  supposing: readonly Supposition[] = [],
) => {
  const state = stateOf({ on, groups: [whites, reds], settings, ...given });
  const workings = openWorkings({
    state,
    book: bookForTests,
    facts: allFacts,
    on,
    until: null,
    supposing,
    named,
  });
  return (fact: string) => workings.step(fact, null).value;
};
const pairIn = (groups: readonly Group[], named: readonly string[]) => {
  const value = workOut({ groups }, named);
  return [value('mix-lighter'), value('mix-heavier')];
};

describe('the two that are meant', () => {
  test('are those named, the one named and the only other, or the only two', () => {
    const two = ['reds', 'whites'];
    expect([
      pairIn([whites, reds], []),
      pairIn([whites, reds], ['reds']),
      pairIn([whites, reds, gone], ['whites']),
      pairIn([whites, reds, late], ['whites', 'reds']),
    ]).toEqual([two, two, two, two]);
  });

  test('are asked for where that leaves a choice', () => {
    expect([pairIn([whites, reds, late], []), pairIn([whites, reds, late], ['late'])]).toEqual([
      [null, null],
      [null, null],
    ]);
    expect(pairIn([whites, reds, late], ['late', 'reds', 'whites'])).toEqual([null, null]);
  });

  test('are not to be had where only one group is alive', () => {
    expect(workOut({ groups: [whites, gone] })('has-second-group')).toBe('no');
  });

  test('are told apart by weight, not by age', () => {
    const lightWhites = { ...whites, weighings: weighed(1.3) };
    const heavyReds = { ...reds, kind: 'fast', weighings: weighed(1.5) };
    expect(pairIn([lightWhites, heavyReds], [])).toEqual(['whites', 'reds']);
    expect(workOut({ groups: [lightWhites, heavyReds] })('mix-younger')).toBe('reds');
  });
});

test('weights, ages and arrivals are compared', () => {
  const value = workOut();
  expect(Number(value('weight-ratio'))).toBeCloseTo(
    Number(value('mix-lighter-weight')) / Number(value('mix-heavier-weight')),
    9,
  );
  expect(Number(value('weight-ratio'))).toBeGreaterThan(0.45);
  expect(Number(value('weight-ratio'))).toBeLessThan(0.55);
  expect([value('age-gap'), value('arrival-gap'), value('mix-last-here'), value('quarantine-until')]).toEqual(
    [10, 10, 29, '2026-06-11'],
  );
});

describe('room', () => {
  test('in the pen is one pen for all of both', () => {
    const value = workOut({
      groups: [
        { ...whites, whereabouts: [out('2026-06-01')] },
        { ...reds, whereabouts: [out('2026-06-01', 14)] },
      ],
    });
    expect([value('mix-place'), value('mix-birds'), value('mix-floor')]).toEqual(['pen', 70, 12]);
    expect(Number(value('mix-room'))).toBeCloseTo(12 / 70, 9);
  });

  test('in the brooder is its floor, and what the older of them needs', () => {
    const value = workOut();
    expect([value('mix-place'), value('mix-floor')]).toEqual(['brooder', 6]);
    // 40 days are the sixth week: 1 ft² each by the space table of Clauer.
    expect(Number(value('mix-room-needed')) / 0.09290304).toBeCloseTo(1, 9);
  });

  test('is asked for at the one that would have to leave the brooder', () => {
    const value = workOut({ groups: [{ ...whites, whereabouts: [out('2026-06-01')] }, reds] });
    expect([value('mix-not-out'), value('mix-not-out-age')]).toEqual(['reds', 30]);
    expect(workOut()('mix-not-out')).toBe('none');
  });
});

describe('sickness', () => {
  const seen = (day: string, of: string | null) =>
    workOut({ signs: [{ on: day, line: 40, sign: 'gasping', count: null, group: of, words: '' }] })(
      'mix-sick-signs',
    );

  test('counts for two weeks, in either group or in all birds', () => {
    expect([
      seen('2026-05-28', 'reds'),
      seen('2026-05-27', 'reds'),
      seen(on, null),
      seen(on, 'late'),
    ]).toEqual([1, 0, 1, 0]);
  });

  test('counts when the question tells of it', () => {
    const told: Supposition = { what: { fact: 'signs-told' }, value: 'gasping piled', adds: false };
    expect(workOut({}, [], [told])('mix-sick-signs')).toBe(1);
  });
});

describe('a hunter', () => {
  const outside = (taken: number): readonly Group[] => [
    { ...whites, whereabouts: [out('2026-06-01')] },
    {
      ...reds,
      whereabouts: [out('2026-06-01', 14)],
      losses: taken === 0 ? [] : [{ on: '2026-06-08', line: 50, count: taken, cause: 'hawk' }],
    },
  ];
  const told: Supposition = { what: { fact: 'causes-told' }, value: 'hawk', adds: false };

  test('threatens the group that it took from, or the lighter where one is only spoken of', () => {
    expect([
      workOut({ groups: outside(2) })('mix-hunted'),
      workOut({ groups: outside(0) })('mix-hunted'),
      workOut({ groups: outside(0) }, [], [told])('mix-hunted'),
    ]).toEqual(['reds', 'none', 'reds']);
  });

  test('threatens nobody in the brooder', () => {
    expect(workOut({}, [], [told])('mix-hunted')).toBe('none');
  });
});

describe('groups in one pen', () => {
  const groups = [
    { ...whites, whereabouts: [out('2026-06-01')] },
    { ...reds, whereabouts: [out('2026-06-05', 14)] },
  ];
  const onePen = { ...settings, pens: setting('pens', 1) };
  const sign = (name: string, day: string, line: number) => ({
    on: day,
    line,
    sign: name,
    count: null,
    group: null,
    words: '',
  });
  const beside = (given: Partial<State>) => {
    const state = stateOf({ on, groups, settings, ...given });
    const workings = openWorkings({
      state,
      book: bookForTests,
      facts: allFacts,
      on,
      until: null,
      supposing: [],
    });
    const of = (fact: string, name: string) => workings.step(fact, name).value;
    return [
      workings.step('mix-together', null).value,
      of('smaller-beside', 'reds'),
      of('smaller-beside', 'whites'),
    ];
  };

  test('are found by the pens there are, or by what was told', () => {
    expect([
      beside({}),
      beside({ settings: onePen }),
      beside({ signs: [sign('mixed', '2026-06-07', 60)] }),
      beside({ signs: [sign('mixed', '2026-06-07', 60), sign('parted', '2026-06-09', 61)] }),
    ]).toEqual([
      [null, 'none', 'none'],
      ['2026-06-05', 'whites', 'none'],
      ['2026-06-07', 'whites', 'none'],
      [null, 'none', 'none'],
    ]);
  });

  test('are moved over the ground as one', () => {
    const ground = { ground: setting('ground', 144, [16, 9]) };
    const left = (given: Partial<State>) => {
      const state = stateOf({ on, groups, moves: [move('2026-06-08', 70)], ...given });
      return openWorkings({
        state,
        book: bookForTests,
        facts: allFacts,
        on,
        until: null,
        supposing: [],
      }).step('places-left', null).value;
    };
    expect([
      left({ settings: { ...settings, ...ground } }),
      left({ settings: { ...onePen, ...ground } }),
    ]).toEqual([8, 10]);
  });
});
