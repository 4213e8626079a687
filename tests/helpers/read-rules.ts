/** The shipped rulebook, for tests that only listen. */
import type { Rulebook } from '../../engine/types.ts';
import { rulebook } from './rulebook-of.ts';

export const readRules = (): Rulebook => rulebook().book;
