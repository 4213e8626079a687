import { expect, test } from 'vitest';
import { flockOf, type Line } from '../../../helpers/flock-of.ts';

const on = '2026-05-10';
const arrive: Line = { kind: 'arrive', on, group: 'whites', count: 50, bird: 'fast', hatched: '2026-05-09' };
const problems = (line: Line) =>
  flockOf(line, arrive)
    .check('2026-05-20')
    .map(({ code, at }) => [code, at.line]);

test('feed may be bought for birds before they come, but not given to them', () => {
  const feed = { on: '2026-05-08', group: 'whites' };
  expect(problems({ kind: 'buy', what: 'feed', bags: '2 bags', ...feed })).toEqual([]);
  expect(problems({ kind: 'feed', amount: '5 lb', ...feed })).toEqual([['before-arrival', 1]]);
});
