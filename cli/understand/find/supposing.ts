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

const more = new Set('more extra additional warmer hotter higher another later longer'.split(' '));
const less = new Set('fewer less colder cooler lower earlier sooner'.split(' '));

/** Whether a value is a step from what there is, and which way. */
const stepOf = (
  tokens: readonly Token[],
  span: Sorted,
): { readonly sign: number; readonly adds: boolean } => {
  const near = [tokens[span.to]?.word, tokens[span.to + 1]?.word, tokens[span.from - 1]?.word];
  if (near.some((word) => word !== undefined && less.has(word))) return { sign: -1, adds: true };
  return { sign: 1, adds: near.some((word) => word !== undefined && more.has(word)) };
};

const isShare = ({ sort }: Sorted): boolean => sort === 'share' || sort === 'ratio';

/** A value as it is meant for a fact. */
const supposingOf = ({ fact, by, value }: Supposable, tokens: readonly Token[]): Supposing => {
  const said = { what: by.as, fact, value: value.value, unit: value.unit };
  if (value.sort === 'times') return { ...said, adds: false, times: true };
  if (by.takesAway && isShare(value)) return { ...said, adds: false, share: 'goes' };
  if (by.takesAway) return { ...said, adds: true, share: 'goes' };
  if (by.shareOf !== null && isShare(value)) return { ...said, adds: false, share: 'is', of: by.shareOf };
  const { sign, adds } = stepOf(tokens, value);
  return { ...said, value: value.value * sign, adds };
};

/** The sides of a size are supposed along with its area; any other value means one thing. */
const isSide = ({ sort }: Sorted): boolean => sort === 'long-side' || sort === 'short-side';

const readValues = (
  line: Line,
  { begin, to }: SupposingClause,
  facts: Readonly<Record<string, FactWords>>,
): readonly Supposing[] => {
  const said = new Set(line.tokens.slice(begin, to).map((token) => token.word));
  const fitting = supposableFor(facts, sortsIn(line, begin, to), said);
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
