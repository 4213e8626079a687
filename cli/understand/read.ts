/** A match made into the reading of a question: groups, days, slots and suppositions. */
import { addDays } from '../../engine/day.ts';
import { type Line, wordsUnder } from './find/all.ts';
import { type FoundSupposing, findSupposing } from './find/supposing.ts';
import type { Lexicon } from './lexicon.ts';
import type { Match } from './match.ts';
import { mentionsIn } from './mentions.ts';
import { placingFor } from './placing.ts';
import { type Settled, settleDays } from './refine/settle-day.ts';
import { sayPast, settlePast } from './refine/settle-past.ts';
import { readSlots } from './slots.ts';
import { slotsOfWhyNot, slotsTaken } from './slots-taken.ts';
import { type GroupSpan, spansOf } from './spans.ts';
import { supposedAlone } from './supposed-alone.ts';
import type { About, Reading } from './types.ts';

const mostEvidence = 6;

/** The groups a line names, each once. */
export const groupsIn = (line: Line): readonly string[] => [
  ...new Set(spansOf(line.spans, 'group').flatMap((span) => span.names)),
];

/** What a reading has of the match that it is made of. */
export const base = (match: Match): Pick<Reading, 'topic' | 'evidence' | 'score'> => ({
  topic: match.topic.id,
  evidence: match.evidence.slice(0, mostEvidence),
  score: match.score,
});

/**
 * The days that a question is about. They lean to the future, but for one that looks back over a run of days; and where
 * something was seen, a day gone by only tells when.
 */
const daysAsked = (
  topic: string,
  words: string,
  line: Line,
  about: About,
): Settled & { readonly said: string | null } => {
  const question = about.book.questions[topic];
  const past = question?.looksBack === true ? settlePast(words, line, about.today) : null;
  if (past !== null)
    return {
      on: past.from,
      until: past.to,
      since: null,
      days: null,
      assumed: sayPast(past),
      said: past.said,
    };
  const days = settleDays(words, line, 'future');
  const isOfSeeing = question?.takes.signs !== undefined && (days.on ?? about.today) < about.today;
  return isOfSeeing
    ? { ...days, on: null, until: null, days: null, assumed: [], said: null }
    : { ...days, said: null };
};

type Clause = FoundSupposing;

/** Words that a what-if begins with, one that is no mere condition of a question. */
const whatIf = new Set(
  'what suppose supposing imagine assume assuming pretend let lets hypothetically without ignoring ignore'.split(
    ' ',
  ),
);

const isWhatIf = ({ tokens }: Line): boolean => {
  const first = tokens.find((token) => !token.isMark && !['and', 'but', 'ok', 'so'].includes(token.word));
  return first !== undefined && whatIf.has(first.word);
};

/** Whether a clause only says when, to a question that takes that: "when do I stop feeding if we start at 8 on Saturday". */
const saysWhen = (clause: Clause, line: Line, takes: Readonly<Record<string, string>>): boolean =>
  // a day supposed for a fact is only when, to a question that asks of a day
  (clause.fact === undefined || typeof clause.value === 'string') &&
  clause.figure === undefined &&
  line.spans.some(
    (span) =>
      clause.begin <= span.from &&
      span.to <= clause.end &&
      ((span.kind === 'day' && (takes.on ?? takes['day-wanted']) !== undefined) ||
        (span.kind === 'time' && takes.at !== undefined) ||
        (span.kind === 'age' && takes.age !== undefined)),
  );

/** A day in such a clause is the day meant, whatever other day is named. */
const withDaysOf = (line: Line, clauses: readonly Clause[]): Line => {
  const inside = line.spans.filter(
    (span) => span.kind === 'day' && clauses.some(({ begin, end }) => begin <= span.from && span.to <= end),
  );
  return inside.length === 0
    ? line
    : { ...line, spans: line.spans.filter((span) => span.kind !== 'day' || inside.includes(span)) };
};

/**
 * A question; an age stands for the day on which one group reaches it, unless the question supposes it.
 * @param follows whether it goes on with the last one
 */
export const readQuestion = (
  match: Match,
  words: string,
  line: Line,
  about: About,
  lexicon: Lexicon,
  follows = false,
): Reading => {
  const takes = about.book.questions[match.topic.id]?.takes ?? {};
  const placing = placingFor(lexicon, line, match.topic.id, about);
  const clauses = findSupposing(words, line, placing);
  const timing = clauses.filter((each) => saysWhen(each, line, takes));
  const told = clauses.filter((each) => !timing.includes(each));
  const slotsFor = (of: Line): Reading['slots'] => ({
    ...readSlots(words, of, match.topic.family),
    ...slotsTaken(words, of, Object.keys(takes)),
  });
  // Days and times say when; only another value can be a change that no word announces, or that stands outside the clause that does.
  const isPlain = told.some(({ fact, rule, figure }) => (fact ?? rule ?? figure) !== undefined);
  const alone =
    isPlain || timing.length > 0 || match.topic.family !== 'ask'
      ? []
      : supposedAlone(line, takes, placing, follows || told.length > 0, slotsFor(line));
  const supposing = alone.length > 0 ? alone : told;
  const asked = {
    ...line,
    spans: line.spans.filter(
      (span) => !supposing.some((each) => each.begin <= span.from && span.to <= each.end),
    ),
  };
  const days = daysAsked(match.topic.id, words, withDaysOf(line, timing), about);
  const groups = groupsIn(line);
  const [age] = spansOf(line.spans, 'age');
  const one = groups.length === 1 ? about.groups.find((group) => group.name === groups[0]) : undefined;
  const supposesAge = takes.age !== undefined;
  const reached =
    age === undefined || one === undefined || supposesAge ? null : addDays(one.hatched, Math.round(age.days));
  const since = days.since === null ? {} : { since: days.since };
  const run = days.said === null ? {} : { horizon: days.said };
  // Birds that are planned need not be on the place.
  const isPlanned = (span: GroupSpan): boolean => takes.kinds !== undefined && span.bird !== null;
  const unknown = spansOf(line.spans, 'group').filter((span) => span.names.length === 0 && !isPlanned(span));
  return {
    ...base(match),
    groups,
    on: days.on ?? reached,
    until: days.until,
    days: days.days,
    slots: {
      ...slotsFor(asked),
      ...(match.topic.family === 'about' ? slotsOfWhyNot(words, line) : {}),
      ...since,
      ...run,
    },
    mentions: mentionsIn(asked),
    supposing: supposing.map(({ begin: _begin, end: _end, ...each }) => each),
    ...(supposing.length > 0 && isWhatIf(line) ? { stays: true } : {}),
    entries: [],
    assumed: [
      ...days.assumed,
      ...unknown.map((span) => `no ${wordsUnder(words, line.tokens, span.from, span.to)} are on record`),
    ],
  };
};

const withoutDays = (slots: Reading['slots'], isDated: boolean): Reading['slots'] =>
  isDated
    ? Object.fromEntries(Object.entries(slots).filter(([name]) => !['on', 'horizon', 'since'].includes(name)))
    : slots;

/** A follow-up: what this line says, over what the last one said. */
export const readFollowUp = (
  match: Match,
  words: string,
  line: Line,
  about: About,
  last: Reading,
  lexicon: Lexicon,
): Reading => {
  const own = readQuestion(match, words, line, about, lexicon, true);
  const takes = about.book.questions[match.topic.id]?.takes ?? {};
  // What this line says of a fact stands over what was supposed of it before.
  const taken = new Set(
    Object.keys(takes).flatMap((name) => (own.slots[name] === undefined ? [] : [takes[name]])),
  );
  const isDated = own.on !== null || own.until !== null || own.days !== null;
  return {
    ...own,
    ...(own.supposing.length > 0 ? { stays: true } : {}),
    groups: own.groups.length > 0 ? own.groups : last.groups,
    on: isDated ? own.on : last.on,
    until: isDated ? own.until : last.until,
    days: isDated ? own.days : last.days,
    slots: { ...withoutDays(last.slots, isDated), ...own.slots },
    mentions: {
      causes: [...new Set([...last.mentions.causes, ...own.mentions.causes])],
      signs: [...new Set([...last.mentions.signs, ...own.mentions.signs])],
      ideas: [...new Set([...last.mentions.ideas, ...own.mentions.ideas])],
    },
    supposing: [
      ...last.supposing.filter(
        (old) => !own.supposing.some((each) => each.what === old.what) && !taken.has(old.fact ?? ''),
      ),
      ...own.supposing,
    ],
  };
};
