import { expect, test } from 'vitest';
import { addDays, weekdayOf } from '../../../engine/day.ts';
import { group, stateOf } from '../../helpers/state-of.ts';
import { workOut, worth } from '../../helpers/work-out.ts';

const weekends = ['first-weekend', 'second-weekend', 'third-weekend'];
const state = stateOf({ on: '2026-06-10' });

test('are the Saturdays around the day they should be ready', () => {
  const ready = String(worth(state, 'ready-on'));
  const days = weekends.map((id) => String(worth(state, id)));
  expect(days.map(weekdayOf)).toEqual([6, 6, 6]);
  expect([(days[0] ?? '') < ready, (days[1] ?? '') >= ready]).toEqual([true, true]);
  expect(days[2]).toBe(addDays(days[1] ?? '', 7));
});

test('none of them is gone by', () => {
  const late = stateOf({ on: '2026-08-05' });
  expect(worth(late, 'first-weekend')).toBe('2026-08-08');
});

test('the chance grows from one to the next, and is even on the day itself', () => {
  const [first = 0, second = 0, third = 0] = weekends.map((id) => Number(worth(state, `${id}-chance`)));
  expect([first < 0.5, second >= 0.5, third > second, third < 1]).toEqual([true, true, true, true]);
  const ready = String(worth(state, 'ready-on'));
  const onTheDay = workOut(state, state.on, [
    { what: { fact: 'second-weekend' }, value: ready, adds: false },
  ]);
  expect(Number(onTheDay.step('second-weekend-chance', 'whites').value)).toBeCloseTo(0.5, 1);
});

test('a flock that was weighed is surer', () => {
  const weighed = group({
    weighings: [
      { on: '2026-06-10', line: 3, mean: Number(worth(state, 'table-weight')), count: 20, spread: null },
    ],
  });
  const chances = (of: typeof state) => weekends.map((id) => Number(worth(of, `${id}-chance`)));
  const [vague = 0, , , sure = 0] = [...chances(state), ...chances({ ...state, groups: [weighed] })];
  expect(sure).toBeLessThan(vague);
});
