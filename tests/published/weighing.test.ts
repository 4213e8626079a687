/** Weighing a few birds: standard errors and sample sizes, by arithmetic and against the reference library. */
import { jStat } from 'jstat';
import { describe, expect, test } from 'vitest';
import { halfWidth } from '../../engine/facts/sums/normal.ts';
import { sampleFor, standardError } from '../../engine/facts/sums/sampling.ts';
import { group, stateOf } from '../helpers/state-of.ts';
import { worth } from '../helpers/work-out.ts';

describe('10 birds at a spread of 10 % (SE = CV/√n; finite-population factor √((N−n)/(N−1)))', () => {
  test('standard error 3.16 %; 2.91 % of 60', () => {
    expect(standardError(0.1, 10, Number.MAX_SAFE_INTEGER) * 100).toBeCloseTo(3.16, 2);
    expect(standardError(0.1, 10, 60) * 100).toBeCloseTo(2.91, 2);
  });

  test('half-width 7.15 % by Student’s t of the reference library (2.262)', () => {
    const t = jStat.studentt.inv(0.975, 9);
    expect(t).toBeCloseTo(2.262, 3);
    expect(standardError(0.1, 10, Number.MAX_SAFE_INTEGER) * t * 100).toBeCloseTo(7.15, 2);
  });
});

describe('birds for 5 % either side, 95 % sure (derived)', () => {
  test.each([
    [0.1, 16, 13],
    [0.12, 23, 17],
  ])('spread %f: %i birds; %i of 60', (spread, endless, of60) => {
    expect(sampleFor(spread, 0.05, halfWidth(0.95), 1e9)).toBe(endless);
    expect(sampleFor(spread, 0.05, halfWidth(0.95), 60)).toBe(of60);
  });

  test('is what a keeper of 60 is told: 17 of a mixed flock, 13 of one sex', () => {
    const told = (sexes: 'mixed' | 'pullets') =>
      worth(stateOf({ groups: [group({ boxed: 60, sexes })] }), 'birds-to-weigh');
    expect([told('mixed'), told('pullets')]).toEqual([17, 13]);
  });
});

test('spread of a mixed flock at week 7 of the Poultry CRC table (3350 g, 2800 g; 10 % within a sex): 13.45 % (derived)', () => {
  const [cockerels, pullets] = [3350, 2800];
  const mean = (cockerels + pullets) / 2;
  const within = (0.1 ** 2 * (cockerels ** 2 + pullets ** 2)) / 2;
  const between = ((cockerels - pullets) / 2) ** 2;
  const spread = Math.sqrt(within + between) / mean;
  expect(Math.abs(spread * 100 - 13.45)).toBeLessThan(0.02);
  // What is shipped is the low side of 12 to 13 %, so that a keeper is not sent to weigh more birds than it takes.
  expect(Number(worth(stateOf(), 'bird-spread'))).toBe(0.12);
});
