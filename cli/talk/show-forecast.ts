/** The forecast as it is shown: its days in full with the words that the service asks for, or what came of fetching it. */
import type { WeatherDay } from '../../engine/types.ts';
import { dayAsData, sayFailed, sayFetched, sayForecastDay, sayWhatToDo } from '../say/forecast.ts';
import { sayDay } from '../say/quantity.ts';
import type { Token } from '../say/tokens.ts';
import { sources } from '../weather/services.ts';
import { type Flock, momentOn, speechFor } from './flock.ts';
import { forecastSetting, type Taken } from './take-forecast.ts';

const detail = (text: string): Token => ({ t: 'detail', text });

/** What to say where the place is not known. */
export const howToPlace = 'Say where you are in degrees north and east, as: our place is at 44.1 -73.2';

const nameOf = (provider: string): string | undefined => sources.find(({ id }) => id === provider)?.name;

/** The days from today on of which anything is on record. */
const daysAhead = (flock: Flock): readonly WeatherDay[] =>
  Object.values(flock.engine().state(momentOn(flock, flock.today)).weather)
    .filter(({ on }) => on >= flock.today)
    .sort((one, other) => (one.on < other.on ? -1 : 1));

interface LastFetched {
  /** Local date and time with offset. */
  readonly at: string;
  /** What its service asks to be said; null for one that is not known here. */
  readonly attribution: string | null;
}

/** The fetching that came last, of all whose days are not yet gone; undefined where nothing was fetched. */
const lastFetched = (flock: Flock): LastFetched | undefined =>
  flock
    .engine()
    .standing()
    .filter(({ on }) => on >= flock.today)
    .flatMap(({ fields: { fetched, provider } }) =>
      typeof fetched !== 'string'
        ? []
        : [{ at: fetched, attribution: sources.find(({ id }) => id === provider)?.attribution ?? null }],
    )
    .sort((one, other) => Date.parse(one.at) - Date.parse(other.at))
    .at(-1);

/** The forecast in full: each day, when it was fetched and from whom, with the words that the service asks for. */
export const showForecast = (flock: Flock): readonly Token[] => {
  const speech = speechFor(flock);
  const days = daysAhead(flock);
  if (days.length === 0) return [{ t: 'claim', text: 'No forecast is on record for today or later.' }];
  const last = lastFetched(flock);
  const until = days.at(-1)?.on ?? flock.today;
  return [
    {
      t: 'claim',
      text: `The weather on record up to ${until === flock.today ? 'today' : sayDay(until, flock.today)}.`,
    },
    ...days.map((day) => detail(sayForecastDay(speech, day))),
    ...(last === undefined ? [] : [detail(`Fetched ${sayFetched(speech, last.at)}.`)]),
    ...(last?.attribution == null ? [] : [detail(last.attribution)]),
  ];
};

/** Each day as data, in the units of the place. */
export const daysAsJson = (flock: Flock): readonly object[] => {
  const speech = speechFor(flock);
  return daysAhead(flock).map((day) => dayAsData(speech, day));
};

/** The same as data for scripts, in the units of the place. */
export const forecastAsJson = (flock: Flock, taken: Taken): object => {
  const last = lastFetched(flock);
  const { isOn, place } = forecastSetting(flock.engine().state(momentOn(flock, flock.today)));
  return {
    on: isOn,
    place,
    fetched: last?.at ?? null,
    attribution: last?.attribution ?? null,
    failed: taken.t === 'failed' ? taken.failure : taken.t === 'refused' ? 'not-written' : null,
    days: daysAsJson(flock),
  };
};

/** What came of fetching: a claim and what to do next, or the forecast in full. */
export const sayTaken = (flock: Flock, taken: Taken): readonly Token[] => {
  switch (taken.t) {
    case 'off':
      return [
        { t: 'claim', text: 'Forecasts are not fetched.' },
        { t: 'next', text: 'Say "forecast on" to switch that on.' },
      ];
    case 'no-place':
      return [
        { t: 'claim', text: 'No forecast is fetched, as the place is not known.' },
        { t: 'next', text: howToPlace },
      ];
    case 'read-only':
      return [{ t: 'claim', text: 'No forecast is fetched here, as nothing can be written.' }];
    case 'refused':
      return [{ t: 'claim', text: 'A forecast came, and could not be written. See: penside check' }];
    case 'failed':
      return [
        { t: 'claim', text: sayFailed(taken.failure, nameOf(taken.provider)) },
        detail('Answers go on with what is on record.'),
        { t: 'next', text: sayWhatToDo(taken.failure) },
      ];
    case 'taken':
      return showForecast(flock);
  }
};
