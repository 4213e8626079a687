/** What of a line no record took, said back in one line. */
import { listed } from './listed.ts';

/** The clauses that were not taken in, each in the keeper's own words. */
export const sayLeftOut = (clauses: readonly string[]): string =>
  `Not taken in: ${listed(clauses.map((clause) => `"${clause}"`))}. ${
    clauses.length === 1 ? 'Say it again by itself.' : 'Say each again by itself.'
  }`;
