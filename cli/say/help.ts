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

/** What a topic is about, for a numbered choice. */
export const offerOf = (book: Rulebook, topic: string): string =>
  (topic.startsWith('tell:') ? book.records[topic.slice(5)]?.offer : book.questions[topic]?.offer) ?? topic;
