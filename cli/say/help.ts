/** What can be asked and told, taken from the rulebook itself. */
import type { Rulebook } from '../../engine/types.ts';
import { capital } from './phrase.ts';
import type { Token } from './tokens.ts';

/** Every question and every kind of record, each with an example. */
export const sayHelp = (book: Rulebook): readonly Token[] => [
  { t: 'heading', text: 'You can ask' },
  ...Object.values(book.questions).map(
    (question): Token => ({ t: 'detail', text: `${capital(question.offer)}: "${question.example}"` }),
  ),
  { t: 'heading', text: 'You can tell' },
  ...Object.values(book.records)
    .filter((record) => record.kind !== 'undo')
    .map((record): Token => ({ t: 'detail', text: `${capital(record.offer)}: "${record.example}"` })),
];

/** Some askable things, for when nothing fits. */
export const sayNearest = (book: Rulebook, topics: readonly string[]): readonly Token[] => {
  const examples = topics.flatMap((topic) => exampleOf(book, topic) ?? []);
  return examples.length === 0
    ? []
    : [
        {
          t: 'next',
          text: `You could ask: ${examples.map((each) => `"${each}"`).join(', ')}. Say "help" for all of it.`,
        },
      ];
};

/** How a topic (a question, or `tell:` and a kind) is asked or told. */
export const exampleOf = (book: Rulebook, topic: string): string | undefined =>
  topic.startsWith('tell:') ? book.records[topic.slice(5)]?.example : book.questions[topic]?.example;

/** What a topic is about, for a numbered choice. */
export const offerOf = (book: Rulebook, topic: string): string =>
  (topic.startsWith('tell:') ? book.records[topic.slice(5)]?.offer : book.questions[topic]?.offer) ?? topic;
