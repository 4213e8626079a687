/** The dates, weather, room and absences of a batch that is only planned. */
import { describe, expect, test } from 'vitest';
import type { Group, State, Value } from '../../../../engine/types.ts';
import { settingsOf } from '../../../helpers/settings-of.ts';
import { group, stateOf } from '../../../helpers/state-of.ts';
import { workOut } from '../../../helpers/work-out.ts';

const foot = 0.3048;
const cubicFoot = 28.316846592;
const place: Readonly<Record<string, Value>> = {
  brooder: 24 * foot ** 2,
  pen: 120 * foot ** 2,
  ground: 9000 * foot ** 2,
  freezer: 14 * cubicFoot,
  'birds-a-week': 1,
};

/** Thirty fast chicks that would hatch on a day and come the next. */
const batch = (hatched: string, more: Partial<Group> = {}): Group =>
  group({
    name: 'batch',
    hatched,
    arrived: `${hatched.slice(0, 8)}${String(Number(hatched.slice(8)) + 1).padStart(2, '0')}`,
    boxed: 30,
    line: 0,
    ...more,
  });

const state = (groups: readonly Group[], given = place, more: Partial<State> = {}): State =>
  stateOf({ on: '2026-02-14', groups, settings: settingsOf(given), ...more });

const of = (at: State, fact: string): Value | null =>
  workOut(at, undefined, [{ what: { fact: 'batch-birds' }, value: 26, adds: false }]).step(fact, 'batch')
    .value;

describe('dates', () => {
  test('in summer they go out at three weeks, in the cold later, never later than six', () => {
    const age = (hatched: string): Value | null => of(state([batch(hatched)]), 'batch-out-age');
    expect(age('2026-06-06')).toBe(21);
    expect(Number(age('2026-03-07'))).toBeGreaterThan(28);
    expect(age('2026-12-05')).toBe(42);
  });

  test('the order lies four weeks before the hatch', () => {
    expect(of(state([batch('2026-06-06')]), 'batch-order-by')).toBe('2026-05-09');
  });

  test('a heavier carcass takes longer', () => {
    const age = (carcass: number): number =>
      Number(of(state([batch('2026-06-06')], { ...place, 'wanted-carcass': carcass }), 'batch-process-age'));
    expect(age(2.4)).toBeGreaterThan(age(1.8));
  });

  test('slow birds take longer than fast ones', () => {
    const age = (kind: string): number =>
      Number(of(state([batch('2026-06-06', { kind })]), 'batch-process-age'));
    expect(age('slow')).toBeGreaterThan(age('fast') + 20);
  });

  test('a kind whose growth is not on file is planned as a fast one', () => {
    expect(of(state([batch('2026-06-06', { kind: 'bresse' })]), 'batch-process-age')).toBe(
      of(state([batch('2026-06-06')]), 'batch-process-age'),
    );
  });
});

describe('weather', () => {
  test('own months replace those of the table', () => {
    const warm = { ...place, 'low-april': 20, 'low-may': 20, 'low-march': 20 };
    expect(Number(of(state([batch('2026-04-04')], warm), 'batch-first-night'))).toBeGreaterThan(19);
    expect(of(state([batch('2026-04-04')], warm), 'batch-out-age')).toBe(21);
  });

  test('more lamps in the cold', () => {
    expect(Number(of(state([batch('2026-01-24')]), 'batch-lamps'))).toBeGreaterThanOrEqual(
      Number(of(state([batch('2026-07-04')]), 'batch-lamps')),
    );
  });

  test('the worst night is one on grass', () => {
    const at = state([batch('2026-08-22')]);
    const night = String(of(at, 'batch-night-on'));
    expect(night >= String(of(at, 'batch-out')) && night < String(of(at, 'batch-process'))).toBe(true);
  });
});

describe('room', () => {
  const early = batch('2026-06-06', { name: 'early' });

  test('two batches a week apart want the brooder of both, three months apart that of one', () => {
    const alone = Number(of(state([batch('2026-06-13')]), 'batch-brooder'));
    expect(Number(of(state([batch('2026-06-13'), early]), 'batch-brooder'))).toBeGreaterThan(alone);
    expect(of(state([batch('2026-09-12'), early]), 'batch-brooder')).toBe(
      of(state([batch('2026-09-12')]), 'batch-brooder'),
    );
  });

  test('pens, ground and freezer add up over batches in the same way', () => {
    for (const fact of ['batch-pens', 'batch-ground', 'batch-freezer']) {
      const alone = Number(of(state([batch('2026-06-13')]), fact));
      expect(Number(of(state([batch('2026-06-13'), early]), fact))).toBeGreaterThan(alone);
    }
  });

  test('the freezer empties by what is eaten in between', () => {
    const left = (hatched: string): number =>
      Number(of(state([batch(hatched), early]), 'batch-freezer-birds'));
    expect(left('2026-06-13')).toBe(51);
    expect(left('2026-09-12')).toBe(38);
  });

  test('splitting a batch in two of the same day changes no total', () => {
    const halves = [batch('2026-06-13', { boxed: 15 }), batch('2026-06-13', { name: 'other', boxed: 15 })];
    expect(of(state(halves), 'batch-brooder')).toBeCloseTo(
      Number(of(state([batch('2026-06-13')]), 'batch-brooder')),
      9,
    );
  });

  test('unknown where the ground was never told', () => {
    const { pen: _pen, ...open } = place;
    expect(of(state([batch('2026-06-13')], open), 'batch-ground')).toBeNull();
  });
});

describe('days away', () => {
  const away = (from: string, to: string): State =>
    state([batch('2026-06-06')], { ...place, 'away-from': from, 'back-on': to });

  test('in the first two weeks they count as the worst', () => {
    expect(of(away('2026-06-10', '2026-06-14'), 'batch-away-at-worst')).toBe(4);
  });

  test('in the middle they only want a helper', () => {
    expect(of(away('2026-06-28', '2026-07-03'), 'batch-away-at-worst')).toBe(0);
    expect(of(away('2026-06-28', '2026-07-03'), 'batch-away')).toBe(5);
  });

  test('and before the chicks come not at all', () => {
    expect(of(away('2026-05-01', '2026-05-20'), 'batch-away')).toBe(0);
  });
});
