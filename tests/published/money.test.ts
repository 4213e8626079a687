/** Money and household against a published budget, the federal limits and sums worked out independently. */
import { describe, expect, test } from 'vitest';
import { ask, flockOf, type Line, partOf, shipped } from '../helpers/flock-of.ts';

const pound = 0.45359237;

/** A hundred birds with the lines of the small-farm budget on them. NC Choices and NC Growing Together, a handout; read. */
const budget: readonly (readonly [string, string])[] = [
  ['chicks', '120.00'],
  ['feed', '320.00'],
  ['labour', '600.00'],
  ['farm costs', '420.00'],
  ['transport', '50.00'],
  ['processing', '500.00'],
  ['marketing', '300.00'],
];

const farm = flockOf(
  {
    kind: 'arrive',
    on: '2026-05-02',
    group: 'whites',
    count: 100,
    dead: 0,
    bird: 'fast',
    hatched: '2026-05-01',
  },
  ...budget.map(([what, price]): Line => ({ kind: 'buy', on: '2026-05-02', what, price })),
  { kind: 'process', on: '2026-07-10', group: 'whites', count: 100, dressed: '360 lb' },
);

describe('the small-farm budget: 1.20, 3.20, 6.00, 4.20, 0.50, 5.00 and 3.00 a bird of 3.6 lb', () => {
  test('comes to 23.10 a bird and 6.42 a pound', async () => {
    const answer = await ask(farm, 'cost', '2026-07-12');
    const results = Object.fromEntries(answer.results.map(({ id, value }) => [id, value]));
    expect(results['per-bird']).toBe(23.1);
    expect(Number(results['per-weight']) * pound).toBeCloseTo(6.4167, 4);
    expect([results.spent, results.projected]).toEqual([2310, 2310]);
  });

  test('is on file with the price that it gives itself, 6.42', () => {
    expect(shipped.figures['money/budget-small-farm']?.values[0]?.value).toBe(6.42);
  });
});

// PNW 665, break-even by the pound, read: 5.20 for fast birds and 7.87 for slow ones.
test.each([
  ['money/budget-fast', 5.2],
  ['money/budget-slow', 7.87],
])('%s is %d a pound', (figure, value) => {
  expect(shipped.figures[figure]?.values[0]).toMatchObject({ source: 'pnw-665', value });
});

// Worked out: 52 birds of 4.68 lb are 243.4 lb.
test('a bird of 4.68 lb a week for a year is 243.4 lb', async () => {
  const year = flockOf(
    {
      kind: 'arrive',
      on: '2026-05-02',
      group: 'whites',
      count: 52,
      dead: 0,
      bird: 'fast',
      hatched: '2026-05-01',
    },
    { kind: 'setting', on: '2026-05-02', what: 'birds-a-week', value: 1 },
    { kind: 'process', on: '2026-07-01', group: 'whites', count: 52, dressed: '243.36 lb' },
  );
  const answer = await ask(year, 'freezer-left', '2026-07-01');
  const results = Object.fromEntries(answer.results.map(({ id, value }) => [id, value]));
  expect(Number(results['left-weight']) / pound).toBeCloseTo(243.4, 1);
  expect(results).toMatchObject({ left: 52, 'empty-on': '2027-06-30' });
});

describe('the federal exemptions: 1,000 and 20,000 birds a year, FSIS guidance of 2006, read', () => {
  const keeper = (birds: number) =>
    flockOf(
      { kind: 'setting', on: '2026-01-01', what: 'country', value: 'USA' },
      {
        kind: 'arrive',
        on: '2026-05-02',
        group: 'whites',
        count: birds,
        dead: 0,
        bird: 'fast',
        hatched: '2026-05-01',
      },
      { kind: 'process', on: '2026-07-01', group: 'whites', count: birds },
    );

  test.each([
    [70, 'selling-rules/small-grower'],
    [1000, 'selling-rules/small-grower'],
    [1001, 'selling-rules/larger-grower'],
    [20000, 'selling-rules/larger-grower'],
    [20001, 'selling-rules/past-the-limits'],
  ])('%i birds: %s', async (birds, rule) => {
    const part = partOf(await ask(keeper(birds), 'selling-rules', '2026-08-01'));
    expect(part.rule).toBe(rule);
    expect(part.cautions.map((each) => each.rule)).toEqual(['selling-rules/no-legal-advice']);
  });
});
