import fc from 'fast-check';
import { expect, test } from 'vitest';
import { findAll } from '../../../cli/understand/find/all.ts';
import { groundsOf } from '../../../cli/understand/finder.ts';
import { mostCharacters, tokenise } from '../../../cli/understand/tokens.ts';
import { listener } from '../../helpers/heard.ts';
import { lexiconFor } from '../../helpers/learned.ts';

const { about, hear } = listener();
const lexicon = lexiconFor(about.book);

const tradeWords = [...lexicon.vocabulary];

test('any text is heard, twice alike, and never thrown at', () => {
  const text = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 300 }),
    fc.string({ unit: 'grapheme', maxLength: 120 }),
    fc
      .array(fc.constantFrom(...tradeWords, '3', '50 lb', ',', '?', 'and', 'the reds'), { maxLength: 14 })
      .map((words) => words.join(' ')),
  );
  fc.assert(
    fc.property(text, (words) => {
      const heard = hear(words);
      expect(hear(words)).toEqual(heard);
      expect(heard.readings.length).toBeLessThanOrEqual(3);
      expect(heard.readings.every((reading) => Number.isFinite(reading.score))).toBe(true);
    }),
    { numRuns: 150 },
  );
});

test('every entry that is drafted has a day that is real', () => {
  fc.assert(
    fc.property(
      fc.nat(99),
      fc.nat(99),
      fc.constantFrom('/', ' may ', ' february ', '-'),
      (one, other, joint) => {
        for (const reading of hear(`lost 2 reds on ${one}${joint}${other}`).readings) {
          for (const draft of reading.entries) expect(draft.on).toMatch(/^\d{4}-\d\d-\d\d$/);
        }
      },
    ),
    { numRuns: 60 },
  );
});

test.each(['constructor', '__proto__ toString', 'hasOwnProperty valueOf', 'fed __proto__ 25 lb'])(
  '%s is only a word',
  (words) => {
    expect(() => hear(words)).not.toThrow();
  },
);

test('a line past the bound is cut, and that is said', () => {
  const heard = hear(`fed the whites 25 lb ${'x'.repeat(mostCharacters)}`);
  expect(tokenise('a '.repeat(mostCharacters)).length).toBe(mostCharacters / 2);
  for (const reading of heard.readings) {
    expect(reading.assumed).toContain(`only the first ${mostCharacters} characters were read`);
  }
});

test.each(['and ', 'a week from ', '3 may ', '5 lb ', 'the reds ', '- - ', 'half a '])(
  'the finds in a line of "%s" grow no faster than the line',
  (part) => {
    const grounds = groundsOf(about, lexicon);
    const found = (times: number): number => findAll(tokenise(part.repeat(times)), grounds).spans.length;
    expect(found(40)).toBeLessThanOrEqual(2.1 * found(20) + 8);
  },
);
