import { describe, expect, test } from 'vitest';
import type { Supposition } from '../../../../engine/types.ts';
import { answered } from '../../../helpers/answered.ts';
import { group, stateOf } from '../../../helpers/state-of.ts';
import { workOut, worth } from '../../../helpers/work-out.ts';

const keep = (value: number): Supposition => ({ what: { fact: 'keep-asked' }, value, adds: false });
const kept = [{ on: '2026-05-06', line: 5, count: 4, until: null }];

describe('birds kept on', () => {
  test('leave the processing count', () => {
    expect(worth(stateOf({ groups: [group({ kept })] }), 'to-process')).toBe(46);
    expect(
      workOut(stateOf({ groups: [group({ kept })] }), undefined, [keep(3)]).step('to-process', 'whites')
        .value,
    ).toBe(43);
  });

  test.each([
    ['fast', 0.5],
    ['slow', 0.16],
    ['own', 0.16],
  ])('of %s birds %d are usually lost by 154 days', (kind, share) => {
    expect(worth(stateOf({ groups: [group({ kind })] }), 'kept-loss')).toBeCloseTo(share, 10);
  });

  test.each([
    [0, 0, 0],
    [1, 1, 0],
    [7, 1, 6],
    [8, 2, 6],
  ])('of %i for hatching %i cock and %i hens', (count, cocks, hens) => {
    const workings = workOut(stateOf(), undefined, [keep(count)]);
    expect([
      workings.step('cocks-for-hatching', 'whites').value,
      workings.step('hens-for-hatching', 'whites').value,
    ]).toEqual([cocks, hens]);
  });
});

describe('the answer', () => {
  test.each([
    ['fast', 'no', 'keep-back/not-the-kind'],
    ['slow', 'yes', 'keep-back/may-stay'],
    ['medium', 'yes', 'keep-back/may-stay'],
  ])('%s: %s', async (kind, verdict, rule) => {
    const { parts } = await answered(stateOf({ groups: [group({ kind })] }), 'keep-back');
    expect(parts.map((part) => [part.verdict, part.rule])).toEqual([[verdict, rule]]);
  });

  test('none left to keep', async () => {
    const gone = group({ processed: [{ on: '2026-05-07', line: 4, count: 50, dressed: null }] });
    const { parts } = await answered(stateOf({ groups: [gone] }), 'keep-back', ['whites']);
    expect(parts.map((part) => part.rule)).toEqual(['keep-back/none-left']);
  });
});
