/** Feed in hand running down, a bar for a day or for every few days. */
import { addDays, type Day } from '../../engine/day.ts';
import { sayDay, sayValue } from '../say/quantity.ts';
import type { Speech } from '../say/speech.ts';
import type { Draw } from './picture.ts';

/** Mass in kg; `left` is what there is at the beginning of each day from `from` on. */
export interface StockSeries {
  readonly from: Day;
  /** The first day that it does not see through. */
  readonly out: Day;
  readonly left: readonly number[];
}

const mostRows = 10;
/** Columns beside the bar: the day before it and the mass behind it. */
const beside = 36;

const sayMass = (speech: Speech, value: number): string =>
  sayValue(speech, { value, unit: 'kg' }, 'feed-left');

export const drawStock: Draw<StockSeries> = (speech, { from, out, left }, _group, { marks, width }) => {
  const bar = width - beside;
  const full = Math.max(...left);
  const stride = Math.ceil(left.length / mostRows);
  const shown = left.flatMap((mass, at) => (at % stride === 0 ? [{ mass, on: addDays(from, at) }] : []));
  const names = shown.map(({ on }) => sayDay(on, speech.today));
  const room = Math.max(...names.map((name) => name.length));
  const lines = shown.map(({ mass }, at) => {
    const length = full > 0 ? Math.round((mass / full) * bar) : 0;
    return `${(names[at] ?? '').padEnd(room)} ${marks.full.repeat(length)} ${sayMass(speech, mass)}`.slice(
      0,
      width,
    );
  });
  const says = `Feed in hand: ${sayMass(speech, left[0] ?? 0)} at the beginning of ${sayDay(from, speech.today)}, not enough any more on ${sayDay(out, speech.today)}.`;
  return { lines, says };
};
