/** The order in which entries take effect. */
import type { Entry } from '../types.ts';
import type { Standing } from './settle.ts';

// Birds are there before anything happens to them: a loss told before the arrival of the same day still counts.
const rankOf = ({ entry }: Standing): number => (entry.kind === 'arrive' ? 0 : 1);

/** When each was written; an entry that does not say was written when the one above it was. */
const stampsOf = (entries: readonly Entry[]): ((entry: Entry) => string | null) => {
  let latest: string | null = null;
  const inherited = new Map<Entry, string | null>();
  for (const entry of entries) {
    if (entry.written === null) inherited.set(entry, latest);
    else latest = entry.written;
  }
  return (entry) => entry.written ?? inherited.get(entry) ?? null;
};

/** Where the offset from UTC begins in a stamp with seconds. */
const offsetAt = 'YYYY-MM-DDTHH:MM:SS'.length;

/** Below zero where one stamp is the earlier. Stamps with the same offset compare as they are written, which spares reading them. */
const compareStamps = (one: string, other: string): number => {
  if (one.length === other.length && one.slice(offsetAt) === other.slice(offsetAt))
    return one === other ? 0 : one < other ? -1 : 1;
  return Date.parse(one) - Date.parse(other);
};

const byInstant = (entries: readonly Entry[]): ((one: Entry, other: Entry) => number) => {
  const stampOf = stampsOf(entries);
  return (one, other) => {
    const [earlier, later] = [stampOf(one), stampOf(other)];
    if (earlier === null || later === null) return earlier === later ? 0 : earlier === null ? -1 : 1;
    return compareStamps(earlier, later);
  };
};

/** By the time of writing; where that is the same, in the order given. @param entries in file order */
export const inWritingOrder = (entries: readonly Entry[]): readonly Entry[] =>
  [...entries].sort(byInstant(entries));

/**
 * By day, arrivals first, then by the time of writing: so it is the same whichever of two copies of a file came first when
 * they were joined. Where that is the same as well, the line number decides.
 * @param standing in file order
 */
export const inDayOrder = (standing: readonly Standing[]): readonly Standing[] => {
  const bySecond = byInstant(standing.map(({ entry }) => entry));
  return [...standing].sort((one, other) => {
    if (one.entry.on !== other.entry.on) return one.entry.on < other.entry.on ? -1 : 1;
    return rankOf(one) - rankOf(other) || bySecond(one.entry, other.entry);
  });
};
