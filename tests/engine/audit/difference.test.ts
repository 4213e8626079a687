/** Two answers set beside each other: what differs, in which order, and by how much. */
import { expect, test } from 'vitest';
import { differencesBetween, pointsOf, type Said } from '../../../engine/audit/difference.ts';
import type { StepToDo } from '../../../engine/types.ts';

const step = (rule: string, by: string | null): StepToDo => ({
  id: rule,
  rule,
  question: 'key-dates',
  group: 'reds',
  at: by === null ? 'morning' : 'dated',
  by,
  order: 1,
  says: { template: 'do it', values: {} },
  done: false,
  remind: null,
  rightWhen: null,
  ringWhen: null,
});

const result = (id: string, value: number | string, unit: string | null, fact = id) => ({
  id,
  fact,
  group: 'reds',
  value,
  unit,
});

const before: Said = {
  parts: [
    {
      group: 'reds',
      verdict: 'no',
      rule: 'go-out/cold-night',
      steps: [step('a/weigh', '2026-05-14'), step('a/heat', null)],
    },
    { group: 'whites', verdict: 'no', rule: 'go-out/cold-night' },
  ],
  results: [
    result('feed', 4, 'kg'),
    result('ready', '2026-05-20', 'date'),
    result('first-day', '2026-05-16', 'date', 'when'),
  ],
};
const after: Said = {
  parts: [
    {
      group: 'reds',
      verdict: 'yes',
      rule: 'go-out/may-go',
      steps: [step('a/weigh', '2026-05-16'), step('a/move', null)],
    },
    { group: 'whites', verdict: 'no', rule: 'go-out/too-young' },
  ],
  results: [
    result('feed', 5.5, 'kg'),
    result('ready', '2026-05-18', 'date'),
    result('first-day', '2026-05-14', 'date', 'when'),
  ],
};

const between = (one: Said, other: Said, withDays = false) =>
  differencesBetween(pointsOf(one, withDays), pointsOf(other, withDays)).map(
    ({ what, id, group, from, to, size }) => [what, id, group, from, to, size],
  );

test('verdicts first, then rules behind the same verdict, results with their size, and tasks', () => {
  expect(between(before, after)).toEqual([
    ['verdict', 'verdict', 'reds', 'no', 'yes', null],
    ['rule', 'rule', 'whites', 'go-out/cold-night', 'go-out/too-young', null],
    ['result', 'feed', 'reds', 4, 5.5, 1.5],
    ['result', 'ready', 'reds', '2026-05-20', '2026-05-18', -2],
    ['task', 'a/weigh', 'reds', '2026-05-14', '2026-05-16', 2],
    ['task', 'a/heat', 'reds', true, null, null],
    ['task', 'a/move', 'reds', null, true, null],
  ]);
});

test('a first day that was found by looking ahead is compared on request alone', () => {
  const days = between(before, after, true).filter(([, id]) => id === 'first-day');
  expect(days).toEqual([['result', 'first-day', 'reds', '2026-05-16', '2026-05-14', -2]]);
});

test('a first day that is the very day asked about is no other day than that', () => {
  const yes = (day: string): Said => ({ parts: [], results: [result('first-day', day, 'date', 'when')] });
  const of = (said: Said, on: string) => pointsOf(said, true, on);
  expect(
    differencesBetween(of(yes('2026-05-14'), '2026-05-14'), of(yes('2026-05-15'), '2026-05-15')),
  ).toEqual([]);
  const later = differencesBetween(of(yes('2026-05-14'), '2026-05-14'), of(yes('2026-05-20'), '2026-05-15'));
  expect(later.map(({ from, to, unit, size }) => [from, to, unit, size])).toEqual([
    ['at once', '2026-05-20', 'date', null],
  ]);
});

test('a group that is in one answer alone differs from nothing', () => {
  const one: Said = { parts: before.parts.slice(1), results: [] };
  expect(between({ parts: [], results: [] }, one)).toEqual([
    ['verdict', 'verdict', 'whites', null, 'no', null],
  ]);
});

test('an answer does not differ from itself', () => {
  expect(between(before, before, true)).toEqual([]);
});
