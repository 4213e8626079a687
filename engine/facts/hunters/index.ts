/** Facts about the hunters that may have been at the birds. */
import { evidenceFacts } from './evidence.ts';
import { wayInFacts } from './ways.ts';

export const hunterFacts = [...evidenceFacts, ...wayInFacts];
