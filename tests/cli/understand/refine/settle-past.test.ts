import { expect, test } from 'vitest';
import { listener } from '../../../helpers/heard.ts';

// It is Thursday 14 May 2026 on the place.
const { hear } = listener();
const runOf = (words: string): readonly (string | null | undefined)[] => {
  const [reading] = hear(words).readings;
  return [reading?.topic, reading?.on, reading?.until];
};

test.each([
  ['how many whites died between 1 and 10 may', '2026-05-01', '2026-05-10'],
  ['how many whites died between 1 and 20 may', '2026-05-01', '2026-05-14'],
  ['how many whites died between 20 and 25 may', '2025-05-20', '2025-05-25'],
  ['how many reds died from 28 april to 3 may', '2026-04-28', '2026-05-03'],
  ['how many did we lose since sunday', '2026-05-10', '2026-05-14'],
  ['how many birds died last week', '2026-05-04', '2026-05-10'],
  ['how many birds died this week', '2026-05-11', '2026-05-14'],
  ['how many died in the last 3 days', '2026-05-12', '2026-05-14'],
  ['how many died in april', '2026-04-01', '2026-04-30'],
  ['how many died in june', '2025-06-01', '2025-06-30'],
  ['how many died yesterday', '2026-05-13', '2026-05-13'],
])('%s', (words, on, until) => {
  expect(runOf(words)).toEqual(['losses', on, until]);
});

test('no days named are no run', () => {
  expect(runOf('how many whites have died so far')).toEqual(['losses', null, null]);
});

test('what took reckoning is said aloud', () => {
  expect(hear('how many birds died last week').readings[0]?.assumed).toEqual([
    'taking last week as Monday 4 May to Sunday 10 May',
  ]);
});
