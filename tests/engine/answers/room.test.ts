/** Room and troughs answered by all their rules together. */
import { describe, expect, test } from 'vitest';
import type { Group, State, Supposition } from '../../../engine/types.ts';
import { answered } from '../../helpers/answered.ts';
import { group, stateOf } from '../../helpers/state-of.ts';

const squareFoot = 0.09290304;
const inch = 0.0254;

const told = (values: Readonly<Record<string, number>>): State['settings'] =>
  Object.fromEntries(
    Object.entries(values).map(([what, value]) => [
      what,
      [{ what, value, on: '2026-05-01', line: 20, size: null, said: String(value) }],
    ]),
  );
const out = (given: Partial<Group> = {}): Group =>
  group({ whereabouts: [{ on: '2026-05-08', line: 9, place: 'pen', daysOnly: false }], ...given });

const gist = async (
  state: State,
  question: string,
  groups: readonly string[] = [],
  supposing: readonly Supposition[] = [],
) => {
  const { parts, results } = await answered(state, question, groups, state.on, supposing);
  const short = (rule: string): string => rule.replace(`${question}/`, '');
  return {
    groups: parts.map((part) => part.group),
    rules: parts.map(({ rule }) => short(rule ?? '')),
    asks: [...new Set(parts.flatMap(({ unknown }) => unknown.map(({ fact }) => fact)))],
    steps: parts.flatMap(({ steps }) => steps.map(({ rule }) => short(rule))),
    asides: parts.flatMap(({ cautions, remarks }) =>
      [...cautions, ...remarks].map(({ rule }) => short(rule)),
    ),
    results: Object.fromEntries(results.map(({ id, value }) => [id, value])),
  };
};

describe('room', () => {
  test('enough for now, and the day it gets tight', async () => {
    expect(await gist(stateOf({ settings: told({ brooder: 40 * squareFoot }) }), 'room')).toEqual({
      groups: ['whites'],
      rules: ['tight-later'],
      asks: [],
      steps: [],
      asides: [],
      results: {
        'area-per-bird': expect.closeTo(0.8 * squareFoot, 9),
        fit: 80,
        'tight-on': '2026-06-05',
      },
    });
  });

  test('three days before it gets tight it stands on the round', async () => {
    const state = stateOf({ on: '2026-05-19', settings: told({ brooder: 30 * squareFoot }) });
    expect((await gist(state, 'room')).steps).toEqual(['get-room-ready']);
    expect((await gist({ ...state, on: '2026-05-18' }, 'room')).steps).toEqual([]);
  });

  test('too tight in the pen: what is lacking, as a task', async () => {
    const state = stateOf({ groups: [out()], settings: told({ pen: 60 * squareFoot }) });
    expect(await gist(state, 'room')).toMatchObject({ rules: ['too-tight'], steps: ['make-room'] });
  });

  test('above the least and short of ease is said', async () => {
    const state = stateOf({ groups: [out()], settings: told({ pen: 85 * squareFoot }) });
    expect((await gist(state, 'room')).asides).toEqual(['at-ease']);
  });

  test('a size not told is asked for', async () => {
    expect(await gist(stateOf(), 'room')).toMatchObject({ rules: [''], asks: ['room-area'] });
  });

  test('asked about the pen, it is about those in the pen', async () => {
    const reds = group({ name: 'reds', line: 2 });
    const state = stateOf({ groups: [out(), reds], settings: told({ pen: 11, brooder: 4 }) });
    const asked = (fact: string): Supposition[] => [{ what: { fact }, value: 'yes', adds: false }];
    expect((await gist(state, 'room')).groups).toEqual(['whites', 'reds']);
    expect((await gist(state, 'room', [], asked('asked-pen'))).groups).toEqual(['whites']);
    expect((await gist(state, 'room', [], asked('asked-brooder'))).groups).toEqual(['reds']);
  });
});

describe('trough-room', () => {
  const month = '2026-05-29';

  test('by age alone, while the length of a feeder is asked for', async () => {
    expect(await gist(stateOf({ on: month, groups: [group({ boxed: 60 })] }), 'trough-room')).toEqual({
      groups: ['whites'],
      rules: ['by-age'],
      asks: ['feeder-length'],
      steps: [],
      asides: ['drinker-edge', 'round-feeders'],
      results: {
        'feeder-length': expect.closeTo(60 * inch, 9),
        'feeder-edge': expect.closeTo(120 * inch, 9),
        'drinker-length': expect.closeTo(30 * inch, 9),
        drinkers: 2,
      },
    });
  });

  test.each([
    [1, 'too-short'],
    [2, 'enough'],
  ])('%i feeders of 36 in for 60 birds of four weeks: %s', async (feeders, rule) => {
    const state = stateOf({
      on: month,
      groups: [group({ boxed: 60 })],
      settings: told({ 'feeder-length': 36 * inch, feeders, drinkers: 1 }),
    });
    const { rules, asides } = await gist(state, 'trough-room');
    expect([rules[0], asides[0]]).toEqual([rule, 'too-few-drinkers']);
  });

  test('birds gone want none', async () => {
    const gone = group({ processed: [{ on: '2026-05-07', line: 8, count: 50, dressed: null }] });
    expect((await gist(stateOf({ groups: [gone] }), 'trough-room', ['whites'])).rules).toEqual(['gone']);
  });
});
