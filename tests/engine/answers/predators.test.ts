/** The predators question answered by all its rules together. */
import { expect, test } from 'vitest';
import type { Loss, State, Value } from '../../../engine/types.ts';
import { partTold } from '../../helpers/part-told.ts';
import { group, stateOf } from '../../helpers/state-of.ts';

const today = '2026-06-08';
const loss = (on: string, cause: string): Loss => ({ on, count: 1, cause, line: 20 });
const out = { on: '2026-05-25', line: 5, place: 'pen', daysOnly: false } as const;
const covered = { on: '2026-05-25', line: 6, what: 'pen-cover', value: true, size: null, said: 'yes' };
const flock = (losses: readonly Loss[] = [], more: Partial<State> = {}): State =>
  stateOf({ on: today, groups: [group({ whereabouts: [out], losses })], ...more });

const asked = (state: State, told: Readonly<Record<string, Value>> = {}) =>
  partTold(state, 'predators', told);

test('nothing known: nobody is named, nothing is asked, nothing is to be built', async () => {
  expect(await asked(flock())).toEqual({ rule: 'nobody-yet', cautions: [], steps: [], unknown: [] });
});

test('a limb torn off through the wire: the raccoon, and all that keeps it out of an open pen', async () => {
  expect(await asked(flock(), { 'signs-told': 'pulled-through-wire' })).toEqual({
    rule: 'likely',
    cautions: ['ask-first', 'gloves'],
    steps: [
      'cover-the-pen',
      'clear-away',
      'fasten-the-latch',
      'shut-in-by-dusk',
      'read-the-ground',
      'line-with-fine-mesh',
    ],
    unknown: [],
  });
});

test('a covered pen is looked over instead of being covered', async () => {
  const state = flock([], { settings: { 'pen-cover': [covered] } });
  const { steps } = await asked(state, { 'signs-told': 'pulled-through-wire' });
  expect(steps).toContain('look-over-the-cover');
  expect(steps).not.toContain('cover-the-pen');
});

test('a hawk in the records: the roof and the law, and nothing against what digs', async () => {
  expect(await asked(flock([loss('2026-06-01', 'hawk')]))).toEqual({
    rule: 'named',
    cautions: ['birds-of-prey', 'ask-first'],
    steps: ['cover-the-pen'],
    unknown: [],
  });
});

test('killing a bird of prey is refused, whatever else was seen', async () => {
  const told = {
    'causes-told': 'owl',
    'asks-to-kill': 'yes',
    'signs-told': 'headless',
    'told-by-night': 'yes',
  };
  expect(await asked(flock(), told)).toMatchObject({
    rule: 'may-not-harm',
    cautions: ['birds-of-prey', 'ask-first', 'gloves'],
  });
});

test('killing a fox is for the authority to allow', async () => {
  expect(await asked(flock(), { 'causes-told': 'fox', 'asks-to-kill': 'yes' })).toMatchObject({
    rule: 'named',
    cautions: ['ask-first'],
  });
});

test('chicks missing from a brooder: its holes are closed first', async () => {
  const told = { 'signs-told': 'chicks-missing small-hole', 'told-in-brooder': 'yes' };
  const { rule, steps } = await asked(stateOf(), told);
  expect([rule, steps]).toEqual(['likely', ['close-the-brooder', 'clear-away', 'read-the-ground']]);
});
