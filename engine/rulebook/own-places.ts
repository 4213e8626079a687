/** Where a file of the keeper's may stand: only in the folders of what may be declared, under names that can be ids. */
import type { Problem } from '../problem.ts';
import type { RuleDocument } from './document.ts';

/** A figure and a rule stand two names deep, a source and a question one; the path is the id. */
const places = /^(?:(?:figures|decisions)\/[a-z0-9-]+|sources|questions)\/[a-z0-9]+(?:-[a-z0-9]+)*\.yaml$/;

/** The fault of a file that stands elsewhere, or none. */
export const placeFaults = (document: RuleDocument): Problem[] =>
  places.test(document.file) ? [] : [document.problemAt([], 'wrong-place', { found: document.file })];
