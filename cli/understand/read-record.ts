/** A match made into the reading of a record: its drafts, and what was said beside them. */
import { type Line, wordsUnder } from './find/all.ts';
import { findClauses } from './find/clauses.ts';
import { findLeftOut } from './left-out.ts';
import type { Match } from './match.ts';
import { mentionsIn } from './mentions.ts';
import { base, groupsIn } from './read.ts';
import { readSlots } from './slots.ts';
import type { ReadClause } from './split.ts';
import { type ToldDraft, tell } from './tell.ts';
import type { About, Draft, Reading } from './types.ts';

/** How a stretch of the line would be heard by itself. */
export interface Hearing {
  readonly read: ReadClause;
  /** The drafts of words that tell several things; null when they tell one. */
  readonly split: (words: string) => readonly ToldDraft[] | null;
}

/** What a line supposes that does nothing else: `what if we put the whites out today` tells nothing. */
const supposedOnly = (words: string, { tokens }: Line): Reading['supposing'] => {
  const [first] = findClauses(tokens);
  const leading = first === undefined ? [] : tokens.slice(0, first.from);
  const isLed = leading.every((token) => token.isMark || ['and', 'but', 'ok', 'so'].includes(token.word));
  if (first === undefined || !isLed) return [];
  const said = wordsUnder(words, tokens, first.begin, tokens.length);
  return [{ what: said, value: said, unit: null, adds: false }];
};

/** All drafts of some told, with the further ones of the same words. */
const entriesOf = (drafts: readonly ToldDraft[]): readonly Draft[] =>
  drafts.flatMap((each) => [each.draft, ...each.also]);

/** A record, of one draft or of several told in one breath, with the clauses that none of them took anything of. */
export const readRecord = (
  match: Match,
  words: string,
  line: Line,
  about: About,
  several: readonly ToldDraft[] | null,
  { read, split }: Hearing,
): Reading => {
  const kind = match.topic.id.slice('tell:'.length);
  const draftsOf = (text: string, own: Line, parts: readonly ToldDraft[] | null): readonly ToldDraft[] => {
    const one = parts === null ? tell(kind, text, own, about, null) : null;
    return parts ?? (one === null ? [] : [one]);
  };
  const drafts = draftsOf(words, line, several);
  const entries = entriesOf(drafts);
  const leftOut = findLeftOut(words, line, entries, about, read, (text) =>
    entriesOf(draftsOf(text, read(text).line, split(text))),
  );
  return {
    ...base(match),
    groups: groupsIn(line),
    on: drafts[0]?.draft.on ?? null,
    until: null,
    days: null,
    slots: readSlots(words, line, 'tell'),
    mentions: mentionsIn(line),
    supposing: supposedOnly(words, line),
    entries,
    assumed: [...new Set(drafts.flatMap((each) => each.assumed))],
    ...(leftOut.length > 0 ? { leftOut } : {}),
  };
};
