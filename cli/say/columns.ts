/** How many terminal columns a text takes; cheap to load, since every answer on a terminal is measured by it. */
import { eastAsianWidth } from 'get-east-asian-width';

/** Letters, signs and dashes that take one column each: nearly every answer is made of nothing else. */
const plainLetters = /^[ -~\u00a0-\u024f\u2010-\u2027\u2030-\u205e]*$/;
const takesNone = /^[\p{Mark}\p{Cf}]$/u;

/**
 * Columns of a text. Characters that join into one picture count each for itself, so the count may come out too high
 * for them, never too low: a row breaks early rather than late.
 */
export const columnsOf = (text: string): number => {
  if (plainLetters.test(text)) return text.length;
  let columns = 0;
  for (const character of text) {
    if (!takesNone.test(character)) columns += eastAsianWidth(character.codePointAt(0) ?? 0);
  }
  return columns;
};
