/** The order in which entries take effect. */
import type { Standing } from './settle.ts';

// Birds are there before anything happens to them: a loss told before the arrival of the same day still counts.
const rankOf = ({ entry }: Standing): number => (entry.kind === 'arrive' ? 0 : 1);

/** By day, arrivals first; on one day the line number decides, which the order of the file gives already. */
export const inDayOrder = (standing: readonly Standing[]): readonly Standing[] =>
  [...standing].sort((one, other) => {
    if (one.entry.on !== other.entry.on) return one.entry.on < other.entry.on ? -1 : 1;
    return rankOf(one) - rankOf(other);
  });
