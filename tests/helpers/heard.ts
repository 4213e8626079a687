/** Lines heard on the place of the labelled files. */
import { expect } from 'vitest';
import type { About, Heard } from '../../cli/understand/types.ts';
import { understand } from '../../cli/understand/understand.ts';
import { placeFor } from '../understanding/place.ts';
import { lexiconFor } from './learned.ts';
import { readRules } from './read-rules.ts';

/** Makes a listener with one lexicon for all its lines. */
export const listener = (): { about: About; hear: (words: string, more?: Partial<About>) => Heard } => {
  const about = placeFor(readRules());
  const lexicon = lexiconFor(about.book);
  return { about, hear: (words, more = {}) => understand(words, { ...about, ...more }, lexicon) };
};

/** The drafts of a line that is surely heard, each as its entry would be, with what is missing. */
export const draftsBy = (hear: ReturnType<typeof listener>['hear']) => (words: string) => {
  const heard = hear(words);
  expect(heard.sure, `${words} was not sure: ${heard.readings.map((each) => each.topic).join()}`).toBe(true);
  return heard.readings[0]?.entries.map(({ kind, on, fields, missing }) => ({
    kind,
    on,
    ...fields,
    ...(missing.length > 0 ? { missing } : {}),
  }));
};
