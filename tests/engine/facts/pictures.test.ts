import { expect, test } from 'vitest';
import { settingsOf } from '../../helpers/settings-of.ts';
import { group, stateOf } from '../../helpers/state-of.ts';
import { workOut, worth } from '../../helpers/work-out.ts';

const series = (text: unknown) => JSON.parse(String(text));

test('growth runs from the hatch to the end of the usual time, low end under best guess under high end', () => {
  const weighings = [{ on: '2026-05-29', line: 3, mean: 1.1, count: 5, spread: null }];
  const state = stateOf({ on: '2026-06-01', groups: [group({ weighings })] });
  const { from, to, today, line, weighings: seen } = series(worth(state, 'growth-series'));
  expect({ from, to, today, seen }).toEqual({
    from: '2026-05-01',
    to: [worth(state, 'window-closes'), worth(state, 'ready-on')].map(String).sort().at(-1),
    today: '2026-06-01',
    seen: [[28, 1.1]],
  });
  const wrong = line.filter(
    ([, low, middle, high]: number[]) => !(Number(low) <= Number(middle) && Number(middle) <= Number(high)),
  );
  expect([line.length, line[0][0], wrong]).toEqual([49, 0, []]);
});

test('feed in hand starts with what is left and ends with nothing, on the day it runs out', () => {
  const state = stateOf({ on: '2026-06-01', settings: settingsOf({ 'feed-in-stock': 40 }) });
  const { from, out, left } = series(worth(state, 'stock-series', state.on, null));
  expect([from, left[0], left.at(-1)]).toEqual(['2026-06-01', worth(state, 'feed-left', state.on, null), 0]);
  expect(out).toBe(worth(state, 'feed-runs-out', state.on, null));
  expect([...left].sort((a: number, b: number) => b - a)).toEqual(left);
});

test('the batches of the year have their days, those that are gone the day on which the last went', () => {
  const gone = group({
    name: 'reds',
    kind: 'slow',
    processed: [{ on: '2026-05-20', line: 5, count: 50, dressed: null }],
  });
  const out = group({ whereabouts: [{ on: '2026-05-25', line: 4, place: 'pen', daysOnly: false }] });
  const state = stateOf({ on: '2026-06-01', groups: [out, gone] });
  expect(series(worth(state, 'year-series', state.on, null))).toEqual({
    today: '2026-06-01',
    batches: [
      {
        group: 'whites',
        hatched: '2026-05-01',
        out: '2026-05-25',
        end: worth(state, 'process-date'),
        isGone: false,
      },
      { group: 'reds', hatched: '2026-05-01', out: null, end: '2026-05-20', isGone: true },
    ],
  });
});

test('there is no map of ground that nobody has described, and no time line of nothing', () => {
  const workings = workOut(stateOf({ groups: [] }));
  expect(['ground-series', 'year-series'].map((id) => workings.step(id, null).value)).toEqual([null, null]);
});
