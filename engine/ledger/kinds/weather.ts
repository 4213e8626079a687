/** One day's weather as it was, or as it is forecast by a keeper or by a service; a night belongs to the day on which it begins. */
import type { Entry } from '../../types.ts';
import type { Measurement, StateDraft, WeatherDraft } from '../draft.ts';
import { findingAt, findingMissing } from '../finding.ts';
import { defineKind } from './kind.ts';
import { baseOrNull, fromEntry, hasFlag, textOrNull } from './take.ts';

const MEASUREMENTS: readonly Measurement[] = ['low', 'high', 'rain', 'wind', 'humidity'];

/** What was seen outranks what a keeper told as forecast, and that outranks what was fetched. */
const SEEN = 2;
const FORETOLD = 1;
const FETCHED = 0;

const surenessOf = (entry: Entry): number => {
  if (!hasFlag(entry, 'forecast')) return SEEN;
  return textOrNull(entry, 'fetched') === null ? FORETOLD : FETCHED;
};

const dayOf = (draft: StateDraft, on: string): WeatherDraft => {
  const known = draft.weather.get(on);
  if (known !== undefined) return known;
  const fresh: WeatherDraft = {
    day: { on, low: null, high: null, rain: null, wind: null, humidity: null },
    sureness: new Map(),
  };
  draft.weather.set(on, fresh);
  return fresh;
};

/** Lines of two copies of a file may be merged in any order, so that what was fetched goes by its own time. */
const isOlder = (fetched: string, than: string | undefined): boolean =>
  than !== undefined && Date.parse(fetched) < Date.parse(than);

export const weather = defineKind({
  kind: 'weather',
  ahead: true,
  fields: [
    { name: 'low', type: 'quantity', dimension: 'temperature' },
    { name: 'high', type: 'quantity', dimension: 'temperature' },
    { name: 'rain', type: 'quantity', dimension: 'rain', min: 0 },
    { name: 'wind', type: 'quantity', dimension: 'speed', min: 0 },
    { name: 'humidity', type: 'quantity', dimension: 'ratio', min: 0, max: 1 },
    { name: 'forecast', type: 'flag' },
    // When and from which service a forecast was fetched; both are left out of what is typed in.
    { name: 'fetched', type: 'stamp' },
    { name: 'provider', type: 'text' },
  ],
  example: '{"kind":"weather","on":"2026-05-03","low":"38 F","rain":"12 mm","forecast":true}',
  check: (entry, units) => {
    if (MEASUREMENTS.every((name) => entry.fields[name] === undefined)) {
      return [findingMissing('low', { or: MEASUREMENTS.slice(1) })];
    }
    const isFetched = textOrNull(entry, 'fetched') !== null;
    if (isFetched && !hasFlag(entry, 'forecast')) return [findingMissing('forecast')];
    if (isFetched && textOrNull(entry, 'provider') === null) return [findingMissing('provider')];
    if (!isFetched && textOrNull(entry, 'provider') !== null) return [findingMissing('fetched')];
    const low = baseOrNull(entry, 'low', units);
    const high = baseOrNull(entry, 'high', units);
    // A service may foretell a night warmer than its day, as before a change of weather; a keeper has mixed them up.
    if (isFetched || low === null || high === null || low <= high) return [];
    return [findingAt('out-of-range', 'high', { other: 'low' })];
  },
  apply: (draft, entry, units) => {
    const { day, sureness } = dayOf(draft, entry.on);
    const sure = surenessOf(entry);
    const fetched = sure === FETCHED ? textOrNull(entry, 'fetched') : null;
    for (const name of MEASUREMENTS) {
      const value = baseOrNull(entry, name, units);
      const before = sureness.get(name) ?? FETCHED;
      if (value === null || sure < before) continue;
      if (fetched !== null && isOlder(fetched, day[name]?.fetched)) continue;
      day[name] = { ...fromEntry(entry), value, ...(fetched === null ? {} : { fetched }) };
      sureness.set(name, sure);
    }
  },
});
