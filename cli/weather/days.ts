/** Hours of a forecast gathered into the days that a ledger keeps: the low of the coming night, the high, rain, wind and humidity. */
import { addDays, type Day, isDay } from '../../engine/day.ts';
import type { ForecastDay, Hour, Plausible } from './provider.ts';

/** How hours become days; the hours of the night are figures. */
export interface Gathering {
  /** Local time of fetching, `2026-05-14T07:12:00-04:00`. */
  readonly now: string;
  readonly days: number;
  readonly nightBegins: number;
  readonly nightEnds: number;
  readonly plausible: Plausible;
}

const inDay = 24;

const within = (value: number | undefined, least: number, most: number): number | undefined =>
  value !== undefined && value >= least && value <= most ? value : undefined;

/** What no weather can be counts as not given. */
const believed = (hour: Hour, { coldest, hottest, mostRain, strongestWind }: Plausible): Hour => ({
  at: hour.at,
  temperature: within(hour.temperature, coldest, hottest),
  humidity: within(hour.humidity, 0, 1),
  wind: within(hour.wind, 0, strongestWind),
  rain: within(hour.rain, 0, mostRain),
});

type Measure = Exclude<keyof Hour, 'at'>;

const stampOf = (day: Day, hour: number): string => `${day}T${String(hour).padStart(2, '0')}`;

/** From one hour of a day up to another, not included, which may be of the next day. */
interface Span {
  readonly from: string;
  readonly to: string;
  /** Hours in it on a day on which no clock is changed. */
  readonly count: number;
}

const spanOf = (day: Day, from: number, to: number): Span => ({
  from: stampOf(day, from),
  to: to < inDay ? stampOf(day, to) : stampOf(addDays(day, 1), to - inDay),
  count: to - from,
});

/** The values of a span, undefined where it is not foretold throughout; the clock going forward takes one hour away. */
const valuesIn = (hours: readonly Hour[], span: Span, measure: Measure): readonly number[] | undefined => {
  const values = hours.flatMap((hour) => {
    const value = hour[measure];
    return hour.at >= span.from && hour.at < span.to && value !== undefined ? [value] : [];
  });
  return values.length > 0 && values.length >= span.count - 1 ? values : undefined;
};

const sum = (values: readonly number[]): number => values.reduce((total, each) => total + each, 0);

const gatherDay = (hours: readonly Hour[], on: Day, gathering: Gathering): ForecastDay => {
  const { now, nightBegins, nightEnds } = gathering;
  const night = valuesIn(hours, spanOf(on, nightBegins, inDay + nightEnds), 'temperature');
  const light = valuesIn(hours, spanOf(on, nightEnds, nightBegins), 'temperature');
  const whole = spanOf(on, 0, inDay);
  const rest = on === now.slice(0, 10) ? spanOf(on, Number(now.slice(11, 13)), inDay) : whole;
  const all = (measure: Measure): readonly number[] | undefined =>
    valuesIn(hours, rest, measure) === undefined
      ? undefined
      : valuesIn(hours, { ...whole, count: 1 }, measure);
  const [rain, wind] = [all('rain'), all('wind')];
  const isWhole = (['rain', 'wind'] as const).every(
    (measure) => all(measure) === undefined || valuesIn(hours, whole, measure) !== undefined,
  );
  const high = light === undefined ? undefined : Math.max(...(all('temperature') ?? light));
  // The humidity that matters is that of the hottest hour.
  const humidity = hours.find(
    (hour) => hour.at.startsWith(on) && high !== undefined && hour.temperature === high,
  )?.humidity;
  return {
    on,
    ...(night === undefined ? {} : { low: Math.min(...night) }),
    ...(high === undefined ? {} : { high }),
    ...(rain === undefined ? {} : { rain: sum(rain) }),
    ...(wind === undefined ? {} : { wind: Math.max(...wind) }),
    ...(humidity === undefined ? {} : { humidity }),
    isWhole,
  };
};

/** The days from today on for which anything is foretold, in base units. */
export const gatherDays = (hours: readonly Hour[], gathering: Gathering): readonly ForecastDay[] => {
  const today = gathering.now.slice(0, 10);
  const sound = hours
    .filter(({ at }) => isDay(at.slice(0, 10)))
    .map((hour) => believed(hour, gathering.plausible));
  return Array.from({ length: gathering.days }, (_, n) =>
    gatherDay(sound, addDays(today, n), gathering),
  ).filter((day) => Object.keys(day).length > 2);
};
