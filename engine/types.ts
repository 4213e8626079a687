/** The words of the house as types: entry, state, figure, fact, rule, question, answer. Imports no code. */
export type * from './types/audit.ts';
export type * from './types/ledger.ts';
export type * from './types/reasoning.ts';
export type * from './types/rulebook.ts';
export type * from './types/trying.ts';
export type * from './types/values.ts';
export type * from './types/what-if.ts';
export type * from './types/words.ts';
