/** One day's weather as it was, or as it is forecast; a night belongs to the day on which it begins. */
import type { Measurement, StateDraft, WeatherDraft } from '../draft.ts';
import { findingAt, findingMissing } from '../finding.ts';
import { defineKind } from './kind.ts';
import { baseOrNull, fromEntry, hasFlag } from './take.ts';

const MEASUREMENTS: readonly Measurement[] = ['low', 'high', 'rain', 'wind', 'humidity'];

const dayOf = (draft: StateDraft, on: string): WeatherDraft => {
  const known = draft.weather.get(on);
  if (known !== undefined) return known;
  const fresh: WeatherDraft = {
    day: { on, low: null, high: null, rain: null, wind: null, humidity: null },
    seen: new Set(),
  };
  draft.weather.set(on, fresh);
  return fresh;
};

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
  ],
  example: '{"kind":"weather","on":"2026-05-03","low":"38 F","rain":"12 mm","forecast":true}',
  check: (entry, units) => {
    if (MEASUREMENTS.every((name) => entry.fields[name] === undefined)) {
      return [findingMissing('low', { or: MEASUREMENTS.slice(1) })];
    }
    const low = baseOrNull(entry, 'low', units);
    const high = baseOrNull(entry, 'high', units);
    if (low === null || high === null || low <= high) return [];
    return [findingAt('out-of-range', 'high', { other: 'low' })];
  },
  apply: (draft, entry, units) => {
    const { day, seen } = dayOf(draft, entry.on);
    const isForecast = hasFlag(entry, 'forecast');
    for (const name of MEASUREMENTS) {
      const value = baseOrNull(entry, name, units);
      if (value === null || (isForecast && seen.has(name))) continue;
      day[name] = { ...fromEntry(entry), value };
      if (!isForecast) seen.add(name);
    }
  },
});
