import { expect, test } from 'vitest';
import { listener } from '../helpers/heard.ts';

const { about, hear } = listener();

const taught = [
  ...Object.values(about.book.questions).map((question) => ({ ...question, topic: question.id })),
  ...Object.values(about.book.records)
    .filter((record) => about.book.questions[record.kind] === undefined)
    .map((record) => ({ ...record, topic: `tell:${record.kind}` })),
];

test.each(taught)('$topic is offered for each of its phrasings', ({ topic, phrasings, example }) => {
  const missed = [example, ...phrasings].filter(
    (words) => !hear(words).readings.some((reading) => reading.topic === topic),
  );
  expect(missed).toEqual([]);
});

test.each(taught)('$topic has phrasings enough', ({ topic, phrasings }) => {
  expect(phrasings.length).toBeGreaterThanOrEqual(topic.startsWith('tell:') ? 12 : 15);
});
