/** A fetched forecast as entries for the ledger: only what is new in it. */
import { daysBetween } from '../../engine/day.ts';
import type { NewEntry } from '../../engine/index.ts';
import type { Entry, FieldValue, Quantity } from '../../engine/types.ts';
import type { Forecast } from '../weather/kept.ts';
import type { ForecastDay } from '../weather/provider.ts';

/** How each value is written. No forecast is as fine as these steps; finer ones would make a new line of every breath of air. */
const written = {
  low: { unit: 'C', inBase: 1, step: 0.5 },
  high: { unit: 'C', inBase: 1, step: 0.5 },
  rain: { unit: 'mm', inBase: 1, step: 0.5 },
  wind: { unit: 'm/s', inBase: 1, step: 0.5 },
  humidity: { unit: 'percent', inBase: 0.01, step: 5 },
} as const;

type Measure = keyof typeof written;
type Values = Partial<Record<Measure, number>>;

const measures = Object.keys(written) as readonly Measure[];

/** Values in the units and steps in which they are written. */
const inSteps = (day: ForecastDay): Values =>
  Object.fromEntries(
    measures.flatMap((measure) => {
      const { inBase, step } = written[measure];
      const value = day[measure];
      return value === undefined ? [] : [[measure, Math.round(value / inBase / step) * step]];
    }),
  );

const isQuantity = (value: FieldValue | undefined): value is Quantity =>
  typeof value === 'object' && 'unit' in value;

interface OnRecord {
  readonly values: Values;
  /** When the last of them was fetched. */
  readonly fetched: string;
}

/** What fetched forecasts on record say of a day, the later over the earlier; undefined where none does. */
const onRecord = (entries: readonly Entry[], on: string): OnRecord | undefined => {
  const ofDay = entries
    .filter((entry) => entry.on === on && typeof entry.fields.fetched === 'string')
    .map((entry) => ({ entry, fetched: String(entry.fields.fetched) }))
    .sort((one, other) => Date.parse(one.fetched) - Date.parse(other.fetched));
  const last = ofDay.at(-1);
  const values = ofDay.flatMap(({ entry }) =>
    measures.flatMap((measure) => {
      const value = entry.fields[measure];
      return isQuantity(value) && value.unit === written[measure].unit ? [[measure, value.value]] : [];
    }),
  );
  return last && { values: Object.fromEntries(values), fetched: last.fetched };
};

/** Of a day that is partly gone, what has fallen and blown already stays counted. */
const overRest = (values: Values, before: Values, isWhole: boolean): Values => {
  if (isWhole) return values;
  const atLeast = (measure: 'rain' | 'wind'): Values => {
    const value = values[measure];
    return value === undefined ? {} : { [measure]: Math.max(value, before[measure] ?? 0) };
  };
  return { ...values, ...atLeast('rain'), ...atLeast('wind') };
};

/**
 * The entries to write, one a day. A day of which the record says the same is left out, unless what is there was fetched so
 * long ago that answers would call it old.
 * @param entries the entries that count
 * @param stands days after which a forecast is told with its age
 */
export const forecastEntries = (
  entries: readonly Entry[],
  { days, fetched, provider }: Forecast,
  stands: number,
): readonly NewEntry[] =>
  days.flatMap((day): NewEntry[] => {
    const before = onRecord(entries, day.on);
    const values = overRest(inSteps(day), before?.values ?? {}, day.isWhole);
    const told = measures.filter((measure) => values[measure] !== undefined);
    const isOld =
      before !== undefined && daysBetween(before.fetched.slice(0, 10), fetched.slice(0, 10)) >= stands;
    if (!isOld && told.every((measure) => values[measure] === before?.values[measure])) return [];
    const fields = Object.fromEntries(
      told.map((measure) => [measure, `${values[measure]} ${written[measure].unit}`]),
    );
    return [{ kind: 'weather', on: day.on, ...fields, forecast: true, fetched, provider }];
  });
