/** A group told as two halves eats, drinks and counts as the whole did: nothing is lost or made by the telling. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addDays } from '../../../engine/day.ts';
import { ask, flockOf, type Line } from '../../helpers/flock-of.ts';

const first = '2026-05-02';

const arrive = (group: string, count: number, bird: string): Line => ({
  kind: 'arrive',
  on: first,
  group,
  count,
  bird,
  hatched: '2026-05-01',
});

const totalOf = async (lines: readonly Line[], question: string, id: string, on: string): Promise<number> => {
  const { results } = await ask(flockOf(...lines), question, on);
  const own = results.filter((result) => result.id === id);
  return Number((own.find((result) => result.group === null) ?? own[0])?.value);
};

test('splitting a group changes no total of feed, water or birds', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.integer({ min: 2, max: 60 }),
      fc.integer({ min: 1, max: 59 }),
      fc.integer({ min: 1, max: 70 }),
      fc.constantFrom('fast', 'medium', 'slow'),
      async (count, cut, age, bird) => {
        const part = Math.min(cut, count - 1);
        const on = addDays(first, age);
        const whole = [arrive('all', count, bird)];
        const halves = [arrive('some', part, bird), arrive('rest', count - part, bird)];
        for (const [question, id] of [
          ['feed-amount', 'feed'],
          ['water-amount', 'water'],
          ['headcount', 'alive'],
        ] as const) {
          const [one, two] = [
            await totalOf(whole, question, id, on),
            await totalOf(halves, question, id, on),
          ];
          expect(Math.abs(two - one) / one, `${question} at ${age} days`).toBeLessThan(1e-9);
        }
      },
    ),
    { numRuns: 40 },
  );
});
