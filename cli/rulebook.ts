/** The compiled rulebook that ships beside the program. */
import { readFileSync } from 'node:fs';
import type { Rulebook } from '../engine/types.ts';

/** Reads the rulebook that the build has checked and compiled; it needs no YAML parser. */
export const shippedRulebook = (): Rulebook =>
  JSON.parse(readFileSync(new URL('./rulebook.json', import.meta.url), 'utf8'));
