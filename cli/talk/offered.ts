/** What was offered to choose from: readings with numbers, or one line that may have been meant; and what is said to it. */
import { emptyJson } from '../say/as-json.ts';
import { offerOf } from '../say/help.ts';
import type { Token } from '../say/tokens.ts';
import { mendFarSlips } from '../understand/far-slips.ts';
import type { About, Heard, Reading } from '../understand/types.ts';
import { understand } from '../understand/understand.ts';
import type { Flock } from './flock.ts';
import { nothingHeard } from './heard-as-json.ts';
import { exits, type Memory, type Reply } from './reply.ts';

const yes = /^\s*(y|yes|yeah|yep|yup|right|exactly)\s*[.!]?\s*$/i;
const no = /^\s*(n|no|nope|none|neither|none of (them|these|those))\s*[.!]?\s*$/i;

/** The reading that a bare number, or "yes" to a single one, picks from the choices offered last. */
export const chosen = (words: string, { choices }: Memory): Reading | undefined => {
  const n = /^\s*(\d)\s*[.!)]?\s*$/.exec(words)?.[1];
  if (n !== undefined) return choices[Number(n) - 1];
  return choices.length === 1 && yes.test(words) ? choices[0] : undefined;
};

const reply = (
  { book }: Flock,
  words: string,
  tokens: readonly Token[],
  memory: Memory,
  choices: readonly Reading[],
): Reply => ({
  tokens,
  json: {
    ...emptyJson(words, nothingHeard),
    ...(choices.length === 0 ? {} : { verdict: 'which' as const }),
    headline: tokens[0]?.t === 'claim' ? tokens[0].text : '',
    choices: choices.map(({ topic }) => ({ question: topic, says: offerOf(book, topic) })),
  },
  record: null,
  exit: exits.notUnderstood,
  memory: { ...memory, choices },
});

/** What is said to a "yes" that says not which, and to a "no"; null where the words are neither, or nothing was offered. */
export const answerOffered = (flock: Flock, words: string, memory: Memory): Reply | null => {
  const { choices } = memory;
  if (choices.length === 0) return null;
  if (yes.test(words))
    return reply(
      flock,
      words,
      [{ t: 'claim', text: `Which one? Say its number, 1 to ${choices.length}.` }],
      memory,
      choices,
    );
  if (!no.test(words)) return null;
  const text = 'Then say it in other words; "help" shows what can be asked and told.';
  return reply(flock, words, [{ t: 'claim', text }], memory, []);
};

/** The words of the trade that a slip may be meant for, names of groups first. */
const candidates = ({ book }: Flock, about: About): readonly string[] => {
  const phrases = [
    ...about.groups.map(({ name }) => name),
    ...Object.values(book.words.ideas).flat(),
    ...Object.values(book.questions).map(({ example }) => example),
    ...Object.values(book.records).map(({ example }) => example),
  ];
  return [...new Set(phrases.flatMap((phrase) => phrase.toLowerCase().match(/[a-z]+/g) ?? []))];
};

/**
 * Offers a line with its unknown words put right, where that line would be understood; null where it would not, or where
 * it has no unknown word.
 */
export const askMeant = (flock: Flock, words: string, about: About, memory: Memory): Reply | null => {
  const { vocabulary, stems } = flock.lexicon;
  const line = mendFarSlips(words, { words: vocabulary, stems }, candidates(flock, about));
  if (line === null) return null;
  const heard: Heard = understand(line, about, flock.lexicon);
  const { readings } = heard;
  const [first] = readings;
  if (first === undefined) return null;
  const claim: Token = { t: 'claim', text: `Did you mean "${line}"?` };
  if (heard.sure)
    return reply(flock, words, [claim, { t: 'next', text: 'Say "yes", or say it in other words.' }], memory, [
      first,
    ]);
  const offers = readings.map(
    ({ topic }, at): Token => ({ t: 'choice', n: at + 1, text: offerOf(flock.book, topic) }),
  );
  return reply(flock, words, [claim, ...offers, { t: 'next', text: 'Say the number.' }], memory, readings);
};
