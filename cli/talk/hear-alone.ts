/** What a line asks when it is heard by itself: nothing said before it, nothing supposed. */
import type { Day } from '../../engine/day.ts';
import type { Request } from '../../engine/types.ts';
import { readAsOwn } from '../understand/read-as.ts';
import { understand } from '../understand/understand.ts';
import { aboutFor, type Flock, speechFor } from './flock.ts';
import { restingReading } from './supposed.ts';
import { toRequest } from './to-request.ts';

/** The request that these words make on a day; null where they are no question, or not surely one. */
export const hearAlone = (flock: Flock, words: string, on: Day): Request | null => {
  const about = { ...aboutFor(flock, null, null), today: on };
  const heard = readAsOwn(words, about, flock.lexicon) ?? understand(words, about, flock.lexicon);
  const reading = heard.sure ? restingReading(flock, heard.readings) : undefined;
  const kind = reading === undefined ? undefined : flock.book.questions[reading.topic]?.kind;
  if (reading === undefined || kind === undefined || kind === 'about') return null;
  return toRequest(flock, reading, on, speechFor(flock).system).request;
};

/** Whether two requests ask the same of the same groups about the same day. */
export const isHeardSame = (one: Request, other: Request): boolean =>
  one.question === other.question &&
  one.moment.on === other.moment.on &&
  JSON.stringify(one.groups) === JSON.stringify(other.groups);
