/** A match made into a reading: groups, days, slots, suppositions, and drafts for what is told. */
import { addDays } from '../../engine/day.ts';
import { type Line, wordsUnder } from './find/all.ts';
import { findSupposing } from './find/supposing.ts';
import type { Match } from './match.ts';
import { settleDays } from './refine/settle-day.ts';
import { readSlots } from './slots.ts';
import { spansOf } from './spans.ts';
import { type ToldDraft, tell } from './tell.ts';
import type { About, Reading } from './types.ts';

const mostEvidence = 6;

const groupsIn = (line: Line): readonly string[] => [
  ...new Set(spansOf(line.spans, 'group').flatMap((span) => span.names)),
];

const base = (match: Match): Pick<Reading, 'topic' | 'evidence' | 'score'> => ({
  topic: match.topic.id,
  evidence: match.evidence.slice(0, mostEvidence),
  score: match.score,
});

/** A question: days lean to the future; an age stands for the day on which one group reaches it. */
export const readQuestion = (match: Match, words: string, line: Line, about: About): Reading => {
  const supposing = findSupposing(words, line);
  const asked = {
    ...line,
    spans: line.spans.filter(
      (span) => !supposing.some((each) => each.from <= span.from && span.to <= each.to),
    ),
  };
  const days = settleDays(words, line, 'future');
  const groups = groupsIn(line);
  const [age] = spansOf(line.spans, 'age');
  const one = groups.length === 1 ? about.groups.find((group) => group.name === groups[0]) : undefined;
  const reached = age === undefined || one === undefined ? null : addDays(one.hatched, Math.round(age.days));
  const since = days.since === null ? {} : { since: days.since };
  const unknown = spansOf(line.spans, 'group').filter((span) => span.names.length === 0);
  return {
    ...base(match),
    groups,
    on: days.on ?? reached,
    until: days.until,
    days: days.days,
    slots: { ...readSlots(words, asked, match.topic.family), ...since },
    supposing: supposing.map(({ from: _from, to: _to, ...each }) => each),
    entries: [],
    assumed: [
      ...days.assumed,
      ...unknown.map((span) => `no ${wordsUnder(words, line.tokens, span.from, span.to)} are on record`),
    ],
  };
};

/** A record, of one draft or of several told in one breath. */
export const readRecord = (
  match: Match,
  words: string,
  line: Line,
  about: About,
  several: readonly ToldDraft[] | null,
): Reading => {
  const one = several === null ? tell(match.topic.id.slice('tell:'.length), words, line, about, null) : null;
  const drafts = several ?? (one === null ? [] : [one]);
  return {
    ...base(match),
    groups: groupsIn(line),
    on: drafts[0]?.draft.on ?? null,
    until: null,
    days: null,
    slots: readSlots(words, line, 'tell'),
    supposing: [],
    entries: drafts.map((each) => each.draft),
    assumed: [...new Set(drafts.flatMap((each) => each.assumed))],
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
): Reading => {
  const own = readQuestion(match, words, line, about);
  const isDated = own.on !== null || own.until !== null || own.days !== null;
  return {
    ...own,
    groups: own.groups.length > 0 ? own.groups : last.groups,
    on: isDated ? own.on : last.on,
    until: isDated ? own.until : last.until,
    days: isDated ? own.days : last.days,
    slots: { ...withoutDays(last.slots, isDated), ...own.slots },
    supposing: [
      ...last.supposing.filter((old) => !own.supposing.some((each) => each.what === old.what)),
      ...own.supposing,
    ],
  };
};
