/** Everything that can be found in the tokens of one line, before it is known what the line is about. */
import type { Day } from '../../../engine/day.ts';
import type { Unit } from '../../../engine/types.ts';
import { findTerms, type PhraseIndex } from '../phrase-index.ts';
import { dropOverlaps } from '../refine/drop-overlaps.ts';
import type { Span } from '../spans.ts';
import type { Token } from '../tokens.ts';
import type { KnownGroup } from '../types.ts';
import { findAges } from './age.ts';
import { findDays } from './day.ts';
import { findGroups, type Naming } from './group.ts';
import { findMoney } from './money.ts';
import { findNumbers } from './number.ts';
import { findQuantities } from './quantity.ts';
import { findSizes } from './size.ts';
import { findStretches } from './stretch.ts';
import { findTimes } from './time.ts';

/** What finding needs to know of the place and of the rulebook. */
export interface Grounds {
  readonly today: Day;
  readonly system: 'us' | 'metric';
  readonly groups: readonly KnownGroup[];
  readonly namings: readonly Naming[];
  readonly units: ReadonlyMap<string, Unit>;
  readonly index: PhraseIndex;
}

/** A line in tokens with all that was found in it. */
export interface Line {
  readonly tokens: readonly Token[];
  readonly spans: readonly Span[];
}

/** Runs every finder, then keeps what stands. */
export const findAll = (tokens: readonly Token[], grounds: Grounds): Line => {
  const numbers = findNumbers(tokens);
  const quantities = findQuantities(tokens, numbers, grounds.units, grounds.system);
  const groups = findGroups(tokens, grounds.groups, grounds.namings);
  const isName = (at: number): boolean => groups.some((span) => span.from <= at && at < span.to);
  const found: readonly Span[] = [
    ...numbers,
    ...quantities,
    ...groups,
    ...findSizes(tokens, numbers, quantities),
    ...findMoney(tokens, numbers, quantities),
    ...findDays(tokens, grounds.today, grounds.system === 'metric'),
    ...findStretches(tokens, grounds.today),
    ...findAges(tokens, numbers, quantities),
    ...findTimes(tokens, numbers),
    ...findTerms(grounds.index, tokens, isName),
  ];
  return { tokens, spans: dropOverlaps(found, tokens) };
};

/** The keeper's own words under a stretch of tokens. */
export const wordsUnder = (line: string, tokens: readonly Token[], from: number, to: number): string =>
  line.slice(tokens[from]?.start ?? 0, tokens[to - 1]?.end ?? 0);
