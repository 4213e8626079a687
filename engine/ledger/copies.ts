/** Which entries are copies of an earlier one, as when two copies of the file were joined. */
import type { Entry } from '../types.ts';

export interface Copy {
  readonly entry: Entry;
  /** The line of the entry that it repeats. */
  readonly first: number;
}

/**
 * Entries that stand further up letter for letter, writing time included, in file order. Without a writing time nothing
 * tells a copy from the same thing happening twice, so such a line is none.
 */
export const findCopies = (entries: readonly Entry[]): readonly Copy[] => {
  const firsts = new Map<string, number>();
  return entries.flatMap((entry) => {
    if (entry.written === null) return [];
    const first = firsts.get(entry.raw);
    if (first !== undefined) return [{ entry, first }];
    firsts.set(entry.raw, entry.line);
    return [];
  });
};
