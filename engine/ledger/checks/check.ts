/** What a named check of the whole ledger is. */
import type { Problem } from '../../problem.ts';
import type { LedgerCode } from '../codes.ts';
import { type Finding, problemAt } from '../finding.ts';
import type { Book, Ledger, Measure } from '../ledger.ts';
import { locateStanding, type Settled, type Standing } from '../settle.ts';
import { touchesOf } from '../touches.ts';

/** All that a check may look at. */
export interface Scene extends Settled {
  readonly ledger: Ledger;
  readonly book: Book;
  readonly measure: Measure;
}

export interface Check {
  /** The code of its problems. */
  readonly name: LedgerCode;
  readonly find: (scene: Scene) => readonly Problem[];
}

/** A problem of a standing entry, with the caret under the value that the finding is about, wherever that was told last. */
export const problemOf = (
  { ledger }: Scene,
  { entry, corrections }: Standing,
  finding: Finding,
  touches: readonly string[] = touchesOf(entry.kind, entry.fields.group),
): Problem => problemAt(ledger.file, locateStanding(entry, corrections), finding, touches);
