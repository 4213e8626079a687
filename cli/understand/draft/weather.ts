/** Weather seen or forecast, from words. A bare number is a temperature in the place's own unit. */
import { sideOf } from '../find/low-or-high.ts';
import { spansOf } from '../spans.ts';
import { type Build, known, lacking, numbers, quantities, says, type Told, under, written } from './told.ts';

const forecastWords = [
  'forecast',
  'supposed',
  'going to',
  'expected',
  'expecting',
  'predicts',
  'predicted',
  'calling for',
  'will',
  'tomorrow',
  'tonight',
  'gonna',
  'predicting',
  'says',
  'coming',
];

interface Degrees {
  readonly text: string;
  readonly at: number;
  readonly bare: boolean;
}

const degreesIn = (told: Told): readonly Degrees[] => {
  const unit = told.about.system === 'us' ? 'F' : 'C';
  const stated = quantities(told, 'temperature').map((span) => ({
    text: written(span.value, span.unit),
    at: span.from,
    bare: false,
  }));
  const bare = numbers(told)
    .filter((span) => !['percent', '%', 'inch', 'mm'].includes(told.line.tokens[span.to]?.word ?? ''))
    .map((span) => ({ text: written(span.value, unit), at: span.from, bare: true }));
  return [...stated, ...bare].sort((one, other) => one.at - other.at);
};

const rainIn = (told: Told): string | null => {
  if (
    !says(told, 'rain', 'rained', 'rainfall', 'shower', 'wet', 'precipitation', 'gauge', 'poured', 'drizzle')
  )
    return null;
  if (says(told, 'no rain', 'no precipitation', 'dry', 'without rain')) return '0 mm';
  const millimetres = quantities(told, 'rain')[0];
  const inches = quantities(told, 'length').find((span) => ['in', 'cm'].includes(span.unit));
  if (millimetres !== undefined) return written(millimetres.value, millimetres.unit);
  if (inches !== undefined)
    return inches.unit === 'in' ? written(inches.value, 'in') : written(inches.value * 10, 'mm');
  const { tokens } = told.line;
  return tokens.some((token, n) => token.word === 'an' && tokens[n + 1]?.word === 'inch') ? '1 in' : null;
};

export const buildWeather: Build = (told) => {
  const rain = rainIn(told);
  const wind = quantities(told, 'speed')[0];
  const humidity = quantities(told, 'ratio')[0];
  const degrees = degreesIn(told);
  const sides: { low?: string; high?: string } = {};
  for (const each of degrees) {
    const side = sideOf(told.line.tokens, each.at) ?? 'low';
    if (sides[side] === undefined) sides[side] = each.text;
    else sides[side === 'low' ? 'high' : 'low'] ??= each.text;
  }
  const isPast = spansOf(told.line.spans, 'day').some((span) => span.plain && span.past < told.about.today);
  const fields = {
    low: sides.low ?? null,
    high: sides.high ?? null,
    rain,
    wind: wind === undefined ? null : written(wind.value, wind.unit),
    humidity: humidity === undefined ? null : written(humidity.value, humidity.unit),
    forecast: !isPast && says(told, ...forecastWords) ? true : null,
  };
  const nothing = [fields.low, fields.high, rain, fields.wind, fields.humidity].every(
    (each) => each === null,
  );
  const bare = degrees.filter((each) => each.bare);
  const first = bare[0] === undefined ? undefined : numbers(told).find((span) => span.from === bare[0]?.at);
  return {
    fields: known(fields),
    missing: nothing ? lacking(fields, 'low') : [],
    assumed:
      first === undefined ? [] : [`taking ${under(told, first)} as ${bare[0]?.text.replace(' ', ' °')}`],
  };
};
