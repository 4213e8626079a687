import { expect, test } from 'vitest';
import { fromFiles, toFiles } from '../../../cli/understand/learn/keep.ts';
import { learn } from '../../../cli/understand/learn/learn.ts';
import { makeLexicon } from '../../../cli/understand/lexicon.ts';
import { understand } from '../../../cli/understand/understand.ts';
import { lexiconFor, shippedLearned } from '../../helpers/learned.ts';
import { readRules } from '../../helpers/read-rules.ts';
import { placeFor } from '../../understanding/place.ts';

const about = placeFor(readRules());
/** Learning takes its time on a busy machine. */
const learning = 120_000;

test('what is learned can be kept in files and hears the same', () => {
  const files = toFiles(shippedLearned());
  const kept = makeLexicon(
    about.book,
    fromFiles((name) => files[name]),
  );
  const lexicon = lexiconFor(about.book);
  for (const words of ['can the reds go out', 'lost 2 reds to a hawk last night', 'why 2', 'do ducks bite']) {
    expect(understand(words, about, kept)).toEqual(understand(words, about, lexicon));
  }
});

test('a new question is understood from its file alone', { timeout: learning }, () => {
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
  };
  const book = { ...about.book, questions: { ...about.book.questions, 'name-day': nameDay } };
  const heard = understand('when is their name day', { ...about, book }, makeLexicon(book, learn(book, [])));
  expect(heard.readings[0]?.topic).toBe('name-day');
});

test('the same lines are learned to the same weights', { timeout: learning }, () => {
  const voice = [
    {
      text: 'are they warm enough in there',
      topic: 'brooder-heat',
      also: [],
      after: null,
      hazard: null,
      supposes: null,
    },
    { text: 'my car will not start', topic: 'none', also: [], after: null, hazard: null, supposes: null },
  ];
  const [one, other] = [learn(about.book, [voice]), learn(about.book, [voice])].map(toFiles);
  expect(one).toEqual(other);
});
