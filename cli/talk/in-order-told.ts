/** The order in which records were told, which is that of the file until two copies of it are joined. */
import type { Entry } from '../../engine/types.ts';

/** When a line was written, in milliseconds since 1970; null for one typed in by hand without that. */
const writtenAt = ({ raw }: Entry): number | null => {
  const { written } = JSON.parse(raw);
  const at = typeof written === 'string' ? Date.parse(written) : Number.NaN;
  return Number.isNaN(at) ? null : at;
};

/**
 * Entries in the order of their writing times, and of the file where these are alike. A line without one goes with the
 * line above it.
 */
export const inOrderTold = (entries: readonly Entry[]): readonly Entry[] => {
  let before = Number.NEGATIVE_INFINITY;
  return entries
    .map((entry) => {
      before = writtenAt(entry) ?? before;
      return { entry, at: before };
    })
    .toSorted((one, other) => (one.at < other.at ? -1 : one.at > other.at ? 1 : 0))
    .map(({ entry }) => entry);
};

/**
 * The record that "the last one" means: of those told in this conversation, else of all. What was fetched nobody has told.
 * A clock that goes wrong on another machine cannot come in between.
 */
export const lastTold = (standing: readonly Entry[], told: readonly string[]): Entry | undefined => {
  const said = standing.filter(({ fields }) => fields.fetched === undefined);
  const here = new Set(told);
  return said.findLast(({ raw }) => here.has(raw)) ?? inOrderTold(said).at(-1);
};
