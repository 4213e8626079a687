/** Whether a line leans on the one before: `and the reds?`, `tomorrow?`, `what about next week`. */
import { ideasOf } from './features.ts';
import type { Line } from './find/all.ts';
import type { Lexicon } from './lexicon.ts';
import type { Match } from './match.ts';
import { isSmall } from './phrase-index.ts';
import type { Heard } from './types.ts';

const leads = [
  ['and'],
  ['but'],
  ['ok', 'but'],
  ['or'],
  ['what', 'about'],
  ['how', 'about'],
  ['and', 'what', 'about'],
  ['same', 'for'],
  ['even', 'if'],
  ['what', 'if'],
  ['and', 'if'],
  ['if'],
  ['ok', 'and'],
];
const tails = new Set(['too', 'also', 'though', 'then', 'instead']);
const bare = new Set(
  'only for the on in at if it is was were like a an same what about how and but or ok right so even say too also then though'.split(
    ' ',
  ),
);

const weights = { lead: 3.3, tail: 2.4, onlySlots: 3.4, unexplained: 1.6, longest: 9 };

/** The topic of the last turn as a match for this line, or null when the line stands by itself. */
export const followUp = (line: Line, before: Heard | null, lexicon: Lexicon): Match | null => {
  const last = before?.readings[0];
  const topic = lexicon.topics.find((each) => each.id === last?.topic);
  if (before === null || !before.sure || topic === undefined || topic.family !== 'ask') return null;
  const words = line.tokens.filter((token) => !token.isMark).map((token) => token.word);
  if (words.length === 0 || words.length > weights.longest) return null;
  const isLed = leads.some((lead) => lead.every((word, n) => words[n] === word));
  const isTailed = tails.has(words.at(-1) ?? '');
  const slots = line.spans.filter((span) => span.kind !== 'term');
  const isInSlot = (at: number): boolean => slots.some((span) => span.from <= at && at < span.to);
  const isOnlySlots =
    slots.length > 0 &&
    line.tokens.every(
      (token, at) => token.isMark || isInSlot(at) || bare.has(token.word) || isSmall(token.word),
    );
  if (!isLed && !isTailed && !isOnlySlots) return null;
  const strange = line.spans.filter(
    (span) =>
      span.kind === 'term' &&
      !ideasOf(span, lexicon.classOf).some((idea) => topic.ideas[idea] !== undefined) &&
      !isInSlot(span.from),
  );
  const evidence = [
    ...(isLed ? [{ idea: 'follows on', words: words.slice(0, 2).join(' '), weight: weights.lead }] : []),
    ...(isTailed ? [{ idea: 'follows on', words: words.at(-1) ?? '', weight: weights.tail }] : []),
    ...(isOnlySlots
      ? [{ idea: 'says only when, how many or which', words: words.join(' '), weight: weights.onlySlots }]
      : []),
    ...strange.map((span) => ({
      idea: 'another idea',
      words: line.tokens
        .slice(span.from, span.to)
        .map((token) => token.word)
        .join(' '),
      weight: -weights.unexplained,
    })),
  ];
  return { topic, evidence, score: evidence.reduce((sum, each) => sum + each.weight, 0) };
};
