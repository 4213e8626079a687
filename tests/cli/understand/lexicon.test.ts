import { expect, test } from 'vitest';
import { learn, makeLexicon } from '../../../cli/understand/lexicon.ts';
import { understand } from '../../../cli/understand/understand.ts';
import { readRules } from '../../helpers/read-rules.ts';
import { placeFor } from '../../understanding/place.ts';

const about = placeFor(readRules());

test('what is learned can be kept as JSON and hears the same', () => {
  const learned = learn(about.book);
  const kept = makeLexicon(about.book, JSON.parse(JSON.stringify(learned)));
  for (const words of ['can the reds go out', 'lost 2 reds to a hawk last night', 'why 2', 'do ducks bite']) {
    expect(understand(words, about, kept)).toEqual(understand(words, about));
  }
});

test('a new question is understood from its file alone', () => {
  const help = about.book.questions.help;
  if (help === undefined) throw new Error('there is no question help');
  const nameDay = {
    ...help,
    id: 'name-day',
    kind: 'list' as const,
    example: 'when is the name day',
    phrasings: [
      'what day is the name day',
      'name day of the hens',
      'tell me the name day',
      'is it a name day today',
    ],
    not: [],
    ideas: {},
  };
  const book = { ...about.book, questions: { ...about.book.questions, 'name-day': nameDay } };
  const heard = understand('when is their name day', { ...about, book });
  expect(heard.readings[0]?.topic).toBe('name-day');
});

test('an idea that nobody asks about turns a line away until a question takes it up', () => {
  const words = 'is a permit or a license needed';
  const { 'selling-rules': asked, ...others } = about.book.questions;
  const lawless = { ...about.book, questions: others };
  expect(asked).toBeDefined();
  expect(understand(words, { ...about, book: lawless }).readings).toEqual([]);
  const help = about.book.questions.help;
  if (help === undefined) throw new Error('there is no question help');
  const law = {
    ...help,
    id: 'law',
    kind: 'list' as const,
    phrasings: ['is it legal', 'do I need a permit'],
    ideas: { law: 3 },
  };
  const book = { ...lawless, questions: { ...others, law } };
  expect(understand(words, { ...about, book }).readings[0]?.topic).toBe('law');
});
