/** The losses question answered by all its rules together. */
import { describe, expect, test } from 'vitest';
import { addDays } from '../../../engine/day.ts';
import type { Loss, Sign, State } from '../../../engine/types.ts';
import { answered } from '../../helpers/answered.ts';
import { group, stateOf } from '../../helpers/state-of.ts';

let line = 100;
const loss = (on: string, count: number, cause = 'unknown'): Loss => ({ on, count, cause, line: line++ });
const today = '2026-05-28';
const gasping: Sign = {
  sign: 'gasping',
  on: today,
  line: 90,
  count: null,
  group: 'whites',
  words: 'gasping',
};
const flock = (losses: readonly Loss[], given: Partial<State> = {}, boxed = 50): State =>
  stateOf({ on: today, groups: [group({ boxed, losses })], ...given });

const asked = async (state: State) => {
  const [part] = (await answered(state, 'losses')).parts;
  const names = (of: readonly { readonly rule: string }[] | undefined) =>
    of?.map((each) => each.rule.replace('losses/', ''));
  return {
    verdict: part?.verdict,
    rule: part?.rule?.replace('losses/', ''),
    cautions: names(part?.cautions),
    remarks: names(part?.remarks),
    chores: names(part?.steps),
  };
};

const quiet = { cautions: [], remarks: [], chores: [] };

describe('normal', () => {
  test('none lost', async () => {
    expect(await asked(flock([]))).toEqual({ verdict: 'yes', rule: 'none-lost', ...quiet });
  });

  test('a single bird of a dozen is no alarm, not even on the first day', async () => {
    const state = { ...flock([loss('2026-05-02', 1)], {}, 12), on: '2026-05-02' };
    expect(await asked(state)).toMatchObject({ verdict: 'yes', rule: 'one-lost', cautions: [] });
  });

  test('as many as luck brings about', async () => {
    expect(await asked(flock([loss('2026-05-15', 3)]))).toEqual({
      verdict: 'yes',
      rule: 'as-usual',
      ...quiet,
      remarks: ['by-cause', 'by-week'],
    });
  });

  test('birds dead in the box are not counted among them', async () => {
    const state = stateOf({ on: today, groups: [group({ dead: 6 })] });
    expect(await asked(state)).toMatchObject({ rule: 'none-lost', remarks: ['dead-in-the-box'] });
  });
});

describe('not normal', () => {
  test('more than luck brings about', async () => {
    expect(await asked(flock([loss('2026-05-15', 6)]))).toMatchObject({
      verdict: 'no',
      rule: 'more-than-luck',
      remarks: ['by-cause', 'by-week', 'worst-week'],
      chores: [],
    });
  });

  test('too many within a day want a vet, and the rest a close look', async () => {
    expect(await asked(flock([loss(addDays(today, -1), 1), loss(today, 1)]))).toEqual({
      verdict: 'no',
      rule: 'vet-today',
      cautions: ['whom-to-call', 'keep-apart', 'look-at-the-rest', 'no-medicine'],
      remarks: ['by-cause', 'by-week'],
      chores: ['vet-today'],
    });
  });

  test('too many within a week want a vet', async () => {
    const losses = [1, 3, 5].map((ago) => loss(addDays(today, -ago), 1));
    expect(await asked(flock(losses))).toMatchObject({ rule: 'vet-today', cautions: [] });
  });

  test('two dead within a day with signs in the rest: telephone now, and nothing about treatment', async () => {
    expect(await asked(flock([loss(today, 2)], { signs: [gasping] }, 200))).toEqual({
      verdict: 'no',
      rule: 'telephone-now',
      cautions: ['whom-to-call', 'keep-apart', 'no-medicine'],
      remarks: ['by-cause', 'by-week'],
      chores: ['telephone-now'],
    });
  });

  test('what a hawk took is no sickness, but the pen is to be closed', async () => {
    expect(await asked(flock([loss(today, 2, 'hawk')], { signs: [gasping] }))).toEqual({
      verdict: 'yes',
      rule: 'as-usual',
      cautions: ['whom-to-call', 'hunter-comes-back', 'birds-of-prey', 'keep-apart', 'no-medicine'],
      remarks: ['by-cause', 'by-week'],
      chores: [],
    });
  });
});

test('two lost of a hundred in the first two days is too soon to tell', async () => {
  const groups = [group({ boxed: 100, losses: [loss('2026-05-02', 1), loss('2026-05-03', 1)] })];
  expect(await asked(stateOf({ on: '2026-05-03', groups }))).toMatchObject({
    verdict: 'cannot-say',
    rule: 'too-soon',
  });
});

test('the results are those that scripts read', async () => {
  const { results } = await answered(flock([loss('2026-05-15', 3)]), 'losses');
  expect(results).toEqual([
    { id: 'lost', fact: 'lost-asked', group: 'whites', value: 3, unit: 'bird' },
    {
      id: 'expected',
      fact: 'expected-asked',
      group: 'whites',
      value: expect.closeTo(1.357, 3),
      unit: 'bird',
    },
    { id: 'share', fact: 'share-asked', group: 'whites', value: 0.06, unit: 'ratio' },
    { id: 'chance', fact: 'chance-asked', group: 'whites', value: expect.closeTo(0.154, 3), unit: 'ratio' },
  ]);
});
