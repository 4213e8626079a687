/** Weather seen or forecast, from words. A bare number is a temperature in the place's own unit. */
import { addDays } from '../../../engine/day.ts';
import { spansOf } from '../spans.ts';
import { degreesTold } from './degrees-told.ts';
import { type Build, known, lacking, numbers, quantities, says, type Told, under, written } from './told.ts';

const forecastWords = [
  'forecast',
  'forecasts',
  'fcst',
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
  'giving',
  'gives',
  'saying',
];

/** Words by which weather is over. */
const overWords =
  'was were hit got went had saw reached dropped fell rained snowed recorded measured blew last been came touched topped showed read did felt turned stayed logged'.split(
    ' ',
  );

/** Whether only a weekday says when: `88 on saturday` may be the one gone by or the one to come. */
const isEitherDay = (told: Told): boolean => {
  const { today } = told.about;
  const [day, ...more] = spansOf(told.line.spans, 'day');
  const isBoth = day !== undefined && more.length === 0 && day.past < today && day.future > today;
  const isWeekday = isBoth && day.future === addDays(day.past, 7);
  return isWeekday && !says(told, ...forecastWords, ...overWords);
};

const frozen = ['snow', 'snowed', 'hail', 'hailed', 'drift', 'drifts', 'snowing'];

/** Depths are of rain, but for snow, which lies deeper than what it melts to. */
const rainIn = (told: Told): string | null => {
  if (says(told, 'no rain', 'no precipitation', 'without rain', 'not a drop')) return '0 mm';
  const millimetres = quantities(told, 'rain')[0] ?? milIn(told);
  const depth = quantities(told, 'length').find((span) => ['in', 'cm'].includes(span.unit));
  if (says(told, ...frozen)) return null;
  if (millimetres !== undefined) return written(millimetres.value, 'mm');
  if (depth !== undefined)
    return depth.unit === 'in' ? written(depth.value, 'in') : written(depth.value * 10, 'mm');
  const hundredths = numbers(told).find((span) => told.line.tokens[span.to]?.word === 'hundredths');
  if (hundredths !== undefined) return written(hundredths.value / 100, 'in');
  return says(told, 'dry') && says(told, 'rain', 'gauge', 'forecast', 'supposed') ? '0 mm' : null;
};

/** `22 mil`, as it is said of rain. */
const milIn = (told: Told): { readonly value: number } | undefined =>
  numbers(told).find((span) => ['mil', 'mils'].includes(told.line.tokens[span.to]?.word ?? ''));

const windIn = (told: Told): { readonly wind: string | null; readonly at: number | null } => {
  const stated = quantities(told, 'speed')[0];
  if (stated !== undefined) return { wind: written(stated.value, stated.unit), at: stated.from };
  const { tokens } = told.line;
  const gust = tokens.findIndex((token) =>
    ['gust', 'gusting', 'gusted', 'gusts', 'wind', 'winds'].includes(token.word),
  );
  const reach = 3;
  const bare = numbers(told).find((span) => gust >= 0 && span.from > gust && span.from - gust <= reach);
  const isTime = bare !== undefined && ['since', 'at', 'by'].includes(tokens[bare.from - 1]?.word ?? '');
  if (bare === undefined || isTime) return { wind: null, at: null };
  const unit = told.about.book.units.shown.speed?.[told.about.system] ?? 'mph';
  return { wind: written(bare.value, unit), at: bare.from };
};

export const buildWeather: Build = (told) => {
  const rain = rainIn(told);
  const { wind, at } = windIn(told);
  const humidity = quantities(told, 'ratio')[0];
  const { low, high, daily, bare } = degreesTold(told, at);
  const isPast = spansOf(told.line.spans, 'day').some((span) => span.plain && span.past < told.about.today);
  const fields = {
    low,
    high,
    rain,
    wind,
    humidity: humidity === undefined ? null : written(humidity.value, humidity.unit),
    forecast: !isPast && says(told, ...forecastWords) ? true : null,
  };
  const nothing = [fields.low, fields.high, rain, fields.wind, fields.humidity].every(
    (each) => each === null,
  );
  const unit = told.about.system === 'us' ? 'F' : 'C';
  return {
    fields: known(fields),
    missing: nothing ? lacking(fields, 'low') : isEitherDay(told) ? ['on'] : [],
    // What is told of the days to come is foreseen.
    daily: daily.map(({ side, text }) => ({ [side]: text, forecast: true })),
    assumed: bare === null ? [] : [`taking ${under(told, bare)} as ${written(bare.value, `°${unit}`)}`],
  };
};
