import { expect, test } from 'vitest';
import { findDays } from '../../../../cli/understand/find/day.ts';
import { findStretches } from '../../../../cli/understand/find/stretch.ts';
import { tokenise } from '../../../../cli/understand/tokens.ts';

// a Thursday
const today = '2026-05-14';

const daysIn = (words: string, dayFirst = false) =>
  findDays(tokenise(words), today, dayFirst).map((span) => [span.past, span.future, span.role]);

test.each([
  ['today', '2026-05-14', '2026-05-14', 'on'],
  ['tonight', '2026-05-14', '2026-05-14', 'on'],
  ['last night', '2026-05-13', '2026-05-13', 'on'],
  ['the night before last', '2026-05-12', '2026-05-12', 'on'],
  ['day before yesterday', '2026-05-12', '2026-05-12', 'on'],
  ['tmrw', '2026-05-15', '2026-05-15', 'on'],
  ['2day', '2026-05-14', '2026-05-14', 'on'],
  ['3 days ago', '2026-05-11', '2026-05-11', 'on'],
  ['in two weeks', '2026-05-28', '2026-05-28', 'on'],
  ['a week from saturday', '2026-05-23', '2026-05-23', 'on'],
  ['sunday', '2026-05-10', '2026-05-17', 'on'],
  ['thursday', '2026-05-14', '2026-05-14', 'on'],
  ['last thursday', '2026-05-07', '2026-05-07', 'on'],
  ['next thursday', '2026-05-21', '2026-05-21', 'on'],
  ['on sat', '2026-05-09', '2026-05-16', 'on'],
  ['sat nite', '2026-05-09', '2026-05-16', 'on'],
  ['till friday', '2026-05-08', '2026-05-15', 'until'],
  ['since monday', '2026-05-11', '2026-05-18', 'since'],
  ['3 may', '2026-05-03', '2027-05-03', 'on'],
  ['the 3rd of june', '2025-06-03', '2026-06-03', 'on'],
  ['june 14th', '2025-06-14', '2026-06-14', 'on'],
  ['the 3rd', '2026-05-03', '2026-06-03', 'on'],
  ['14 june 2026', '2026-06-14', '2026-06-14', 'on'],
  ['2026-05-03', '2026-05-03', '2026-05-03', 'on'],
  ['29 february', '2024-02-29', '2028-02-29', 'on'],
])('%s', (words, past, future, role) => {
  expect(daysIn(words)).toEqual([[past, future, role]]);
});

test('a slashed date is read in the order of the place', () => {
  expect(daysIn('on 5/6')).toEqual([['2026-05-06', '2027-05-06', 'on']]);
  expect(daysIn('on 5/6', true)).toEqual([['2025-06-05', '2026-06-05', 'on']]);
});

test.each([
  'can they march out',
  'the sun is hot',
  'they sat in the shade',
  'half a bag, 1/2 of it',
  '30 february',
  'may they go out',
  'we wed',
  'first thing',
])('%s names no day', (words) => {
  expect(daysIn(words)).toEqual([]);
});

test.each([
  ['this week', '2026-05-14', '2026-05-20', 7],
  ['next week', '2026-05-18', '2026-05-24', 7],
  ['next 10 days', '2026-05-14', '2026-05-23', 10],
  ['for a week', '2026-05-14', '2026-05-20', 7],
  ['this weekend', '2026-05-16', '2026-05-17', 2],
  ['rest of the week', '2026-05-14', '2026-05-17', 4],
  ['3 days worth', '2026-05-14', '2026-05-16', 3],
])('%s', (words, first, last, days) => {
  expect(findStretches(tokenise(words), today)).toMatchObject([{ first, last, days }]);
});
