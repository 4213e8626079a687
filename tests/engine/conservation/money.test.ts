/** No hundredth of money is lost or made when purchases are shared among batches and lines. */
import { Big } from 'big.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays } from '../../../engine/day.ts';
import { factsOf } from '../../helpers/facts-of.ts';
import { told, validLedgers } from '../../helpers/valid-ledgers.ts';

// So many ledgers take longer than one test is given on a busy machine.
const unhurried = { timeout: 60_000 };

const lines = ['chicks', 'feed', 'bedding', 'heat', 'gear', 'processing', 'labour', 'other'];

const exactSum = (amounts: readonly unknown[]): string =>
  amounts.reduce<Big>((sum, each) => sum.plus(Number(each)), new Big(0)).toFixed(2);

describe('money', unhurried, () => {
  test('of every line together is what the batches cost, and that of all batches what the answer says', () => {
    let known = 0;
    fc.assert(
      fc.property(validLedgers(), (ledger) => {
        const fact = factsOf(ledger);
        for (const name of ledger.groups) {
          const cost = fact('batch-cost', name);
          const parts = lines.map((line) => fact(`cost-${line}`, name));
          if (parts.some((part) => part === null)) {
            expect(cost).toBeNull();
            continue;
          }
          expect(Number(cost).toFixed(2)).toBe(exactSum(parts));
        }
        const projected = fact('projected');
        if (projected === null) return;
        known += 1;
        expect(Number(projected).toFixed(2)).toBe(exactSum(lines.map((line) => fact(`all-${line}`))));
      }),
      { numRuns: 300 },
    );
    expect(known).toBeGreaterThan(100);
  });

  test('paid is borne by the batches to the hundredth, but what was bought after the last bird is for birds to come', () => {
    let [open, closed, passedOn] = [0, 0, 0];
    fc.assert(
      fc.property(validLedgers(), (ledger) => {
        const fact = factsOf(ledger);
        const forTable = ledger.groups.some((name) => Number(fact('birds-for-table', name)) > 0);
        const ends = ['loss', 'process', 'arrive'].flatMap((kind) => told(ledger, kind).map(({ on }) => on));
        const last = forTable ? ledger.on : String(ends.sort().at(-1));
        const bought = told(ledger, 'buy');
        // Bills may come a little late, and chicks are always somebody's: only feed, bedding and the rest are left over.
        const isBorne = (what: unknown, on: string, group: unknown): boolean =>
          group !== undefined ||
          what === 'chicks' ||
          on <= (['processing', 'electricity'].includes(String(what)) ? addDays(last, 14) : last);
        const borne = bought.filter(({ on, fields }) => isBorne(fields.what, on, fields.group));
        const paid = ledger.groups.map((name) => fact('batch-paid', name));
        // What the last batches left in the bin waits for the next ones.
        const waiting = fact('all-feed-passed-on-worth');
        if (Number(waiting) > 0) passedOn += 1;
        expect(exactSum([...paid, waiting])).toBe(exactSum(borne.map(({ fields }) => fields.price ?? 0)));
        for (const [line, what] of [
          ['chicks', 'chicks'],
          ['bedding', 'bedding'],
          ['other', 'twine'],
        ]) {
          const onLine = borne.filter(({ fields }) => fields.what === what);
          expect(exactSum(ledger.groups.map((name) => fact(`cost-${line}`, name)))).toBe(
            exactSum(onLine.map(({ fields }) => fields.price ?? 0)),
          );
        }
        if (forTable) open += 1;
        else closed += 1;
      }),
      { numRuns: 300 },
    );
    expect(Math.min(open, closed)).toBeGreaterThan(5);
    expect(passedOn).toBeGreaterThan(2);
  });
});
