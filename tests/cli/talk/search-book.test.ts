/** Which rules and figures some words are about: names, wording, sources and numbers, in the units of the place. */
import { describe, expect, test } from 'vitest';
import { numbersSaid, searchBook, tellingWords } from '../../../cli/talk/search-book.ts';
import { readRules } from '../../helpers/read-rules.ts';
import { smallRulebook } from '../../helpers/small-rulebook.ts';

const book = readRules();
const best = (words: string, system: 'us' | 'metric' = 'us') => searchBook(book, words, system)[0]?.id;

describe('the words that tell which one is meant', () => {
  test('are those that are left without asking, numbers and units', () => {
    expect(tellingWords(book, 'who says wait 30 days')).toEqual([]);
    expect(tellingWords(book, "where does the ground's rest of 365 days come from")).toEqual([
      'ground',
      'rest',
    ]);
    expect(tellingWords(book, '')).toEqual([]);
  });
});

describe('numbers', () => {
  test('are taken in the unit said; degrees in those of the place', () => {
    // 50 °F are 10 °C by the definition of the scale.
    expect(numbersSaid(book, 'the 50 degrees', 'us')).toEqual([
      { dimension: 'temperature', value: expect.closeTo(10, 9) },
    ]);
    expect(numbersSaid(book, 'the 50 degrees', 'metric')).toEqual([{ dimension: 'temperature', value: 50 }]);
    expect(numbersSaid(book, '3 weeks, and 7', 'us')).toEqual([
      { dimension: 'time', value: 21 },
      { dimension: null, value: 7 },
    ]);
  });
});

describe('a search', () => {
  test.each([
    ['ground rest', 'pasture/ground-rest'],
    ['who says wait 30 days', 'mixing/quarantine'],
    ['lowest night at 40 degrees', 'pasture/lowest-night'],
    ['crops to feel', 'arrival/crops-to-feel'],
    ['rule too young', 'go-out/too-young'],
  ])('for "%s" finds %s first', (words, id) => {
    expect(best(words)).toBe(id);
  });

  test('finds by the source as well', () => {
    const found = searchBook(book, 'Knight Hatley', 'us').map(({ id }) => id);
    expect(found).toContain('pasture/hardening-days');
    expect(found).not.toContain('pasture/ground-rest');
  });

  test('finds a rule by the number of a figure it compares, after the figure itself', () => {
    const { book: small } = smallRulebook();
    expect(searchBook(small, '14 days', 'us').map(({ kind, id }) => `${kind} ${id}`)).toEqual([
      'figure out/youngest',
      'rule go-out/may-go',
      'rule go-out/too-young',
    ]);
  });

  test('finds nothing where nothing is said, or nothing is about it', () => {
    expect(searchBook(book, 'where does that come from', 'us')).toEqual([]);
    expect(searchBook(book, 'zeppelin', 'us')).toEqual([]);
  });
});
