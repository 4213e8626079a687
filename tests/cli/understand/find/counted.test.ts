import { expect, test } from 'vitest';
import { listener } from '../../../helpers/heard.ts';

const { hear } = listener();

const counts = (words: string) => {
  const { count, birds, feeders, drinkers, lamps, pens } = hear(words).readings[0]?.slots ?? {};
  return Object.fromEntries(
    Object.entries({ count, birds, feeders, drinkers, lamps, pens }).filter(
      ([, value]) => value !== undefined,
    ),
  );
};

test.each([
  ['how many lamps for 60 chicks', { count: 60, birds: 60 }],
  ['is one feeder enough for 40 birds', { count: 40, birds: 40, feeders: 1 }],
  ['is one 36 inch trough enough for the whites', { feeders: 1 }],
  ['are 2 drinkers enough for the 30 reds', { count: 30, birds: 30, drinkers: 2 }],
  ['do 2 pens have room for 60 birds', { count: 60, birds: 60, pens: 2 }],
  ['is one heat lamp enough for 50 chicks', { count: 50, birds: 50, lamps: 1 }],
  // A bare number may stand for birds, but is not taken for them where that would be a guess.
  ['will 24 be alright in the pen', { count: 24 }],
  ['is 85 too cold for week old chicks', { count: 85 }],
  ['do they have room enough', {}],
])('%s', (words, wanted) => {
  expect(counts(words)).toEqual(wanted);
});
