/** Fetched forecasts in words: what leaves the machine, what came, what failed and what to do about it. */
import type { Air, WeatherDay } from '../../engine/types.ts';
import { listed } from './listed.ts';
import { inShownUnit, sayDay, sayTime, sayValue } from './quantity.ts';
import type { Speech } from './speech.ts';

/** A forecast service as it is named to the keeper. */
export interface Named {
  readonly name: string;
  readonly base: string;
  readonly terms: string;
  readonly attribution: string;
}

const saySource = ({ name, base, terms }: Named): string =>
  `${name} (${base.replace(/^\w+:\/\//, '')}; ${terms})`;

/** What is sent, and to whom: said before anything is. */
export const sayWhatLeaves = (place: string, [first, second]: readonly Named[]): string => {
  if (first === undefined) return '';
  const further =
    second === undefined ? '' : `, and to ${saySource(second)} only where that has no forecast for the place`;
  return `Only the coordinates ${place} leave this machine, to ${saySource(first)}${further}.`;
};

const failures = {
  unreachable: 'there is no way to it, as without a network',
  'too-slow': 'it gave no answer in time',
  'turned-down': 'it answered with an error',
  redirected: 'the network sends us elsewhere, as one that wants a login does',
  'no-data': 'a page came back in place of a forecast, as from a network that wants a login',
  'too-large': 'it sent far more than a forecast is',
  'not-a-forecast': 'what it sent is no forecast that can be read',
  'not-covered': 'it has no forecast for this place',
  left: 'nobody waited for it',
} as const;

const whatToDo: Readonly<Partial<Record<keyof typeof failures, string>>> = {
  redirected: 'Open any page in a browser, log in to the network, and try again.',
  'no-data': 'Open any page in a browser, log in to the network, and try again.',
  'not-covered': 'Look at the coordinates: "our place is at 44.1 -73.2" sets them, north and east.',
};

/** Why no forecast came, in a sentence. */
export const sayFailed = (failure: keyof typeof failures, name: string | undefined): string =>
  `No forecast came from ${name ?? 'any service'}: ${failures[failure]}.`;

/** What to do about it. */
export const sayWhatToDo = (failure: keyof typeof failures): string =>
  whatToDo[failure] ?? 'Try again later; a low typed in, as "low of 38 tonight", does as well.';

const order = ['low', 'high', 'rain', 'wind', 'humidity'] as const;
const names = { low: 'night low', high: 'high', rain: 'rain', wind: 'wind', humidity: 'humidity' } as const;
const units = { low: 'C', high: 'C', rain: 'mm', wind: 'm/s', humidity: 'ratio' } as const;

const sayAir = (speech: Speech, measure: (typeof order)[number], air: Air): string => {
  const said = `${names[measure]} ${sayValue(speech, { value: air.value, unit: units[measure] })}`;
  return air.fetched === undefined ? `${said} (typed in)` : said;
};

/** `Thursday 14 May: night low 38 °F, high 61 °F (typed in), rain 0.2 in.`; what a keeper told himself is marked. */
export const sayForecastDay = (speech: Speech, day: WeatherDay): string => {
  const known = order.flatMap((measure) => {
    const air = day[measure];
    return air === null ? [] : [sayAir(speech, measure, air)];
  });
  const name = day.on === speech.today ? 'Today' : sayDay(day.on, speech.today);
  return `${name}: ${listed(known)}.`;
};

/** The same as data: value and unit as the place has them, and when it was fetched, null for what was typed in. */
export const dayAsData = (speech: Speech, day: WeatherDay): object => ({
  on: day.on,
  ...Object.fromEntries(
    order.map((measure) => {
      const air = day[measure];
      return [
        measure,
        air && { ...inShownUnit(speech, air.value, units[measure]), fetched: air.fetched ?? null },
      ];
    }),
  ),
});

/** `Thursday 14 May at 07:12`. */
export const sayFetched = (speech: Speech, fetched: string): string => sayTime(fetched, speech.today);
