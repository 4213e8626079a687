/** No feed is lost or made: what was counted and bought is what was taken and what is left. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays } from '../../../engine/day.ts';
import { factsOf } from '../../helpers/facts-of.ts';
import { flockOf, type Line } from '../../helpers/flock-of.ts';
import { type Standing, told, type ValidLedger, validLedgers } from '../../helpers/valid-ledgers.ts';

// So many ledgers take longer than one test is given on a busy machine.
const unhurried = { timeout: 60_000 };

const pound = 0.45359237;

const at = (on: string) => ({ on, asOf: null, lines: null });

const feedBought = (ledger: ValidLedger): readonly Standing[] =>
  told(ledger, 'buy').filter(({ fields }) => fields.what === 'feed');

/** Where counting begins, and what was there: the last count, else nothing before the first purchase. */
const startOf = (ledger: ValidLedger): { readonly line: number; readonly mass: number } | undefined => {
  const count = told(ledger, 'setting').at(-1);
  if (count !== undefined)
    return { line: count.line, mass: Number.parseFloat(String(count.fields.value)) * pound };
  const [bought] = feedBought(ledger);
  return bought === undefined ? undefined : { line: bought.line - 1, mass: 0 };
};

const pounds = (entries: readonly Standing[], bag = 0): number =>
  entries.reduce(
    (sum, { fields }) =>
      sum +
      (fields.amount === undefined
        ? Number.parseFloat(String(fields.bags)) * bag
        : Number.parseFloat(String(fields.amount)) * pound),
    0,
  );

describe('feed', unhurried, () => {
  test('counted and bought is feed taken and feed left, in all; less than nothing is never left', () => {
    let rich = 0;
    fc.assert(
      fc.property(validLedgers(), (ledger) => {
        const fact = factsOf(ledger);
        const start = startOf(ledger);
        if (start === undefined) {
          expect(fact('feed-left')).toBeNull();
          return;
        }
        const bought = feedBought(ledger).filter(({ line }) => line > start.line);
        const put = start.mass + pounds(bought, Number(fact('bag-mass')));
        expect(Number(fact('feed-told')) + Number(fact('feed-bought'))).toBeCloseTo(put, 6);
        const taken = ledger.groups.reduce((sum, name) => sum + Number(fact('feed-taken', name)), 0);
        expect(fact('feed-given')).toBeCloseTo(taken, 6);
        expect(fact('feed-left')).toBeCloseTo(Math.max(0, put - taken), 6);
        const byBin = ['starter', 'grower', 'finisher', 'plain'].map((bin) => Number(fact(`${bin}-left`)));
        expect(byBin.reduce((sum, each) => sum + each)).toBeCloseTo(Math.max(0, put - taken), 6);
        const plain = bought.filter(({ fields }) => fields.ration === undefined);
        expect(byBin[3]).toBeLessThan(start.mass + pounds(plain, Number(fact('bag-mass'))) + 1e-6);
        const byRation = ['starter', 'grower', 'finisher'].flatMap((ration) =>
          ledger.groups.map((name) => Number(fact(`${ration}-taken`, name))),
        );
        expect(byRation.reduce((sum, each) => sum + each)).toBeCloseTo(taken, 6);
        if (taken < put) rich += 1;
      }),
      { numRuns: 300 },
    );
    expect(rich).toBeGreaterThan(50);
  });

  test('left of batches that are over is the same for the stock and for what they cost', () => {
    const batch = fc.record({
      after: fc.integer({ min: 0, max: 80 }),
      days: fc.integer({ min: 30, max: 70 }),
      bags: fc.integer({ min: 3, max: 30 }),
      fed: fc.array(
        fc.record({ at: fc.integer({ min: 0, max: 29 }), mass: fc.integer({ min: 1, max: 60 }) }),
        {
          maxLength: 12,
        },
      ),
    });
    let left = 0;
    fc.assert(
      fc.property(fc.array(batch, { minLength: 1, maxLength: 3 }), (batches) => {
        const lines = batches.flatMap(({ after, days, bags, fed }, index): readonly Line[] => {
          const group = `batch ${index + 1}`;
          const on = (day: number) => addDays('2026-03-01', after + day);
          const birds = { group, count: 12 };
          return [
            { kind: 'buy', on: on(0), what: 'feed', bags: `${bags} bag`, price: '20.00' },
            { kind: 'arrive', on: on(0), ...birds, bird: 'fast', hatched: on(-1) },
            ...fed.map(
              ({ at: day, mass }): Line => ({ kind: 'feed', on: on(day), group, amount: `${mass} lb` }),
            ),
            { kind: 'process', on: on(days), ...birds },
          ];
        });
        const engine = flockOf(
          ...[...lines].sort((one, other) => (String(one.on) < String(other.on) ? -1 : 1)),
        );
        const fact = (id: string, group: string | null = null) => engine.fact(id, group, at('2026-09-01'));
        const hasEnough = batches.every(
          ({ bags }, index) =>
            Number(fact('feed-eaten', `batch ${index + 1}`)) <= bags * Number(fact('bag-mass')),
        );
        // A batch that went short is told as one that ate what there was, and its debt is not carried on.
        if (!hasEnough) return;
        if (Number(fact('feed-left')) > 0) left += 1;
        expect(Number(fact('all-feed-passed-on'))).toBeCloseTo(Number(fact('feed-left')), 6);
      }),
      { numRuns: 1000 },
    );
    expect(left).toBeGreaterThan(100);
  });

  test('on record is never forgotten, whoever it was given to and whoever is still there', () => {
    fc.assert(
      fc.property(validLedgers(), (ledger) => {
        const start = startOf(ledger);
        if (start === undefined) return;
        const given = told(ledger, 'feed').filter(({ line }) => line > start.line);
        expect(Number(factsOf(ledger)('feed-given'))).toBeGreaterThanOrEqual(pounds(given) - 1e-9);
      }),
      { numRuns: 500 },
    );
  });

  test('on record every day is all that was taken', () => {
    const days = fc.array(
      fc.record({ mass: fc.integer({ min: 1, max: 60 }), to: fc.constantFrom('whites', 'reds', null) }),
      {
        minLength: 2,
        maxLength: 40,
      },
    );
    fc.assert(
      fc.property(days, fc.integer({ min: 0, max: 40 }), (feedings, gone) => {
        const on = (day: number) => addDays('2026-05-02', day);
        const arrive = (group: string): Line => ({
          kind: 'arrive',
          on: on(0),
          group,
          count: 20,
          bird: 'fast',
          hatched: on(-1),
        });
        const engine = flockOf(
          arrive('whites'),
          arrive('reds'),
          { kind: 'setting', on: on(0), what: 'feed-in-stock', value: '9000 lb' },
          ...feedings.flatMap(({ mass, to }, day): readonly Line[] => [
            // Each group has its own, so that no day of either goes by the table.
            { kind: 'feed', on: on(day), amount: `${mass} lb`, ...(to === null ? {} : { group: to }) },
            { kind: 'feed', on: on(day), amount: '3 lb' },
          ]),
          ...['whites', 'reds'].map((group): Line => ({ kind: 'process', on: on(gone), group, count: 20 })),
        );
        const all = feedings.reduce((sum, { mass }) => sum + mass + 3, 0) * pound;
        const fact = (id: string) => engine.fact(id, null, at(on(feedings.length - 1)));
        expect(fact('feed-given')).toBeCloseTo(all, 6);
        expect(fact('feed-left')).toBeCloseTo(9000 * pound - all, 6);
      }),
      { numRuns: 300 },
    );
  });
});
