/** Whether a line leans on the one before: `and the reds?`, `tomorrow?`, `what about next week`. */
import type { Line } from './find/all.ts';
import { findClauses } from './find/clauses.ts';
import { findRuleOff } from './find/rule-off.ts';
import { sortsIn } from './find/sorts.ts';
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
/** Words that may stand before a supposition without asking anything. */
const leadIns = new Set('and but ok okay so well now then or what if we you i just'.split(' '));
const tails = new Set(['too', 'also', 'though', 'then', 'instead']);
const bare = new Set(
  'only for the on in at if it is was were like a an same what about how and but or ok right so even say too also then though'.split(
    ' ',
  ),
);

const weights = { lead: 3.3, tail: 2.4, onlySlots: 3.4, onlySupposes: 11, ruleOff: 20, longest: 9 };

/** Whether all that a line does is suppose values or switch a rule off; a sign of sickness is asked about, not supposed. */
const isOnlySupposing = (line: Line): boolean => {
  const off = findRuleOff(line.tokens);
  const clauses = off === null ? findClauses(line.tokens) : [off];
  const isInside = (at: number): boolean => clauses.some(({ from, to }) => from <= at && at < to);
  const [first] = clauses;
  if (first === undefined) return false;
  const isCovered = line.tokens.every(
    (token, at) =>
      token.isMark || isInside(at) || at < first.from || bare.has(token.word) || isSmall(token.word),
  );
  const isSick = line.spans.some((span) => span.kind === 'term' && span.list === 'sign');
  const hasValue = off !== null || clauses.some(({ begin, to }) => sortsIn(line, begin, to).length > 0);
  const leading = line.tokens.slice(0, first.from);
  return (
    isCovered && hasValue && !isSick && leading.every((token) => token.isMark || leadIns.has(token.word))
  );
};

/** The topic of the last turn as a match for this line, or null when the line stands by itself. */
export const followUp = (line: Line, before: Heard | null, lexicon: Lexicon): Match | null => {
  const last = before?.readings[0];
  const topic = lexicon.topics.find((each) => each.id === last?.topic);
  if (before === null || !before.sure || topic === undefined || topic.family !== 'ask') return null;
  const words = line.tokens.filter((token) => !token.isMark).map((token) => token.word);
  const onlySupposes = isOnlySupposing(line);
  if (words.length === 0 || (words.length > weights.longest && !onlySupposes)) return null;
  const isLed = leads.some((lead) => lead.every((word, n) => words[n] === word));
  const isTailed = tails.has(words.at(-1) ?? '');
  const slots = line.spans.filter((span) => span.kind !== 'term');
  const isInSlot = (at: number): boolean => slots.some((span) => span.from <= at && at < span.to);
  const isOnlySlots =
    slots.length > 0 &&
    line.tokens.every(
      (token, at) => token.isMark || isInSlot(at) || bare.has(token.word) || isSmall(token.word),
    );
  if (onlySupposes) {
    const said = words.slice(0, weights.longest).join(' ');
    // A rule spoken of as switched off can be no question of its own.
    const weight = findRuleOff(line.tokens) === null ? weights.onlySupposes : weights.ruleOff;
    const idea = { idea: 'only supposes', words: said, weight };
    return { topic, evidence: [idea], score: idea.weight };
  }
  if (!isLed && !isTailed && !isOnlySlots) return null;
  const evidence = [
    ...(isLed ? [{ idea: 'follows on', words: words.slice(0, 2).join(' '), weight: weights.lead }] : []),
    ...(isTailed ? [{ idea: 'follows on', words: words.at(-1) ?? '', weight: weights.tail }] : []),
    ...(isOnlySlots
      ? [{ idea: 'says only when, how many or which', words: words.join(' '), weight: weights.onlySlots }]
      : []),
  ];
  return { topic, evidence, score: evidence.reduce((sum, each) => sum + each.weight, 0) };
};
