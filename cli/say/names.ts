/** What facts are called in the keeper's words. */
import type { Speech } from './speech.ts';

export const nameOf = (speech: Speech, fact: string): string => speech.book.facts[fact]?.name ?? fact;
