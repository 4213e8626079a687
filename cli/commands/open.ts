/** From a command's options to the flock it talks about. */
import { type OwnRules, shippedLexicon, shippedRulebook, withOwnFiles } from '../rulebook.ts';
import { isThere, readOwnRules, type Surroundings } from '../surroundings.ts';
import type { Flock } from '../talk/flock.ts';
import { openDemo, openOwn } from '../talk/open-flock.ts';
import { type Given, type Outcome, textOf } from './command.ts';
import { forecastDoor } from './forecast-door.ts';
import { daysOf } from './options.ts';

export interface Opened {
  readonly flock: Flock;
  readonly isDemo: boolean;
  readonly path: string;
}

/** Said wherever the demo answers in place of a flock of one's own. */
export const demoNote = 'This is the demo flock. To start your own: penside new';

/** The shipped rules, and over them those that the keeper has beside the flock file. */
const rulesFor = async (flockFile: string | null): Promise<OwnRules> => {
  const book = shippedRulebook();
  const own = flockFile === null ? null : readOwnRules(flockFile);
  return own === null ? { book, problems: [] } : withOwnFiles(book, own);
};

/**
 * The keeper's own file, or the demo where there is none and nothing is to be written.
 * @param leaving ends the fetching of a forecast that nobody waits for any more
 */
export const openFlock = async (
  given: Given,
  around: Surroundings,
  allowDemo: boolean,
  leaving: AbortSignal = new AbortController().signal,
): Promise<Opened | Outcome> => {
  const days = daysOf(given, around);
  if ('exit' in days) return days;
  const path = textOf(given, 'file') ?? around.flockFile;
  const isDemo =
    allowDemo &&
    textOf(given, 'file') === undefined &&
    around.env.PENSIDE_FILE === undefined &&
    !isThere(path);
  const { book, problems } = await rulesFor(isDemo ? null : path);
  const opening = {
    book,
    ownProblems: problems,
    lexicon: shippedLexicon(book),
    path,
    today: days.on,
    asOf: days.asOf,
    now: around.now,
    by: around.by,
    rulesFolder: around.rulesFolder,
    isReadOnly: around.isReadOnly,
    isAscii: around.isAscii,
    fetchForecast: forecastDoor(around, leaving),
  };
  return { flock: isDemo ? openDemo(opening) : openOwn(opening), isDemo, path };
};
