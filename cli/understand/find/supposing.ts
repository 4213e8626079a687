/** Which suppositions a line lays over the flock: `what if it's 38 tonight`, `10 more birds`, `without the feather rule`. */
import { spansOf } from '../spans.ts';
import type { Supposing } from '../types.ts';
import { type Line, wordsUnder } from './all.ts';
import { cutAtAnd, findClauses, type SupposingClause } from './clauses.ts';
import { supposingOf } from './meant-value.ts';
import { findRuleOff } from './rule-off.ts';
import { type Sorted, sortsIn } from './sorts.ts';
import { likeliestKind, type Placing, type Supposable, supposableFor } from './supposable.ts';
import { supposedUnsaid } from './unsaid.ts';

/** Something supposed, with the stretch of tokens it stands in. */
export type FoundSupposing = Supposing & { readonly begin: number; readonly end: number };

/** A stretch of tokens. */
type Stretch = Pick<SupposingClause, 'begin' | 'to'>;

/** The kind of change that is a purchase. */
const nextPurchase = 'next-purchase';

/** The sides of a size are supposed along with its area; any other value means one thing. */
const isSide = ({ sort }: Sorted): boolean => sort === 'long-side' || sort === 'short-side';

/** Feed that is to be bought is supposed as a purchase told: `if we get six bags on friday`. */
const purchaseIn = (line: Line, { begin, to }: Stretch, placing: Placing): Supposing | null => {
  const [feed] = spansOf(line.spans, 'quantity').filter(
    ({ dimension, from, to: end }) =>
      (dimension === 'bags' || dimension === 'mass') && begin <= from && end <= to,
  );
  if (feed === undefined || likeliestKind(placing) !== nextPurchase) return null;
  const told = `bought ${feed.value} ${feed.unit} of feed`;
  return { what: told, value: told, unit: null, adds: false };
};

/** The one group that a stretch names. */
const groupIn = (line: Line, { begin, to }: Stretch): { readonly group?: string } => {
  const groups = spansOf(line.spans, 'group').filter((span) => begin <= span.from && span.to <= to);
  const [group, ...further] = groups.flatMap((span) => span.names);
  return group === undefined || further.length > 0 ? {} : { group };
};

/** What the values in a stretch are supposed for; nothing where it has none, or none that any fact takes. */
export const readValues = (line: Line, stretch: Stretch, placing: Placing): readonly FoundSupposing[] => {
  const fitting = supposableFor(placing, sortsIn(line, stretch.begin, stretch.to));
  const meant = fitting.filter((each, at) => fitting.findIndex((other) => other.fact === each.fact) === at);
  const [first, ...others] = meant.filter(({ value }) => !isSide(value));
  if (first === undefined) return [];
  const ofGroup = groupIn(line, stretch);
  const found = (each: Supposable, of: { readonly group?: string } = ofGroup): FoundSupposing => ({
    ...supposingOf(each, line.tokens, placing),
    ...of,
    begin: each.value.from,
    end: each.value.to,
  });
  const orElse = others.map((each) => ({ ...supposingOf(each, line.tokens, placing), ...ofGroup }));
  return [
    { ...found(first), ...(orElse.length === 0 ? {} : { orElse }) },
    ...meant
      .filter(({ value }) => isSide(value) && first.value.sort === 'size')
      .filter(({ by }) => by.kind === first.by.kind)
      .map((each) => found(each, {})),
  ];
};

/** What a share in the same breath is of is meant first: "the freezer is 14 cu ft and 40 % of it is vacant". */
const asWhole = (each: FoundSupposing, wholes: ReadonlySet<string>): FoundSupposing => {
  const whole = each.orElse?.find(({ fact }) => fact !== undefined && wholes.has(fact));
  return whole === undefined || each.of !== undefined ? each : { ...whole, begin: each.begin, end: each.end };
};

/** A clause in its parts where every one of them supposes something, else as a whole; its words only where nothing is plain. */
const readClause = (
  words: string,
  line: Line,
  clause: SupposingClause,
  placing: Placing,
): readonly FoundSupposing[] => {
  const { from, begin, to } = clause;
  const under = (stretch: { from: number; to: number }) => (each: FoundSupposing) => ({
    ...each,
    begin: stretch.from,
    end: stretch.to,
  });
  const parts = cutAtAnd(line.tokens, clause).map((part) => ({
    part,
    read: readValues(line, part, placing),
  }));
  if (parts.length > 1 && parts.every(({ read }) => read.length > 0)) {
    const wholes = new Set(parts.flatMap(({ read }) => read.flatMap(({ of }) => of ?? [])));
    return parts.flatMap(({ part, read }) => read.map((each) => under(part)(asWhole(each, wholes))));
  }
  const bought = purchaseIn(line, clause, placing);
  if (bought !== null) return [{ ...bought, begin: from, end: to }];
  const whole = readValues(line, clause, placing);
  if (whole.length > 0) return whole.map(under(clause));
  const unsaid = supposedUnsaid(line.tokens.slice(begin, to), placing);
  if (unsaid !== null) return [{ ...unsaid, begin: from, end: to }];
  const said = wordsUnder(words, line.tokens, begin, to).trim();
  return said === '' ? [] : [{ what: said, value: said, unit: null, adds: false, begin: from, end: to }];
};

/**
 * What is supposed in a line; words only where it is not plain what is meant.
 * @param placing what values may be meant for
 */
export const findSupposing = (words: string, line: Line, placing: Placing): readonly FoundSupposing[] => {
  const off = findRuleOff(line.tokens);
  const clauses = findClauses(line.tokens);
  const rules =
    off === null
      ? []
      : [
          {
            what: `rule on ${off.words.join(' ')}`,
            rule: off.words.join(' '),
            value: 'off',
            unit: null,
            adds: false,
            // A cue in front of it belongs to it: "what if we ignored the rest rule".
            begin: clauses.find(({ from, to }) => from <= off.from && off.from < to)?.from ?? off.from,
            end: off.to,
          },
        ];
  const others = clauses.filter(({ from, to }) => off === null || off.from < from || to <= off.from);
  return [...rules, ...others.flatMap((clause) => readClause(words, line, clause, placing))].sort(
    (one, other) => one.begin - other.begin,
  );
};
