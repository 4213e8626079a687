/** Feed against published tables: Poultry CRC and NRC 1984 (both read), NRC 1994 (from memory), and the line planned for at home. */
import { describe, expect, test } from 'vitest';
import { addDays } from '../../engine/day.ts';
import { bagsFor } from '../../engine/facts/feed/bags.ts';
import { smoothLine } from '../../engine/facts/sums/smooth-line.ts';
import { figureAt } from '../../engine/rulebook/figures.ts';
import { group, stateOf } from '../helpers/state-of.ts';
import { bookForTests, worth, worthUntil } from '../helpers/work-out.ts';

const lb = 0.45359237;
const hatched = '2026-05-01';
const bird = (age: number, kind = 'fast', sexes: 'mixed' | 'cockerels' | 'pullets' = 'mixed') =>
  stateOf({ on: addDays(hatched, age), groups: [group({ kind, sexes, arrived: hatched })] });

/** Feed of one bird over days of age, both included, kg. */
const eaten = (from: number, to: number, kind?: string, sexes?: 'mixed' | 'cockerels' | 'pullets'): number =>
  Number(worthUntil(bird(from, kind, sexes), 'feed-per-bird', addDays(hatched, to)));

const figure = (id: string, ...at: readonly (string | number)[]): number => {
  const known = bookForTests.figures[id];
  return known === undefined ? Number.NaN : (figureAt(known, '2026-06-01', at)?.value ?? Number.NaN);
};

describe('Poultry CRC, Australia, Table 1 (poultryhub.org)', () => {
  const share = 0.9;

  test('60 mixed birds eat 144.5 lb in week 5', () => {
    expect(Math.abs((eaten(28, 34) / share / lb) * 60 - 144.5)).toBeLessThan(0.2);
  });

  test('60 mixed birds eat 939.2 lb to the end of week 8, which is 19 bags of 50 lb', () => {
    const all = (eaten(0, 55) / share) * 60;
    expect(Math.abs(all / lb - 939.2)).toBeLessThan(0.5);
    expect(bagsFor(all, 50 * lb)).toBe(19);
  });

  test.each([
    ['cockerels', 7400],
    ['pullets', 6800],
  ] as const)('%s have eaten %i g by the end of week 8', (sexes, grams) => {
    expect((eaten(0, 55, 'fast', sexes) / share) * 1000).toBeCloseTo(grams, 6);
  });

  test('every week of the mixed column comes out of the daily line as it stands', () => {
    const weeks = [147.5, 322.5, 605, 847.5, 1092.5, 1245, 1440, 1400];
    const ours = weeks.map((_, week) => (eaten(week * 7, week * 7 + 6) / share) * 1000);
    expect(ours.map((each) => Math.round(each * 10) / 10)).toEqual(weeks);
  });
});

describe('the line planned for at home, worked out from Poultry CRC, ATTRA 2010 and a Minnesota fact sheet', () => {
  test('is 6,390 g (14.09 lb) of feed at 8 weeks, 2.165 for each unit of live weight', () => {
    const feed = eaten(0, 55);
    expect(Math.abs(feed / lb - 14.09)).toBeLessThan(0.01);
    expect(Math.abs(feed / Number(worth(bird(56), 'table-weight')) - 2.165)).toBeLessThan(0.002);
  });

  test('agrees with 3 lb of feed for each lb of carcass (Sustainable Farming Association of Minnesota) at 72 % dressing', () => {
    const carcass = Number(worth(bird(56), 'table-weight')) * 0.72;
    expect(eaten(0, 55) / carcass).toBeCloseTo(3, 1);
  });

  test('converts worse than the 1.821 of five strains in a trial to 55 days (Poultry Science 99, 3266–3279)', () => {
    const trial = 7291 / (4043 - 40.1);
    expect(Math.abs(trial - 1.821)).toBeLessThan(0.002);
    expect(eaten(0, 54) / (Number(worth(bird(55), 'table-weight')) - 0.04)).toBeGreaterThan(trial);
  });

  test('lies between the 13.12 lb of NRC 1994 (from memory) and the 15.65 lb of Poultry CRC at 8 weeks', () => {
    expect(eaten(0, 55) / lb).toBeGreaterThan(13.12);
    expect(eaten(0, 55) / lb).toBeLessThan(15.65);
  });
});

describe('NRC 1984, Table 1 (mean of both sexes)', () => {
  const weights = [40, 125, 310, 537.5, 825, 1180, 1560, 1922.5, 2290];
  const feed = [0, 115, 365, 737.5, 1255, 1947.5, 2837.5, 3840, 4930];

  test('feed for each unit of weight is that of the table, 2.153 at 8 weeks', () => {
    const ours = weights.map((_, week) => figure('feed/per-live-weight', week));
    weights.forEach((weight, week) => {
      expect(Math.abs((ours[week] ?? 0) - (feed[week] ?? 0) / weight)).toBeLessThan(0.0006);
    });
    expect(ours.at(-1)).toBe(2.153);
  });

  test('60 birds eat 91.6 lb in week 5, and 652.1 lb to week 8, which is 14 bags of 50 lb', () => {
    const line = smoothLine(
      weights.map((weight, week) => [week * 7, weight * figure('feed/per-live-weight', week)]),
    );
    const week5 = ((line(35) - line(28)) * 60) / 1000 / lb;
    const all = (line(56) * 60) / 1000;
    expect(Math.abs(week5 - 91.6)).toBeLessThan(0.1);
    expect(Math.abs(all / lb - 652.1)).toBeLessThan(0.5);
    expect(bagsFor(all, 50 * lb)).toBe(14);
  });
});

test('slow birds have eaten 2.6 times their weight at 10 weeks and 3.0 at 12 (from memory)', () => {
  for (const [week, ratio] of [
    [10, 2.6],
    [12, 3],
  ] as const) {
    const weight = Number(worth(bird(week * 7, 'slow'), 'table-weight'));
    expect(eaten(0, week * 7 - 1, 'slow') / weight).toBeCloseTo(ratio, 10);
  }
});
