/** Which codes a problem of the ledger can carry, and which of them stand in the way of an answer. */

/** Code → whether it is grave: the line is not believed, or what it says cannot be true. */
export const ledgerCodes = {
  // the file and its lines
  'unreadable-file': true,
  'not-json': true,
  'torn-line': false,
  'not-an-object': true,
  'duplicate-key': true,
  // one entry
  'unknown-kind': true,
  'unknown-field': true,
  'missing-field': true,
  'wrong-type': true,
  'empty-text': true,
  'control-characters': true,
  'bad-day': true,
  'bad-time': true,
  'bad-quantity': true,
  'bad-money': true,
  'wrong-dimension': true,
  'out-of-range': true,
  'unknown-choice': true,
  'two-forms': true,
  'cell-not-named': true,
  'no-cells': true,
  // the entries together
  'undo-target': true,
  'name-taken': true,
  'unknown-group': true,
  'before-arrival': true,
  'more-than-alive': true,
  'future-entry': true,
  'repeated-line': false,
  'written-order': false,
  'doubtful-value': false,
} as const satisfies Record<string, boolean>;

/** Codes that only writing to the file can give. */
export const writingCodes = {
  locked: true,
  'not-written': true,
} as const satisfies Record<string, boolean>;

export type LedgerCode = keyof typeof ledgerCodes;
