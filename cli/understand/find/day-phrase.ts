/** Days by phrases that are always the same number of days away: `the night before last`. */
import { addDays } from '../../../engine/day.ts';
import { fixed, type Reader, wordAt } from './day-reader.ts';

/** Phrases that are always the same number of days away. A night belongs to the day on which it begins. */
const away: Readonly<Record<string, number>> = {
  'the day before yesterday': -2,
  'day before yesterday': -2,
  'the night before last': -2,
  'night before last': -2,
  'the day after tomorrow': 2,
  'day after tomorrow': 2,
  overmorrow: 2,
  'this time next week': 7,
  'a week ago': -7,
  'a week from today': 7,
  'a week from now': 7,
  'a week today': 7,
  'last night': -1,
  'last nt': -1,
  'last evening': -1,
  'yesterday evening': -1,
  yestreen: -1,
  yesterday: -1,
  overnight: -1,
  tomorrow: 1,
  'the morrow': 1,
  tonight: 0,
  'this morning': 0,
  'this afternoon': 0,
  'this evening': 0,
  'this am': 0,
  'this pm': 0,
  today: 0,
  'this morn': 0,
  'this arvo': 0,
  'this aft': 0,
  'just now': 0,
  'right now': 0,
  'at the moment': 0,
  now: 0,
};

/** The same by first word, longest first. */
const phrases: ReadonlyMap<string, readonly { words: readonly string[]; days: number }[]> = Object.entries(
  away,
)
  .map(([phrase, days]) => ({ words: phrase.split(' '), days }))
  .sort((one, other) => other.words.length - one.words.length)
  .reduce((byFirst, phrase) => {
    const first = phrase.words[0] ?? '';
    return byFirst.set(first, [...(byFirst.get(first) ?? []), phrase]);
  }, new Map<string, { words: readonly string[]; days: number }[]>());

/** `today`, `last night`, `day after tomorrow` and the like. */
export const readPhrase: Reader = (tokens, at, today) => {
  const found = phrases
    .get(wordAt(tokens, at))
    ?.find((phrase) => phrase.words.every((each, n) => tokens[at + n]?.word === each));
  return found === undefined ? null : fixed(addDays(today, found.days), at + found.words.length);
};
