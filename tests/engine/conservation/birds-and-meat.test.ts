/** No bird is lost or made on the way from the box to the table, whatever is told and taken back. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { openText } from '../../../engine/index.ts';
import { factsOf } from '../../helpers/facts-of.ts';
import { shipped } from '../../helpers/flock-of.ts';
import { sumOf, told, type ValidLedger, validLedgers } from '../../helpers/valid-ledgers.ts';

// So many ledgers take longer than one test is given on a busy machine.
const unhurried = { timeout: 60_000 };

const ofGroup = (ledger: ValidLedger, kind: string, name: string): number =>
  sumOf(
    told(ledger, kind).filter(({ fields }) => fields.group === name),
    'count',
  );

const handed = (ledger: ValidLedger): number =>
  sumOf(
    told(ledger, 'share').filter(({ fields }) => fields.step === 'handed'),
    'count',
  );

test('the ledgers drawn are valid: nothing is wrong with any of them', unhurried, () => {
  fc.assert(
    fc.property(validLedgers(), ({ text, on }) => {
      expect(openText(shipped, 'flock.jsonl', text).check(on)).toEqual([]);
    }),
    { numRuns: 300 },
  );
});

describe('birds', unhurried, () => {
  test('in the box are dead in it, lost, processed or alive, and those kept back are among the alive', () => {
    fc.assert(
      fc.property(validLedgers(), (ledger) => {
        const fact = factsOf(ledger);
        for (const name of ledger.groups) {
          const [boxed, dead, lost, processed, alive, kept, table] = [
            'boxed',
            'dead-on-arrival',
            'lost',
            'processed',
            'alive',
            'kept-back',
            'birds-for-table',
          ].map((id) => Number(fact(id, name)));
          expect([lost, processed]).toEqual([
            ofGroup(ledger, 'loss', name),
            ofGroup(ledger, 'process', name),
          ]);
          expect(boxed).toBe(Number(dead) + Number(lost) + Number(processed) + Number(alive));
          expect(alive).toBe(Number(kept) + Number(table));
        }
      }),
      { numRuns: 1000 },
    );
  });
});

describe('the freezer', unhurried, () => {
  test('has what was processed, less what was eaten and handed over', () => {
    fc.assert(
      fc.property(validLedgers(), (ledger) => {
        const fact = factsOf(ledger);
        const frozen = sumOf(told(ledger, 'process'), 'count');
        const [eaten, given] = [sumOf(told(ledger, 'eat'), 'count'), handed(ledger)];
        expect(['frozen-in', 'frozen-eaten', 'handed', 'freezer-left'].map((id) => fact(id))).toEqual([
          frozen,
          eaten,
          given,
          frozen - eaten - given,
        ]);
      }),
      { numRuns: 1000 },
    );
  });

  test('has what was put in by weight less what came out, as long as birds are left and no more came out than went in', () => {
    let drawn = 0;
    fc.assert(
      fc.property(validLedgers(), (ledger) => {
        const fact = factsOf(ledger);
        const [birds, put, out, left] = [
          'freezer-left',
          'frozen-weight-in',
          'frozen-weight-out',
          'freezer-left-weight',
        ].map((id) => Number(fact(id)));
        if (Number(birds) > 0 && Number(out) <= Number(put)) drawn += 1;
        expect(left).toBeCloseTo(birds === 0 ? 0 : Math.max(0, Number(put) - Number(out)), 9);
      }),
      { numRuns: 500 },
    );
    expect(drawn).toBeGreaterThan(200);
  });
});
