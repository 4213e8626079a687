/** The processing day and the meat after it, against what is published (S), from memory (M) or derived (D). */
import { describe, expect, test } from 'vitest';
import type { Supposition } from '../../engine/types.ts';
import { settingsOf } from '../helpers/settings-of.ts';
import { group, stateOf } from '../helpers/state-of.ts';
import { workOut } from '../helpers/work-out.ts';

const pound = 0.45359237;
const fahrenheit = (degrees: number): number => (degrees - 32) / 1.8;
const say = (fact: string, value: number | string): Supposition => ({ what: { fact }, value, adds: false });
const at = (supposing: readonly Supposition[], kind = 'fast', settings = {}) => {
  const state = stateOf({ on: '2026-06-10', groups: [group({ kind })], settings: settingsOf(settings) });
  return (fact: string) => workOut(state, state.on, supposing).step(fact, 'whites').value;
};

// S: J. Northcutt, University of Georgia: 8 to 12 hours of feed withdrawal.
test('slaughter at 08:00: feed off at 22:00 the day before, between 20:00 and midnight', () => {
  const value = at([say('process-date', '2026-06-20'), say('process-at', '08:00')]);
  expect(['feed-off', 'feed-off-earliest', 'feed-off-latest'].map(value)).toEqual([
    '2026-06-19T22:00',
    '2026-06-19T20:00',
    '2026-06-20T00:00',
  ]);
});

// M: the former table of 9 CFR 381.66(b)(2), numbers from memory; "4 to 8 lb" includes both ends.
test.each([
  [3.9, 4],
  [4, 6],
  [4.5, 6],
  [8, 6],
  [8.1, 8],
])('a carcass of %f lb is chilled within %i hours', (pounds, hours) => {
  expect(Number(at([say('carcass-told', pounds * pound)])('chill-hours')) * 24).toBeCloseTo(hours, 9);
});

describe('ice', () => {
  const forOne = (high: number) =>
    at([
      say('process-date', '2026-06-20'),
      say('birds-on-the-day', 1),
      say('carcass-on-the-day', 4.5 * pound),
      say('temperature-told', fahrenheit(high)),
    ]);

  // S (arithmetic): 4.5 lb × 0.8 × 60 °F / 144 = 1.5 lb, and half a US gallon (4.1727 lb) × 24 °F / 144 = 0.695 lb.
  test('by the heat balance alone: 2.2 lb for a carcass of 4.5 lb and its water', () => {
    expect(Number(forOne(70)('ice-by-balance')) / pound).toBeCloseTo(1.5 + 0.6954, 3);
  });

  // D: no published amount was found; about 5 lb a bird, 8 lb above 85 °F.
  test.each([
    [85, 5],
    [86, 8],
  ])('at %i °F about %i lb a bird', (high, pounds) => {
    expect(Math.abs(Number(forOne(high)('ice')) / pound - pounds)).toBeLessThan(0.05);
  });
});

// M: beginners 2 to 4 birds an hour each by hand, 5 to 10 with a drum plucker.
test.each([
  ['no', 2, 4],
  ['yes', 5, 10],
])('plucker %s: one person does between %i and %i birds an hour', (plucker, least, most) => {
  const pace = Number(at([say('hands', 1), say('plucker', plucker)])('birds-per-hour'));
  expect(pace >= least && pace <= most).toBe(true);
});

// S for the shares as relayed (72 %, 68 %), D for choosing them.
test.each([
  ['fast', 6.5, 4.68],
  ['slow', 6.5, 4.42],
])('%s birds of %f lb dress to %f lb', (kind, live, carcass) => {
  const value = Number(at([say('weight-told', live * pound)], kind)('meat-a-bird'));
  expect(Math.abs(value / pound - carcass)).toBeLessThan(0.01);
});

test.each([
  ['fast', 6.94],
  ['slow', 7.35],
])('a 5 lb carcass takes a %s bird of %f lb', (kind, live) => {
  const value = Number(at([], kind, { 'wanted-carcass': 5 * pound })('live-for-wanted'));
  expect(Math.abs(value / pound - live)).toBeLessThan(0.01);
});

// S: Ask Extension 2014, breast 34 % of the carcass; S: FSIS, 165 °F and 2 hours; chart of the USDA, 12, 9 and 3 to 4 months.
test('breast is about a third of the carcass', () => {
  const value = at([say('weight-told', 6 * pound)]);
  expect(Number(value('meat-breast')) / Number(value('meat-total'))).toBeCloseTo(0.34, 9);
});

test('whole birds keep 12 months, parts 9', () => {
  const value = at([]);
  const months = (fact: string) => Math.round(Number(value(fact)) / (365.2425 / 12));
  expect(['keep-whole', 'keep-parts', 'keep-giblets'].map(months)).toEqual([12, 9, 4]);
});
