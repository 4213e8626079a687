/** A note, from words: what follows the word that calls for one, untouched. */
import { type Build, known, lacking } from './told.ts';

const lead =
  /^\s*(?:(?:please|ok|can you|could you|pls)\s+)*(?:make a note|note to self|take a note|note down|write down|write this down|jot down|for the record|log|note|remember|remind me|reminder|fyi|nb|memo|diary entry|for the (?:diary|book)|just for the record|put a line in(?: for today)?|keep in mind|mark down|record|add a note)\b(?:\s+(?:that|to|for next (?:year|time|batch)|of))?[\s:,.\-–—]*/i;

export const buildNote: Build = (told) => {
  const words = told.words.replace(lead, '').trim();
  const fields = { words: words === '' ? null : words };
  return { fields: known(fields), missing: lacking(fields, 'words'), assumed: [], keepsDay: true };
};
