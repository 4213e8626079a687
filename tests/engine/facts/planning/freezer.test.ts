import { describe, expect, test } from 'vitest';
import { allFacts } from '../../../../engine/facts/index.ts';
import { openWorkings } from '../../../../engine/facts/workings.ts';
import type { State, Supposition, Value } from '../../../../engine/types.ts';
import { settingsOf } from '../../../helpers/settings-of.ts';
import { group, stateOf } from '../../../helpers/state-of.ts';
import { bookForTests, workOut, worth } from '../../../helpers/work-out.ts';

const cubicFoot = 28.316846592;
const on = '2026-05-08';
const whites = group({ kept: [{ on, line: 5, count: 2, until: null }] });
const reds = group({
  name: 'reds',
  line: 2,
  boxed: 25,
  processed: [{ on: '2026-05-07', line: 4, count: 5, dressed: null }],
});
const state = (given: Partial<State> = {}): State => stateOf({ groups: [whites, reds], ...given });
const supposed = (fact: string, value: Value): Supposition => ({ what: { fact }, value, adds: false });

describe('birds to freeze', () => {
  test('all alive but those kept back or promised', () => {
    const shares = [{ who: 'ann', count: 6, step: 'promised' as const, on, line: 6, paid: null }];
    expect(worth(state({ shares }), 'birds-to-freeze')).toBe(48 + 20 - 6);
  });

  test('of the groups named only theirs', () => {
    const named = ['reds'];
    const workings = openWorkings({
      state: state(),
      book: bookForTests,
      facts: allFacts,
      on,
      until: null,
      supposing: [],
      named,
    });
    expect(workings.step('birds-to-freeze', null).value).toBe(20);
  });
});

describe('free room', () => {
  test('as told, less the birds put in since, of 4.5 lb at 25 lb to the cubic foot', () => {
    const told = (day: string) => ({
      'freezer-free': [
        { on: day, line: 9, what: 'freezer-free', value: 7 * cubicFoot, size: null, said: '7 ft3' },
      ],
    });
    const free = (given: Partial<State>) => Number(worth(state(given), 'freezer-free')) / cubicFoot;
    expect(free({ settings: told('2026-05-07') })).toBeCloseTo(7, 9);
    expect(free({ settings: told('2026-05-06') })).toBeCloseTo(7 - (5 * 4.5) / 25, 6);
    const eaten = [{ on, line: 10, count: 2, mass: null }];
    expect(free({ settings: told('2026-05-06'), eaten })).toBeCloseTo(7 - (3 * 4.5) / 25, 6);
    expect(free({ settings: told('2026-05-07'), eaten })).toBeCloseTo(7 + (2 * 4.5) / 25, 6);
    const settings = { ...told('2026-05-07'), ...settingsOf({ freezer: 7 * cubicFoot }) };
    expect(free({ settings, eaten })).toBe(7);
  });

  test('else the freezer less the birds on record in it, said aloud', () => {
    const settings = settingsOf({ freezer: 14 * cubicFoot });
    const step = workOut(state({ settings })).step('freezer-free', null);
    expect(Number(step.value) / cubicFoot).toBeCloseTo(14 - (5 * 4.5) / 25, 6);
    expect(step.assumed.map((each) => each.id)).toEqual(['freezer-holds-only-birds']);
  });

  test('unknown where no freezer is set', () => {
    expect(worth(state(), 'freezer-free')).toBeNull();
  });
});

describe('room needed', () => {
  const needed = (...said: readonly Supposition[]): number =>
    Number(
      workOut(state(), undefined, [supposed('birds-to-freeze', 50), ...said]).step('volume-needed', null)
        .value,
    );

  test('half in parts lies half way between whole and parts', () => {
    const [whole, half, parts] = [
      needed(),
      needed(supposed('half-cut-said', 'yes')),
      needed(supposed('cut-up-said', 'yes')),
    ];
    expect(half).toBeCloseTo((whole + parts) / 2, 9);
    expect(parts).toBeLessThan(whole);
  });

  test('what fits takes no more than is free, and one more would', () => {
    const settings = settingsOf({ 'freezer-free': 7 * cubicFoot });
    const fit = Number(worth(state({ settings }), 'birds-that-freeze'));
    const room = (birds: number): number =>
      Number(
        workOut(state(), undefined, [supposed('birds-to-freeze', birds)]).step('volume-needed', null).value,
      );
    const free = Number(worth(state({ settings }), 'freezer-free'));
    expect(room(fit)).toBeLessThanOrEqual(free);
    expect(room(fit + 1)).toBeGreaterThan(free);
  });
});

test('freezing in turns of two days', () => {
  const settings = settingsOf({ freezer: 15 * cubicFoot });
  const workings = workOut(state({ settings }), undefined, [supposed('birds-to-freeze', 50)]);
  expect([workings.step('freeze-days', null).value, workings.step('freezing-turns', null).value]).toEqual([
    8, 4,
  ]);
});
