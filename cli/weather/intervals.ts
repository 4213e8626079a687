/** Values that hold for stretches of time, spread over the hours that they hold for. */

/** A stretch as ISO 8601 has it, `2026-05-14T10:00:00+00:00/PT3H`, and its value. */
export interface Stretch {
  readonly validTime: string;
  readonly value: number | null;
}

const hourMs = 3_600_000;

// No forecast says one thing of longer than that, and a reply must not make us count for ever.
const longest = 10 * 24;

const stretchPattern =
  /^(\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}(?:Z|[+-]\d{2}:\d{2}))\/P(?:(\d{1,2})D)?(?:T(?:(\d{1,3})H)?)?$/;

/** Value by hour, hours counted from 1970 in UTC. `shares` is true for amounts such as rain, which are dealt out evenly. */
export const hoursOf = (stretches: readonly Stretch[], shares: boolean): ReadonlyMap<number, number> => {
  const hours = new Map<number, number>();
  for (const { validTime, value } of stretches) {
    const [, start = '', days = '0', rest = '0'] = stretchPattern.exec(validTime) ?? [];
    const first = Math.floor(Date.parse(start) / hourMs);
    const count = Number(days) * 24 + Number(rest);
    if (value === null || Number.isNaN(first) || count > longest) continue;
    for (let n = 0; n < count; n += 1) hours.set(first + n, shares ? value / count : value);
  }
  return hours;
};
