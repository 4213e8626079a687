/** What a clause that only says when means to a question that takes a day and an hour. */
import { expect, test } from 'vitest';
import { listener } from '../../helpers/heard.ts';

const { hear } = listener();

const heard = (words: string) => {
  const reading = hear(words).readings[0];
  return { topic: reading?.topic, on: reading?.on, at: reading?.slots.at, supposing: reading?.supposing };
};

test.each([
  ['when do I pull the feed if we start butchering at 7 saturday morning', '2026-05-16', '07:00'],
  // The day of the work is meant, not the day asked about.
  ['what time friday do I stop feeding if the slaughter is saturday', '2026-05-16', undefined],
  ['feed off when for a first kill at 06:30', null, '06:30'],
])('%s', (words, on, at) => {
  expect(heard(words)).toEqual({ topic: 'process-day', on, at, supposing: [] });
});

test('a clause that says more than when is still a supposition', () => {
  expect(heard('how fast would the butchering go if there were six of us on saturday')).toMatchObject({
    topic: 'process-day',
    supposing: [{ fact: 'hands', value: 6 }],
  });
});
