/** The door to the ledger, for `engine/index.ts` alone. */
export { type Appended, appendEntries } from './append/append.ts';
export type { Patience } from './append/lock.ts';
export { lineOf, type NewEntry, type Tried, tryAppend } from './append/try-append.ts';
export { mayWrite } from './append/write-lines.ts';
export { limitIds } from './checks/doubtful-value.ts';
export { checkLedger } from './checks/index.ts';
export { type LedgerCode, ledgerCodes, writingCodes } from './codes.ts';
export type { Field, FieldType } from './fields/field.ts';
export { type Folded, foldTo } from './fold.ts';
export { freeName } from './free-name.ts';
export { kindNamed, kinds } from './kinds/index.ts';
export type { Kind } from './kinds/kind.ts';
export { layOver } from './lay-over.ts';
export type { Book, Ledger, Measure } from './ledger.ts';
export { printOf } from './print.ts';
export { readLedgerFile, readLedgerText } from './read.ts';
export { rememberFolds, rememberLatest } from './remember-folds.ts';
export { type Belief, settle } from './settle.ts';
