/** What a reader of days hands back, and the few words that all readers look at. */
import type { Day } from '../../../engine/day.ts';
import type { Token } from '../tokens.ts';

/** A day as it leans to the past and to the future, and the token after it. `plain` where it took no reckoning. */
export interface Hit {
  readonly past: Day;
  readonly future: Day;
  readonly to: number;
  readonly plain: boolean;
}

/** Reads the day that begins at a token, or null. `dayFirst` says how `5/6` is read. */
export type Reader = (tokens: readonly Token[], at: number, today: Day, dayFirst: boolean) => Hit | null;

/** The word at a place, empty beyond the ends. */
export const wordAt = (tokens: readonly Token[], at: number): string => tokens[at]?.word ?? '';

/** A day that leans neither way. */
export const fixed = (day: Day, to: number, plain = true): Hit => ({ past: day, future: day, to, plain });

export const partsOfDay: ReadonlySet<string> = new Set(
  'morning mornin mornings afternoon evening night nite noon lunchtime am pm dawn dusk eve arvo teatime'.split(
    ' ',
  ),
);

/** Words that call for a date behind them. */
export const prepositions: ReadonlySet<string> = new Set(
  'on by since until till next last this from through for before after every to come'.split(' '),
);
