/** The one port behind which every forecast service stands: a place in, hours out, or why not. */
import type { Day } from '../../engine/day.ts';
import type { ForecastSource } from './services.ts';

/** Degrees north and east, two decimals: about a kilometre, which is finer than any forecast. */
export interface Place {
  readonly latitude: number;
  readonly longitude: number;
}

/** One hour of a forecast; a value that the service does not give, or that no weather can have, is undefined. */
export interface Hour {
  /** Local to the place: `2026-05-14T07` for what begins at seven. */
  readonly at: string;
  /** °C */
  readonly temperature: number | undefined;
  /** 0..1 */
  readonly humidity: number | undefined;
  /** m/s */
  readonly wind: number | undefined;
  /** mm that fall within the hour */
  readonly rain: number | undefined;
}

/** One day of a forecast in base units, its night the one that begins on it; what its hours do not tell is left out. */
export interface ForecastDay {
  readonly on: Day;
  readonly low?: number;
  readonly high?: number;
  readonly rain?: number;
  readonly wind?: number;
  readonly humidity?: number;
  /** False when hours of it are gone by or not foretold, so that rain and wind are the least there is. */
  readonly isWhole: boolean;
}

/**
 * Why nothing came: no way there; no reply in time; an error, or a redirect, from whoever answers; a page in place of a
 * forecast, as from a network that wants a login; more than a forecast can be; nothing that is a forecast; a place that
 * the service has no forecast for; or the keeper has left.
 */
export type Failure =
  | 'unreachable'
  | 'too-slow'
  | 'turned-down'
  | 'redirected'
  | 'no-data'
  | 'too-large'
  | 'not-a-forecast'
  | 'not-covered'
  | 'left';

export type Got<T> = { readonly got: T } | { readonly failed: Failure };

/** How a service is asked; the same as the global `fetch`. */
export type Ask = (url: string, init: RequestInit) => Promise<Response>;

/** How long and how often a service is asked, and how much it may say. */
export interface Patience {
  /** For one reply, ms. */
  readonly timeout: number;
  /** Before the second try, the third and so on, ms. */
  readonly pauses: readonly number[];
  /** Of one reply, once unpacked. */
  readonly bytes: number;
}

/** Values beyond these are taken as not given: °C, mm in a day, m/s. */
export interface Plausible {
  readonly coldest: number;
  readonly hottest: number;
  readonly mostRain: number;
  readonly strongestWind: number;
}

/** What a provider works with. */
export interface Asking {
  readonly ask: Ask;
  readonly patience: Patience;
  readonly leaving: AbortSignal;
  /** Days wanted, from today on. */
  readonly days: number;
}

/** A service behind the port. */
export interface Provider {
  readonly source: ForecastSource;
  /** Hours in the order of time. Never throws on anything that a service or a network does. */
  readonly hoursFor: (place: Place, asking: Asking) => Promise<Got<readonly Hour[]>>;
}
