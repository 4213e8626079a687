/** What is said to choices: a number, a yes, a no; and a line offered with its slips put right. */
import { expect, test } from 'vitest';
import { aboutFor } from '../../../cli/talk/flock.ts';
import { answerOffered, askMeant, chosen } from '../../../cli/talk/offered.ts';
import { openDemo } from '../../../cli/talk/open-flock.ts';
import { type Memory, nothingYet, type Reply } from '../../../cli/talk/reply.ts';
import type { Reading } from '../../../cli/understand/types.ts';
import { shipped } from '../../helpers/flock-of.ts';
import { lexiconFor } from '../../helpers/learned.ts';

const flock = openDemo({ book: shipped, lexicon: lexiconFor(shipped), today: '2026-05-14', asOf: null });
const reading = (topic: string): Reading => ({
  topic,
  groups: [],
  on: null,
  until: null,
  days: null,
  slots: {},
  mentions: { causes: [], signs: [], ideas: [] },
  supposing: [],
  entries: [],
  assumed: [],
  evidence: [],
  score: 1,
});
const offered = (...topics: readonly string[]): Memory => ({ ...nothingYet, choices: topics.map(reading) });
const says = (reply: Reply | null) =>
  reply?.tokens.flatMap((token) => ('text' in token ? [token.text] : [])) ?? null;

test.each([
  ['2', ['go-out', 'growth'], 'growth'],
  [' 1. ', ['go-out', 'growth'], 'go-out'],
  ['yes', ['growth'], 'growth'],
  ['Yep!', ['growth'], 'growth'],
  ['3', ['go-out', 'growth'], undefined],
  ['yes', ['go-out', 'growth'], undefined],
  ['yes', [], undefined],
  ['yes please do', ['growth'], undefined],
])('%j to %j picks %s', (words, topics, topic) => {
  expect(chosen(words, offered(...topics))?.topic).toBe(topic);
});

test('a yes to several asks which, and they stay offered', () => {
  const memory = offered('go-out', 'growth');
  const reply = answerOffered(flock, 'yes', memory);
  expect(says(reply)).toEqual(['Which one? Say its number, 1 to 2.']);
  expect(reply?.memory.choices).toEqual(memory.choices);
});

test('a no takes them away', () => {
  const reply = answerOffered(flock, 'none of them', offered('go-out', 'growth'));
  expect(says(reply)).toEqual(['Then say it in other words; "help" shows what can be asked and told.']);
  expect(reply?.memory.choices).toEqual([]);
});

test('any other line, or a no to nothing, is a line like any other', () => {
  expect(answerOffered(flock, 'can they go out', offered('growth'))).toBeNull();
  expect(answerOffered(flock, 'no', nothingYet)).toBeNull();
});

test('a line with words that nothing knows is offered put right, in data too', () => {
  const about = aboutFor(flock, null, null);
  const reply = askMeant(flock, 'how warm shuld the brudr be', about, nothingYet);
  expect(says(reply)?.[0]).toBe('Did you mean "how warm should the brooder be"?');
  expect(reply?.json.choices).toEqual([{ question: 'brooder-heat', says: 'how warm the brooder must be' }]);
  expect(reply?.exit).toBe(2);
  expect(askMeant(flock, 'how warm should the brooder be', about, nothingYet)).toBeNull();
});
