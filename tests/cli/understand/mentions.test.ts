import { describe, expect, test } from 'vitest';
import { listener } from '../../helpers/heard.ts';

const { hear } = listener();
const mentionsOf = (words: string) => hear(words).readings[0]?.mentions;

describe('what a line mentions', () => {
  test('are all of its signs and causes, each once', () => {
    const said = mentionsOf(
      'what took a head off, the head gone and feathers everywhere, a fox or an owl or a fox',
    );
    expect(said?.signs).toEqual(['headless', 'feathers-scattered']);
    expect(said?.causes).toEqual(['fox', 'owl']);
  });

  test('leaves out a word that is part of a longer phrase', () => {
    expect(mentionsOf('the latch was undone and one is gone, what did it')?.signs).toEqual(['opened-latch']);
  });
});

test('a day on which something was seen is not the day that is asked about', () => {
  const [reading] = hear('found one with its head gone last night, what did it').readings;
  expect([reading?.topic, reading?.on]).toEqual(['predators', null]);
  expect(reading?.mentions.ideas).toContain('in-the-night');
});
