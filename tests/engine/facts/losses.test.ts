import { describe, expect, test } from 'vitest';
import type { Loss, Sign } from '../../../engine/types.ts';
import { group, stateOf } from '../../helpers/state-of.ts';
import { workOut, worth } from '../../helpers/work-out.ts';

let line = 100;
const loss = (on: string, count: number, cause = 'unknown'): Loss => ({ on, count, cause, line: line++ });
const sign = (name: string, on: string, of: string | null = 'whites'): Sign => ({
  sign: name,
  on,
  line: line++,
  count: null,
  group: of,
  words: name,
});
const withLosses = (...losses: readonly Loss[]) => stateOf({ groups: [group({ losses })] });

describe('losses of late', () => {
  const state = withLosses(
    loss('2026-05-01', 1),
    loss('2026-05-02', 1),
    loss('2026-05-06', 2),
    loss('2026-05-07', 1),
    loss('2026-05-08', 1, 'coccidiosis'),
    loss('2026-05-08', 3, 'hawk'),
    loss('2026-05-08', 2, 'crush'),
  );

  test('within a day are those of today and yesterday, hunters and accidents aside', () => {
    expect(worth(state, 'lost-today-and-yesterday')).toBe(2);
    // 39 are alive of the 50; 2 of 41.
    expect(worth(state, 'share-in-day')).toBeCloseTo(2 / 41, 12);
  });

  test('within a week are those of seven days', () => {
    expect(worth(state, 'lost-in-week')).toBe(5);
    expect(worth(state, 'share-in-week')).toBeCloseTo(5 / 44, 12);
  });

  test('since arrival are all of them', () => {
    expect(worth(state, 'loss-share')).toBe(11 / 50);
    expect(worth(state, 'lost-by-cause')).toBe('unknown=5 hawk=3 crush=2 coccidiosis=1');
  });

  test('of the first week end with the seventh day', () => {
    const first = withLosses(loss('2026-05-08', 2), loss('2026-05-08', 4, 'hawk'), loss('2026-05-09', 1));
    expect(worth({ ...first, on: '2026-05-20' }, 'lost-first-week')).toBe(2);
    expect(worth({ ...first, on: '2026-05-20' }, 'share-first-week')).toBe(2 / 50);
  });

  test('of a day to come are none yet', () => {
    expect(worth(state, 'lost-today-and-yesterday', '2026-05-11')).toBe(0);
  });

  test('name the lines they were counted from', () => {
    const [yesterday, today] = [loss('2026-05-07', 1), loss('2026-05-08', 1)];
    const { entries } = workOut(withLosses(yesterday, today)).step('lost-today-and-yesterday', 'whites');
    expect(entries.map((each) => each.line)).toEqual([yesterday.line, today.line]);
  });

  test('of birds that all died in the box have no share', () => {
    expect(worth(stateOf({ groups: [group({ dead: 50 })] }), 'loss-share')).toBeNull();
  });
});

describe('signs of sickness', () => {
  test('are to be reported only where the list of signs has them', () => {
    const signs = ['gasping', 'pasty-vent'].map((name) => sign(name, '2026-05-08'));
    const [sick, reportable] = ['sick-signs', 'reportable-signs'].map((fact) =>
      worth(stateOf({ signs }), fact),
    );
    expect({ sick, reportable }).toEqual({ sick: 2, reportable: 1 });
  });

  test('count once each, today and yesterday, of the group and of all', () => {
    const signs = [
      sign('gasping', '2026-05-06'),
      sign('lethargic', '2026-05-07'),
      sign('lethargic', '2026-05-08'),
      sign('gasping', '2026-05-08', null),
      sign('gasping', '2026-05-08', 'reds'),
      sign('piled', '2026-05-08'),
    ];
    expect(worth(stateOf({ signs }), 'sick-signs')).toBe(2);
  });

  test('are taken as none when none is on record, and this is said', () => {
    const { value, assumed } = workOut(stateOf()).step('sick-signs', 'whites');
    expect({ value, assumed }).toEqual({
      value: 0,
      assumed: [{ id: 'no-sign-no-sickness', group: 'whites', values: {} }],
    });
  });
});
