/** The forecast fetched while a chat is open: it holds nothing up, and is told once, in one line, when next something is said. */
import { sayFailed, sayFetched } from '../say/forecast.ts';
import type { Token } from '../say/tokens.ts';
import { sources } from '../weather/services.ts';
import { type Flock, speechFor } from './flock.ts';
import { fetchWanted, type Taken, writeForecast } from './take-forecast.ts';

const quiet = (flock: Flock, taken: Taken): readonly Token[] => {
  const line = (text: string): readonly Token[] => [{ t: 'detail', text }];
  switch (taken.t) {
    case 'failed':
      return taken.failure === 'left'
        ? []
        : line(
            `${sayFailed(taken.failure, sources.find(({ id }) => id === taken.provider)?.name)} Answers go on with what is on record.`,
          );
    case 'no-place':
      return line('No forecast is fetched until the place is known, as: our place is at 44.1 -73.2');
    case 'refused':
      return line('A forecast came, and could not be written. See: penside check');
    case 'taken':
      return taken.written === 0
        ? []
        : line(`The forecast of ${sayFetched(speechFor(flock), taken.forecast.fetched)} is on record now.`);
    default:
      return [];
  }
};

/**
 * Fetches once `begin` comes. The function given back is to be called before each turn: it writes what has come by then, so
 * that no answer is worked out over a ledger that changes under it, and gives what is to be said of it, once.
 */
export const expectForecast = (flock: Flock, begin: Promise<unknown>): (() => Promise<readonly Token[]>) => {
  let came: Awaited<ReturnType<typeof fetchWanted>> | null = null;
  // A chat that is left before it begins has nothing to fetch.
  const fetching = begin.then(
    () => fetchWanted(flock, false),
    () => null,
  );
  void fetching.then((result) => {
    came = result;
  });
  return async () => {
    const now = came;
    if (now === null) return [];
    came = null;
    return quiet(flock, now.t === 'came' ? await writeForecast(flock, now) : now);
  };
};
