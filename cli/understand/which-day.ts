/** The answer to whether a record is of the weekday gone by or of the one to come. */
import { addDays } from '../../engine/day.ts';
import type { Line } from './find/all.ts';
import { spansOf } from './spans.ts';
import { isAhead } from './tell.ts';
import type { About, Draft } from './types.ts';

const coming = new Set('coming forecast next ahead future will yet this'.split(' '));
const goneBy = new Set('gone last past was were ago been before back already happened over'.split(' '));

/** The draft on the day that is meant, as a forecast where that is to come; null where the words settle neither. */
export const onWhichDay = (draft: Draft, line: Line, { today }: About): Draft | null => {
  const missing = draft.missing.filter((field) => field !== 'on');
  const [named] = spansOf(line.spans, 'day');
  const says = (words: ReadonlySet<string>): boolean => line.tokens.some(({ word }) => words.has(word));
  const isGone = says(goneBy);
  const isComing = !isGone && (isAhead(line) || says(coming) || line.tokens.at(-1)?.word === 'come');
  const exact = named !== undefined && named.past === named.future ? named.past : null;
  const on = exact ?? (isGone ? draft.on : isComing ? addDays(draft.on, 7) : null);
  if (on === null) return null;
  return { ...draft, on, fields: on > today ? { ...draft.fields, forecast: true } : draft.fields, missing };
};
