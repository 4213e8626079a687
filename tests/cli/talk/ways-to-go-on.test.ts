/** What Tab offers: lines to ask and tell in the keeper's own names, then the next word, then a word of any of them. */
import { expect, test } from 'vitest';
import { openDemo } from '../../../cli/talk/open-flock.ts';
import { waysToGoOn } from '../../../cli/talk/ways-to-go-on.ts';
import { shipped } from '../../helpers/flock-of.ts';
import { lexiconFor } from '../../helpers/learned.ts';

const flock = openDemo({ book: shipped, lexicon: lexiconFor(shipped), today: '2026-05-14', asOf: null });
const ways = (before: string): readonly string[] => waysToGoOn(flock, before);

test('a line that few begin like is offered whole, for each group', () => {
  expect(ways('can the reds go o')).toEqual(['can the reds go out']);
  expect(ways('Which feed')).toEqual([
    'which feed should the reds have now',
    'which feed should the whites have now',
  ]);
});

test('where many begin like it, the next word is offered', () => {
  expect(ways('how m')).toEqual(['how many', 'how much']);
  expect(ways('how')).toEqual(['how did', 'how long', 'how many', 'how much', 'how warm']);
  expect(ways('how many ')).toEqual(['how many are', 'how many bags', 'how many birds', 'how many chicks']);
});

test('records are offered as well as questions', () => {
  expect(ways('moved')).toEqual(['moved the pen']);
});

test('a last word is a group, or a word that is asked about', () => {
  expect(ways('are there rats near the w')[0]).toBe('are there rats near the whites');
  expect(ways('tell me of the free')).toEqual(['tell me of the freezer']);
});

test('nothing goes on like what nothing begins like, and a whole line needs nothing more', () => {
  expect(ways('xyzzy')).toEqual([]);
  expect(ways('moved the pen')).toEqual([]);
});

test('an empty line is offered first words, each once', () => {
  const first = ways('');
  expect(first).toContain('what');
  expect(first).toEqual([...new Set(first)].sort());
});
