/** From a command's options to the flock it talks about. */
import { shippedLexicon, shippedRulebook } from '../rulebook.ts';
import { isThere, type Surroundings } from '../surroundings.ts';
import type { Flock } from '../talk/flock.ts';
import { openDemo, openOwn } from '../talk/open-flock.ts';
import { type Given, type Outcome, textOf } from './command.ts';
import { daysOf } from './options.ts';

export interface Opened {
  readonly flock: Flock;
  readonly isDemo: boolean;
  readonly path: string;
}

/** Said wherever the demo answers in place of a flock of one's own. */
export const demoNote = 'This is the demo flock. To start your own: penside new';

/** The keeper's own file, or the demo where there is none and nothing is to be written. */
export const openFlock = (given: Given, around: Surroundings, allowDemo: boolean): Opened | Outcome => {
  const days = daysOf(given, around);
  if ('exit' in days) return days;
  const path = textOf(given, 'file') ?? around.flockFile;
  const book = shippedRulebook();
  const isDemo =
    allowDemo &&
    textOf(given, 'file') === undefined &&
    around.env.PENSIDE_FILE === undefined &&
    !isThere(path);
  const opening = {
    book,
    lexicon: shippedLexicon(book),
    path,
    today: days.on,
    asOf: days.asOf,
    now: around.now,
    by: around.by,
    isAscii: around.isAscii,
  };
  return { flock: isDemo ? openDemo(opening) : openOwn(opening), isDemo, path };
};
