/** Which suppositions a line lays over the flock: `what if it's 38 tonight`, `10 more birds`, `without the feather rule`. */
import type { FactWords } from '../../../engine/types.ts';
import { spansOf } from '../spans.ts';
import type { Token } from '../tokens.ts';
import type { Supposing } from '../types.ts';
import { type Line, wordsUnder } from './all.ts';
import { cutAtAnd, findClauses, type SupposingClause } from './clauses.ts';
import { findRuleOff } from './rule-off.ts';
import { type Sorted, sortsIn } from './sorts.ts';
import { type Supposable, supposableFor } from './supposable.ts';

/** Something supposed, with the stretch of tokens it stands in. */
export type FoundSupposing = Supposing & { readonly from: number; readonly to: number };

const more = new Set(
  'more extra additional warmer hotter higher another later longer further milder older dearer bigger heavier second'.split(
    ' ',
  ),
);
const less = new Set(
  'fewer less colder cooler lower earlier sooner off younger cheaper lighter smaller down worse'.split(' '),
);

const falling = new Set('fall falls fell drop drops dropped dips dipped took takes'.split(' '));
/** How far in front of a step a word may stand that turns it down: `fell a further three`. */
const reach = 4;

/** Whether a value is a step from what there is, and which way. */
const stepOf = (
  tokens: readonly Token[],
  span: Sorted,
): { readonly sign: number; readonly adds: boolean } => {
  const near = [
    ...tokens.slice(span.from, span.to + 2),
    ...tokens.slice(Math.max(0, span.from - 1), span.from),
  ].map(({ word }) => word);
  if (near.some((word) => less.has(word))) return { sign: -1, adds: true };
  const adds = near.some((word) => more.has(word));
  const isDown =
    adds && tokens.slice(Math.max(0, span.from - reach), span.from).some(({ word }) => falling.has(word));
  return { sign: isDown ? -1 : 1, adds };
};

const isShare = ({ sort }: Sorted): boolean => sort === 'share' || sort === 'ratio';

/** A value as it is meant for a fact. */
const supposingOf = ({ fact, by, value }: Supposable, tokens: readonly Token[]): Supposing => {
  const isOfBirds = by.words.length === 0 || by.words.includes('birds');
  const vague = by.vague && isOfBirds ? { vague: true } : {};
  const said = { what: by.as, fact, value: value.value, unit: value.unit, ...vague };
  if (value.sort === 'times') return { ...said, adds: false, times: true };
  if (by.takesAway && isShare(value)) return { ...said, adds: false, share: 'goes' };
  if (by.takesAway) return { ...said, adds: true, share: 'goes' };
  if (by.shareOf !== null && isShare(value)) return { ...said, adds: false, share: 'is', of: by.shareOf };
  const { sign, adds } = stepOf(tokens, value);
  // "feed 10 % dearer" multiplies the price
  if (value.sort === 'ratio' && adds && by.takes.includes('times'))
    return { ...said, value: 1 + (sign * value.value) / 100, unit: null, adds: false, times: true };
  return { ...said, value: value.value * sign, adds };
};

/** The sides of a size are supposed along with its area; any other value means one thing. */
const isSide = ({ sort }: Sorted): boolean => sort === 'long-side' || sort === 'short-side';

/** A day supposed for a fact that is one: `if slaughter goes to 6 june`. */
const dayValues = (
  { tokens, spans }: Line,
  { begin, to }: Pick<SupposingClause, 'begin' | 'to'>,
  facts: Readonly<Record<string, FactWords>>,
): readonly Supposing[] => {
  const [day] = spansOf(spans, 'day').filter((span) => begin <= span.from && span.to <= to);
  if (day === undefined) return [];
  const value = { sort: 'day', value: 0, unit: null, from: day.from, to: day.to };
  const said = new Set(tokens.slice(begin, to).map(({ word }) => word));
  return supposableFor(facts, [value], said)
    .slice(0, 1)
    .map(({ fact, by }) => ({ what: by.as, fact, value: day.future, unit: null, adds: false }));
};

/** What the values in a stretch are supposed for; nothing where it has none, or none that any fact takes. */
export const readValues = (
  line: Line,
  { begin, to }: Pick<SupposingClause, 'begin' | 'to'>,
  facts: Readonly<Record<string, FactWords>>,
): readonly Supposing[] => {
  const said = new Set(line.tokens.slice(begin, to).map((token) => token.word));
  const fitting = supposableFor(facts, sortsIn(line, begin, to), said);
  if (fitting.length === 0) return dayValues(line, { begin, to }, facts);
  const meant = fitting.filter((each, at) => fitting.findIndex((other) => other.fact === each.fact) === at);
  const [first, ...others] = meant.filter(({ value }) => !isSide(value));
  if (first === undefined) return [];
  const groups = spansOf(line.spans, 'group').filter((span) => begin <= span.from && span.to <= to);
  const [group, ...further] = groups.flatMap((span) => span.names);
  const ofGroup = group === undefined || further.length > 0 ? {} : { group };
  const orElse = others.map((each) => ({ ...supposingOf(each, line.tokens), ...ofGroup }));
  return [
    { ...supposingOf(first, line.tokens), ...ofGroup, ...(orElse.length === 0 ? {} : { orElse }) },
    ...meant
      .filter(({ value }) => isSide(value) && first.value.sort === 'size')
      .filter(({ by }) => by.words.some((word) => first.by.words.includes(word)))
      .map((each) => supposingOf(each, line.tokens)),
  ];
};

/** A clause in its parts where every one of them supposes something, else as a whole. */
const readClause = (
  words: string,
  line: Line,
  clause: SupposingClause,
  facts: Readonly<Record<string, FactWords>>,
): readonly FoundSupposing[] => {
  const { from, begin, to } = clause;
  const parts = cutAtAnd(line.tokens, clause).map((part) => ({ part, read: readValues(line, part, facts) }));
  if (parts.length > 1 && parts.every(({ read }) => read.length > 0)) {
    return parts.flatMap(({ part, read }) => read.map((each) => ({ ...each, from: part.from, to: part.to })));
  }
  const whole = readValues(line, clause, facts);
  if (whole.length > 0) return whole.map((each) => ({ ...each, from, to }));
  const [bags] = spansOf(line.spans, 'quantity').filter(
    (span) => span.dimension === 'bags' && begin <= span.from && span.to <= to,
  );
  // Bags that nothing else is said of are bags bought.
  if (bags !== undefined) {
    const told = `bought ${bags.value} bags of feed`;
    return [{ what: told, value: told, unit: null, adds: false, from, to }];
  }
  const said = wordsUnder(words, line.tokens, begin, to).trim();
  return said === '' ? [] : [{ what: said, value: said, unit: null, adds: false, from, to }];
};

/**
 * What is supposed in a line; words only where it is not plain what is meant.
 * @param facts the words of the facts; with none, only the stretches are found
 */
export const findSupposing = (
  words: string,
  line: Line,
  facts: Readonly<Record<string, FactWords>> = {},
): readonly FoundSupposing[] => {
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
            from: clauses.find(({ from, to }) => from <= off.from && off.from < to)?.from ?? off.from,
            to: off.to,
          },
        ];
  const others = clauses.filter(({ from, to }) => off === null || off.from < from || to <= off.from);
  return [...rules, ...others.flatMap((clause) => readClause(words, line, clause, facts))].sort(
    (one, other) => one.from - other.from,
  );
};
