/** The order in which entries take effect. */
import type { Standing } from './settle.ts';

// Birds are there before anything happens to them: a loss told before the arrival of the same day still counts.
const rankOf = ({ entry }: Standing): number => (entry.kind === 'arrive' ? 0 : 1);

/** When each was written; an entry that does not say was written when the one above it was. */
const instantsOf = (standing: readonly Standing[]): ReadonlyMap<Standing, number> => {
  let latest = Number.NEGATIVE_INFINITY;
  return new Map(
    standing.map((each) => {
      if (each.entry.written !== null) latest = Date.parse(each.entry.written);
      return [each, latest] as const;
    }),
  );
};

/**
 * By day, arrivals first, then by the time of writing: so it is the same whichever of two copies of a file came first when
 * they were joined. Where that is the same as well, the line number decides.
 * @param standing in file order
 */
export const inDayOrder = (standing: readonly Standing[]): readonly Standing[] => {
  const instants = instantsOf(standing);
  const instantOf = (each: Standing): number => instants.get(each) ?? Number.NEGATIVE_INFINITY;
  return [...standing].sort((one, other) => {
    if (one.entry.on !== other.entry.on) return one.entry.on < other.entry.on ? -1 : 1;
    if (rankOf(one) !== rankOf(other)) return rankOf(one) - rankOf(other);
    const [earlier, later] = [instantOf(one), instantOf(other)];
    return earlier === later ? 0 : earlier - later;
  });
};
