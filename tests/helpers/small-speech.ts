/** The small rulebook spoken in either system, on the day after the one that small answers are about. */
import type { Speech } from '../../cli/say/speech.ts';
import type { Rulebook } from '../../engine/types.ts';
import { smallRulebook } from './small-rulebook.ts';

export const speechIn = (system: 'us' | 'metric', book: Rulebook = smallRulebook().book): Speech => ({
  book,
  system,
  currency: '$',
  today: '2026-05-08',
});
