/** The steps of an answer reproduce its number: with pencil and paper, from the recorded parts alone, a reader gets the same. */
import { jStat } from 'jstat';
import { describe, expect, test } from 'vitest';
import { demoLedger } from '../../../cli/demo/demo.ts';
import { stepOf, stepsInto } from '../../../engine/explain/drill.ts';
import { openText } from '../../../engine/index.ts';
import type { Answer } from '../../../engine/types.ts';
import { ask, flockOf, type Line, shipped } from '../../helpers/flock-of.ts';

const today = '2026-05-14';
const demo = openText(shipped, 'demo', demoLedger(today));

/** Values of one answer by fact, as they were recorded, and of what went into a fact. */
const sheetOf = (answer: Answer, group: string | null) => {
  const step = (fact: string) => {
    const found = stepOf(answer, fact, group);
    if (found === undefined) throw new Error(`${fact} was not worked out`);
    return found;
  };
  return {
    of: (fact: string): number => Number(step(fact).value),
    parts: (fact: string, part: string): readonly number[] =>
      stepsInto(answer, step(fact))
        .filter((each) => each.fact === part)
        .map((each) => Number(each.value)),
    figure: (fact: string, id: string): number =>
      step(fact).figures.find((use) => use.id === id)?.value ?? Number.NaN,
    inputs: (fact: string): readonly string[] =>
      stepsInto(answer, step(fact))
        .map((each) => each.fact)
        .sort(),
  };
};
const sheet = async (question: string, group: string | null) =>
  sheetOf(await ask(demo, question, today, group === null ? {} : { groups: [group] }), group);

const total = (values: readonly number[]): number => values.reduce((sum, each) => sum + each, 0);

describe.each(['whites', 'reds'])('of the %s', (group) => {
  test('feed of the day is what a bird eats times the birds', async () => {
    const { of, inputs } = await sheet('feed-amount', group);
    expect(inputs('feed-today')).toEqual(['alive', 'feed-per-bird-day']);
    expect(of('feed-today')).toBeCloseTo(of('feed-per-bird-day') * of('alive'), 9);
  });

  test('water of the day is the larger of two amounts', async () => {
    const { of, inputs } = await sheet('water-amount', group);
    expect(inputs('water-per-day')).toEqual(['water-from-feed', 'water-from-table']);
    expect(of('water-per-day')).toBe(Math.max(of('water-from-feed'), of('water-from-table')));
  });

  test('room is the floor over those who share it, and what fits is whole birds', async () => {
    const { of } = await sheet('room', group);
    expect(of('area-per-bird')).toBeCloseTo(of('room-area') / of('sharing'), 9);
    expect(of('fit')).toBe(Math.floor(of('room-area') / of('room-wanted')));
  });
});

test('live weight is the plan line times how this flock stands beside it', async () => {
  const { of, inputs } = await sheet('growth', 'whites');
  expect(inputs('live-weight')).toEqual(['flock-ratio', 'table-weight']);
  expect(of('live-weight')).toBeCloseTo(of('table-weight') * of('flock-ratio'), 12);
});

test('a batch costs what its groups cost, and a bird its share of that', async () => {
  const { of, parts } = await sheet('cost', null);
  expect(parts('projected', 'batch-cost')).toHaveLength(2);
  expect(of('projected')).toBeCloseTo(total(parts('projected', 'batch-cost')), 9);
  expect(of('birds-in-end')).toBe(Math.round(total(parts('birds-in-end', 'birds-at-end'))));
  expect(of('cost-per-bird')).toBeCloseTo(of('projected') / of('birds-in-end'), 2);
});

test('an order is the fewest chicks that leave enough as surely as wanted', async () => {
  const { of } = await sheet('order-size', null);
  // jstat's binomial, over the recorded loss: the chance that no more are lost than may be.
  const chance = (ordered: number): number =>
    jStat.binomial.cdf(ordered - of('birds-wanted'), ordered, of('order-loss'));
  expect(of('past-exposure')).toBe(0);
  expect(chance(of('order'))).toBeGreaterThanOrEqual(of('certainty'));
  expect(chance(of('order') - 1)).toBeLessThan(of('certainty'));
  expect(of('order-chance')).toBeCloseTo(chance(of('order')), 9);
});

test('the heat under the lamp is the figure at their age', async () => {
  const { of, figure } = await sheet('brooder-heat', 'reds');
  expect(figure('brooder-target', 'brooder/target')).toBe(80);
  expect(of('brooder-target')).toBeCloseTo((80 - 32) / 1.8, 9);
});

test('birds in the freezer are those put in, less those eaten and handed over', async () => {
  const lines: readonly Line[] = [
    { kind: 'arrive', on: '2026-03-01', group: 'whites', count: 30, bird: 'fast', hatched: '2026-02-28' },
    { kind: 'process', on: '2026-04-25', group: 'whites', count: 20, dressed: '90 lb' },
    { kind: 'process', on: '2026-04-26', group: 'whites', count: 8, dressed: '36 lb' },
    { kind: 'share', on: '2026-04-27', who: 'the Marlows', count: 4, step: 'handed' },
    { kind: 'eat', on: '2026-05-03', count: 2 },
    { kind: 'eat', on: '2026-05-10', count: 1 },
  ];
  const { of, parts } = sheetOf(await ask(flockOf(...lines), 'freezer-left', today), null);
  expect(of('frozen-in')).toBe(total(parts('frozen-in', 'processed')));
  expect([of('frozen-in'), of('frozen-eaten'), of('handed'), of('freezer-left')]).toEqual([28, 3, 4, 21]);
});
