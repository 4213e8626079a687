/** The sickness question answered by all its rules together. */
import { describe, expect, test } from 'vitest';
import type { Loss, Sign, State, Value } from '../../../engine/types.ts';
import { partTold } from '../../helpers/part-told.ts';
import { group, stateOf } from '../../helpers/state-of.ts';

const today = '2026-05-28';
const loss = (count: number): Loss => ({ on: today, count, cause: 'unknown', line: 20 });
const sign = (name: string): Sign => ({
  sign: name,
  on: today,
  line: 30,
  count: null,
  group: 'whites',
  words: name,
});
const flock = (signs: readonly string[] = [], dead = 0, boxed = 50): State =>
  stateOf({
    on: today,
    groups: [group({ boxed, losses: dead === 0 ? [] : [loss(dead)] })],
    signs: signs.map(sign),
  });

const asked = (state: State, told: Readonly<Record<string, Value>> = {}) => partTold(state, 'sickness', told);

describe('how urgent it is', () => {
  test.each([
    ['nothing seen', flock(), 'nothing-seen'],
    ['one mild sign', flock(['sneezing']), 'watch'],
    ['a chick pasted up', flock(['pasty-vent']), 'watch'],
    ['blood in the droppings', flock(['bloody-droppings']), 'vet-today'],
    ['a bird that cannot walk', flock(['lame']), 'vet-today'],
    ['two signs of bird flu', flock(['sneezing', 'lethargic']), 'call-now-signs'],
    ['two dead of fifty, the rest well', flock([], 2), 'many-dead'],
    ['two dead and one sign', flock(['diarrhea'], 2), 'call-now-deaths'],
  ])('%s', async (_, state, rule) => {
    expect((await asked(state)).rule).toBe(rule);
  });

  test('told of in the question is as urgent as on record', async () => {
    expect(await asked(flock(), { 'signs-told': 'gasping' })).toEqual(await asked(flock(['gasping'])));
  });

  test('a person comes before any bird', async () => {
    expect((await asked(flock(['sneezing', 'lethargic'], 2), { 'person-ill': 'yes' })).rule).toBe(
      'doctor-first',
    );
  });
});

test('nothing seen asks for nothing and gives nobody a task', async () => {
  expect(await asked(flock())).toEqual({ rule: 'nothing-seen', cautions: [], steps: [], unknown: [] });
});

test('a medicine asked about is left to the vet, the more so with a sign', async () => {
  expect(await asked(flock(), { 'asks-medicine': 'yes' })).toMatchObject({
    rule: 'not-for-us',
    cautions: ['no-medicine'],
  });
  expect((await asked(flock(['gasping']), { 'asks-medicine': 'yes' })).cautions).toContain('no-medicine');
});

test('blood in the brooder: a vet today, apart, dry bedding, and it is written down', async () => {
  expect(await asked(flock(['bloody-droppings']))).toEqual({
    rule: 'vet-today',
    cautions: ['whom-to-call', 'no-medicine', 'not-for-the-table', 'wash-hands'],
    steps: ['vet-today', 'put-apart', 'dry-bedding', 'write-it-down'],
    unknown: [],
  });
});

test('a pasted vent is cleaned by hand, and the chick is not put apart', async () => {
  const { steps } = await asked({ ...flock(['pasty-vent']), on: today });
  expect(steps).toEqual(['clean-the-vent', 'check-the-heat', 'write-it-down']);
});

test('the more die the sooner somebody is called, never the later', async () => {
  const urgency = [
    'nothing-seen',
    'watch',
    'not-for-us',
    'vet-today',
    'many-dead',
    'call-now-signs',
    'call-now-deaths',
  ];
  let before = 0;
  for (const dead of [0, 1, 2, 3, 5, 8]) {
    const now = urgency.indexOf((await asked(flock(['sneezing'], dead))).rule ?? '');
    expect(now).toBeGreaterThanOrEqual(before);
    before = now;
  }
});
