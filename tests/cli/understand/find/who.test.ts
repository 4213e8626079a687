/** Whose birds a question speaks of. */
import { describe, expect, test } from 'vitest';
import { listener } from '../../../helpers/heard.ts';

const { hear } = listener();

describe('the person asked about', () => {
  test.each([
    ['what does my neighbor owe me', 'my neighbor'],
    ['how many does my sister still get', 'my sister'],
    ['what do the Millers still get', 'the Millers'],
    ['how many birds did I promise Dave', 'Dave'],
    ['have the neighbours had theirs yet', 'the neighbours'],
    ['who still gets birds', undefined],
    ['how much money am I owed', undefined],
  ])('%s: %s', (words, who) => {
    const [reading] = hear(words).readings;
    expect({ topic: reading?.topic, who: reading?.slots.who }).toEqual({ topic: 'shares', who });
  });
});
