/** Everything that came between two moments and could have made a difference, in the order in which it is tried. */
import type { Day } from '../day.ts';
import { inForce } from '../rulebook/figures.ts';
import type { Cause, Entry, HeardAs, Moment, Request, Rulebook } from '../types.ts';

/** A moment, and the day from which it was looked at where that lay before it. */
export interface Seen {
  readonly moment: Moment;
  readonly asked?: Day | undefined;
}

/** Two moments, the earlier with the hash of the rules that held then. */
export interface Between {
  readonly earlier: Seen;
  readonly later: Seen;
  /** Hash of the rules of then. */
  readonly rules: string;
  readonly book: Rulebook;
  /** Entries believed now and not then, in file order. */
  readonly entries: readonly Entry[];
  /** What the same words were heard as then, and are now, where that is something else. */
  readonly heard?: { readonly words: string; readonly from: Request; readonly to: Request } | undefined;
}

const heardAs = ({ question, groups, moment }: Request): HeardAs => ({ question, groups, on: moment.on });

const lineOf = (entry: Entry): number | null =>
  typeof entry.fields.line === 'number' ? entry.fields.line : null;

const howOf = (entry: Entry): Extract<Cause, { kind: 'entry' }>['how'] => {
  if (entry.kind === 'undo') return 'undone';
  if (entry.kind === 'correct') return 'corrected';
  if (entry.kind === 'figure') return 'own-figure';
  const isAhead = entry.written !== null && entry.written.slice(0, 10) < entry.on;
  return entry.kind === 'weather' && (isAhead || entry.fields.forecast === true) ? 'forecast' : 'told';
};

const causeOf = (entry: Entry): Cause => ({
  kind: 'entry',
  line: entry.line,
  entry: entry.kind,
  on: entry.on,
  how: howOf(entry),
  of: lineOf(entry),
});

/** Figures of which another dated value is in force on the later day. */
const figuresBetween = ({ figures }: Rulebook, from: Day, to: Day): Cause[] =>
  Object.values(figures).flatMap((figure): Cause[] => {
    const [old, now] = [inForce(figure, from), inForce(figure, to)];
    return old === now ? [] : [{ kind: 'figure', figure: figure.id, from: now.from }];
  });

/** The days that went by: between the days asked about, or, where that is one and the same, between the days it was seen from. */
const daysGone = (earlier: Seen, later: Seen): Cause[] => {
  const isSameDay = earlier.moment.on === later.moment.on;
  const [from, to] = [earlier, later].map(({ moment, asked }) =>
    isSameDay ? (asked ?? moment.on) : moment.on,
  );
  return from === undefined || to === undefined || from === to ? [] : [{ kind: 'days', from, to }];
};

/**
 * The possible causes: entries first, the latest of them before all others since it is what tipped the scales, corrections
 * and what was taken back among them; then figures, rules, that days went by, and that the words are heard otherwise.
 */
export const candidatesBetween = ({
  earlier,
  later,
  rules,
  book,
  entries,
  heard,
}: Between): readonly Cause[] => [
  ...entries.map(causeOf).reverse(),
  ...figuresBetween(book, earlier.moment.on, later.moment.on),
  ...(rules === book.hash ? [] : [{ kind: 'rules', from: rules, to: book.hash } as const]),
  ...daysGone(earlier, later),
  ...(heard === undefined
    ? []
    : [{ kind: 'heard', words: heard.words, from: heardAs(heard.from), to: heardAs(heard.to) } as const]),
];
