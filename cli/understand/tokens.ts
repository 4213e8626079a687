/** A line cut into words and marks, in plain spelling, each knowing where it stood in the line. */
import { beforeIs, endings, shortForms } from './short-forms.ts';
import { stemOf } from './stem.ts';

/** A word, number or mark. `start` and `end` are places in the keeper's own line. */
export interface Token {
  readonly word: string;
  readonly stem: string;
  /** A comma, stop, question mark or the like: nothing is matched across it. */
  readonly isMark: boolean;
  /** True when it touches the piece before it, as the `lb` of `5lb`. */
  readonly touches: boolean;
  readonly start: number;
  readonly end: number;
}

/** Longer lines than this are cut, so that no paste can keep the program busy. */
export const mostCharacters = 1500;

const piece =
  /\b(?:2day|2nite|2night|2morrow|2moro|2mrw|b4)\b|\d{4}-\d{2}-\d{2}|\d{1,2}:\d{2}|\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+,\d{1,2}(?![\d,])|\d*\.\d+|\d+\/\d+(?:\/\d+)?|\d+(?:st|nd|rd|th)\b|\d+|[a-z]+(?:'[a-z]+)*|[½¼¾]|m[²2]|°|[^\s\w]/giu;

const straight = (words: string): string =>
  words
    .replace(/[\u2018\u2019\u02bc\u00b4`]/g, "'")
    .replace(/[\u201c\u201d]/g, '"')
    .replace(/[\u2212\u2013\u2014]/g, '-');

const marks = new Set(['.', ',', ';', ':', '?', '!', '(', ')', '-', '…', '/', '&', '+']);

const plainWords = (written: string): readonly string[] => {
  const whole = shortForms.get(written);
  if (whole !== undefined) return whole;
  const at = written.lastIndexOf("'");
  if (at < 0) return [written];
  const before = written.slice(0, at);
  const after = written.slice(at + 1);
  if (after === 't' && before.endsWith('n'))
    return before === 'can' ? ['can', 'not'] : [stemNot(before), 'not'];
  // "t'whites" is how some say "the whites"
  if (before === 't') return [after];
  if (after === 's')
    return before === 'let' ? ['let', 'us'] : beforeIs.has(before) ? [before, 'is'] : [before];
  const ending = endings.get(after);
  return ending === undefined ? [written.replaceAll("'", '')] : [before, ending];
};

const stemNot = (before: string): string => (before === 'won' ? 'will' : before.slice(0, -1));

/** Cuts a line into tokens. Never fails; what is longer than `mostCharacters` is left off. */
export const tokenise = (line: string): readonly Token[] => {
  const text = straight(line.slice(0, mostCharacters));
  const tokens: Token[] = [];
  let last = -1;
  for (const found of text.matchAll(piece)) {
    const written = found[0].toLowerCase();
    const start = found.index;
    const end = start + found[0].length;
    for (const word of plainWords(written)) {
      tokens.push({ word, stem: stemOf(word), isMark: marks.has(word), touches: start === last, start, end });
    }
    last = end;
  }
  return tokens;
};
