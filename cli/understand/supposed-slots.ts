/** What a question takes anyway, read from what is supposed in it: `if five are withheld`, `at two a week?`. */
import type { Line } from './find/all.ts';
import { isPresent } from './find/sorts.ts';
import { type FoundSupposing, readValues } from './find/supposing.ts';
import type { Topic } from './lexicon.ts';
import { readSlots } from './slots.ts';
import { slotsTaken } from './slots-taken.ts';
import type { About, Reading } from './types.ts';

/** Slots that other words may fill as well: they are looked at last. */
const broad = ['count', 'amount'];

/** A clause whose value no words place, as the slot that the question takes: `if five are withheld`, of how many to keep back. */
export const takenInstead = (
  clause: FoundSupposing,
  words: string,
  line: Line,
  family: Topic['family'],
  takes: Readonly<Record<string, string>>,
): FoundSupposing => {
  if (clause.rule !== undefined || clause.figure !== undefined) return clause;
  const spans = line.spans.filter((span) => clause.from <= span.from && span.to <= clause.to);
  const inside = { ...line, spans: spans.filter((span) => !isPresent(line.tokens, span)) };
  const slots = { ...readSlots(words, inside, family), ...slotsTaken(words, inside, Object.keys(takes)) };
  const names = Object.keys(takes)
    .filter((name) => typeof slots[name] === 'number')
    .toSorted((one, other) => broad.indexOf(one) - broad.indexOf(other));
  const [name] = names;
  const fact = name === undefined ? undefined : takes[name];
  const value = name === undefined ? undefined : slots[name];
  if (name === undefined || fact === undefined || typeof value !== 'number') return clause;
  const unit = slots[`${name}-unit`] ?? slots.unit;
  const meant = {
    what: name.replaceAll('-', ' '),
    fact,
    value,
    unit: typeof unit === 'string' ? unit : null,
    adds: false,
  };
  const isStep = clause.adds || clause.share !== undefined || clause.times === true;
  const isPlaced =
    clause.fact !== undefined && isStep && !(clause.vague === true && fact !== clause.fact && !clause.adds);
  if (isPlaced) return { ...clause, orElse: [...(clause.orElse ?? []), meant] };
  if (clause.fact === undefined) return { ...clause, ...meant };
  if (clause.vague === true) return { ...clause, ...meant, orElse: [clause, ...(clause.orElse ?? [])] };
  return { ...clause, orElse: [...(clause.orElse ?? []), meant] };
};

/** What a line that goes on with the last question changes by a bare value: `at two a week?`, `with 2 lamps then`. */
export const supposedAlone = ({ topic, slots }: Reading, line: Line, about: About): Reading['supposing'] => {
  const takes = about.book.questions[topic]?.takes ?? {};
  const isTaken = Object.keys(takes).some((name) => typeof slots[name] === 'number');
  // What the question takes anyway stands.
  return isTaken ? [] : readValues(line, { begin: 0, to: line.tokens.length }, about.book.facts);
};
