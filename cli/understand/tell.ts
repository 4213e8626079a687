/** A clause as a record of one kind: its day, its fields, and what is missing. */
import { addDays, type Day } from '../../engine/day.ts';
import { builders } from './draft/index.ts';
import type { Told } from './draft/told.ts';
import type { Line } from './find/all.ts';
import { type Settled, settleDays } from './refine/settle-day.ts';
import { spansOf } from './spans.ts';
import type { About, Draft } from './types.ts';

/** A draft with what was taken for granted in making it. */
export interface ToldDraft {
  readonly draft: Draft;
  /** Further whole records that the same words tell. */
  readonly also: readonly Draft[];
  readonly assumed: readonly string[];
}

const aheadWords = new Set([
  'forecast',
  'supposed',
  'going',
  'expect',
  'expected',
  'expecting',
  'will',
  'predicts',
  'predicted',
  'tomorrow',
  'next',
  'calling',
  'plan',
  'coming',
]);

/** Words that speak of what is to come only in front of a day: `split with next door` does not. */
const aheadOfDay = new Set(['next', 'coming']);

/** Whether a line speaks of what is to come. */
export const isAhead = ({ tokens, spans }: Line): boolean => {
  const isDay = (at: number): boolean => spansOf(spans, 'day').some(({ from, to }) => from <= at && at < to);
  return tokens.some(
    ({ word }, at) => aheadWords.has(word) && (!aheadOfDay.has(word) || isDay(at) || isDay(at + 1)),
  );
};

/** Records look back, except those that speak of what is to come. */
const leanOf = (line: Line): 'past' | 'future' => (isAhead(line) ? 'future' : 'past');

/** The day on which one group is as old as the line says, where it names no day. */
const dayOfAge = (line: Line, about: About): Day | null => {
  const [age] = spansOf(line.spans, 'age');
  const [group] = spansOf(line.spans, 'group');
  const [name, second] = group?.names ?? [];
  const hatched = second === undefined ? about.groups.find((each) => each.name === name)?.hatched : undefined;
  const day = age === undefined || hatched === undefined ? null : addDays(hatched, Math.round(age.days));
  return day === null || day > about.today ? null : day;
};

/** The line without the day of a hatch, which is not the day on which the chicks came. */
const withoutHatch = (line: Line): Line => {
  const at = line.tokens.findIndex((token) => token.word === 'hatched' || token.word === 'hatch');
  const hatch =
    at < 0 ? undefined : spansOf(line.spans, 'day').find((span) => span.from > at && span.from - at <= 3);
  return hatch === undefined ? line : { ...line, spans: line.spans.filter((span) => span !== hatch) };
};

const namesDay = (words: string, whole: Line, about: About): Settled => {
  const line = withoutHatch(whole);
  const settled = settleDays(words, line, leanOf(line));
  return settled.on === null && settled.since === null ? { ...settled, on: dayOfAge(line, about) } : settled;
};

/** Makes the draft of a kind from a clause; null for a kind that cannot be told. `on` is the day to take where none is named. */
export const tell = (
  kind: string,
  words: string,
  line: Line,
  about: About,
  before: { groups: readonly string[]; on: Day } | null,
): ToldDraft | null => {
  const build = builders[kind];
  if (build === undefined) return null;
  const days = namesDay(words, line, about);
  const told: Told = { kind, words, line, days, about, carried: before?.groups ?? [] };
  const built = build(told);
  const draftsOn = (on: Day, assumed: readonly string[]): ToldDraft => ({
    draft: { kind, on, fields: built.fields, missing: built.missing },
    also: [
      ...(built.also ?? []).map((fields) => ({ kind, on, fields, missing: [] })),
      ...(built.daily ?? []).map((fields, n) => ({ kind, on: addDays(on, n + 1), fields, missing: [] })),
    ],
    assumed: [...assumed, ...built.assumed],
  });
  if (built.keepsDay === true) return draftsOn(about.today, []);
  const said = days.on ?? days.since ?? before?.on ?? about.today;
  // only weather can be told ahead; a day to come in another record stands in its fields
  const on = said > about.today && kind !== 'weather' ? about.today : said;
  return draftsOn(on, days.assumed);
};
