/** The reading of a line that was heard by its form alone, without weighing what it is about. */
import type { Reading } from './types.ts';

/** A reading that names its topic and why it was taken, and nothing besides. */
export const readingOf = (topic: string, idea: string, words: string): Reading => ({
  topic,
  groups: [],
  on: null,
  until: null,
  days: null,
  slots: {},
  mentions: { causes: [], signs: [], ideas: [] },
  supposing: [],
  entries: [],
  assumed: [],
  evidence: [{ idea, words, weight: 1 }],
  score: 1,
});
