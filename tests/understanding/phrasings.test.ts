import { expect, test } from 'vitest';
import { listener } from '../helpers/heard.ts';

const { about, hear } = listener();

const taught = [
  ...Object.values(about.book.questions).map((question) => ({ ...question, topic: question.id })),
  ...Object.values(about.book.records)
    .filter((record) => about.book.questions[record.kind] === undefined)
    .map((record) => ({ ...record, topic: `tell:${record.kind}` })),
];

/** Learned from many voices and not by heart: a phrasing that other voices use for something else may be lost to it. */
const mostMissed = 1;

test.each(taught)('$topic is offered for its phrasings', ({ topic, phrasings, example }) => {
  const isOffered = (words: string): boolean => {
    const { readings, nearest } = hear(words);
    return [...readings, ...nearest].some((reading) => reading.topic === topic);
  };
  expect(isOffered(example)).toBe(true);
  expect(phrasings.filter((words) => !isOffered(words)).length).toBeLessThanOrEqual(mostMissed);
});

test.each(taught)('$topic has phrasings enough', ({ topic, phrasings }) => {
  expect(phrasings.length).toBeGreaterThanOrEqual(topic.startsWith('tell:') ? 12 : 15);
});
