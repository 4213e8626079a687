/** The named checks of the whole ledger. A new check is one file beside this one and one line here. */
import type { Problem } from '../../problem.ts';
import { inFileOrder } from '../finding.ts';
import type { Book, Ledger, Measure } from '../ledger.ts';
import { type Belief, settle } from '../settle.ts';
import { beforeArrival } from './before-arrival.ts';
import type { Check } from './check.ts';
import { doubtfulValue } from './doubtful-value.ts';
import { futureEntry } from './future-entry.ts';
import { moreThanAlive } from './more-than-alive.ts';
import { nameTaken } from './name-taken.ts';
import { repeatedLine } from './repeated-line.ts';
import { undoTarget } from './undo-target.ts';
import { unknownGroup } from './unknown-group.ts';
import { writtenOrder } from './written-order.ts';

export const checks: readonly Check[] = [
  undoTarget,
  nameTaken,
  unknownGroup,
  beforeArrival,
  moreThanAlive,
  futureEntry,
  repeatedLine,
  writtenOrder,
  doubtfulValue,
];

/** Everything that does not fit together in what is believed of the ledger, of all its days, in file order. */
export const checkLedger = (
  ledger: Ledger,
  belief: Belief,
  book: Book,
  measure: Measure,
): readonly Problem[] => {
  const scene = { ...settle(ledger, belief, book), ledger, book, measure };
  return inFileOrder(checks.flatMap((check) => check.find(scene)));
};
