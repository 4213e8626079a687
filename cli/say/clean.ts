/** Makes any text safe to show on one row: no escapes, controls or direction marks get to the terminal. */
import { stripVTControlCharacters } from 'node:util';

/**
 * A text without terminal escapes, control characters, bidirectional controls or lone surrogates. Line ends and tabs
 * become one space each; other spaces stay, so that what the keeper is still typing is not trimmed under the cursor.
 */
export const clean = (text: string): string =>
  stripVTControlCharacters(text)
    .replace(/\r\n|[\n\r\t\v\f\u0085\u2028\u2029]/g, ' ')
    .replace(/[\p{Cc}\p{Bidi_Control}\u200b\ufeff]/gu, '')
    .replace(/\p{Surrogate}/gu, '\ufffd');
