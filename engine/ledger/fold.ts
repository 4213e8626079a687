/** What the entries up to a moment add up to. */
import type { Problem } from '../problem.ts';
import type { Moment, State } from '../types.ts';
import { inDayOrder } from './day-order.ts';
import { finishDraft, startDraft } from './draft.ts';
import { inFileOrder } from './finding.ts';
import { kindNamed } from './kinds/index.ts';
import type { Book, Ledger } from './ledger.ts';
import { settle } from './settle.ts';

/** What was found in the ledger at a moment. */
export interface Folded {
  readonly state: State;
  /** What is wrong with lines of the file; that the entries do not fit together is for `checkLedger` to find. */
  readonly problems: readonly Problem[];
}

/**
 * Adds up what is believed at a moment. Entries about later days wait, except kinds that may lie ahead (weather).
 * Numbers of the state are in base units. An entry of a group that never arrived adds nothing to any group.
 */
export const foldTo = (ledger: Ledger, moment: Moment, book: Book): Folded => {
  const { standing, problems, lines } = settle(ledger, moment, book);
  const draft = startDraft();
  for (const { entry } of inDayOrder(standing)) {
    const kind = kindNamed(entry.kind);
    if (kind !== undefined && (kind.ahead || entry.on <= moment.on)) kind.apply(draft, entry, book.units);
  }
  return { state: finishDraft(draft, moment.on, lines), problems: inFileOrder(problems) };
};
