import { expect, test } from 'vitest';
import type { Heard } from '../../../cli/understand/types.ts';
import { listener } from '../../helpers/heard.ts';

const { hear } = listener();

const best = (heard: Heard) => {
  const [reading] = heard.readings;
  return {
    sure: heard.sure,
    topic: reading?.topic,
    groups: reading?.groups,
    on: reading?.on,
    until: reading?.until,
    days: reading?.days,
    supposing: reading?.supposing,
  };
};

const plain = { sure: true, groups: [], on: null, until: null, days: null, supposing: [] };
const week = { on: '2026-05-14', until: '2026-05-20', days: 7 };

test.each([
  ['how much feed this week', { ...plain, ...week, topic: 'feed-amount' }],
  [
    'feed for the next 10 days',
    { ...plain, on: '2026-05-14', until: '2026-05-23', days: 10, topic: 'feed-amount' },
  ],
  ['how much feed until sunday', { ...plain, until: '2026-05-17', topic: 'feed-amount' }],
  ['can the reds go out on friday', { ...plain, groups: ['reds'], on: '2026-05-15', topic: 'go-out' }],
  ['how many bags till the 30th', { ...plain, until: '2026-05-30', topic: 'feed-buy' }],
  [
    'how old will the reds be on 1 july',
    { ...plain, groups: ['reds'], on: '2026-07-01', topic: 'headcount' },
  ],
  [
    'at 6 weeks how much do the whites eat',
    { ...plain, groups: ['whites'], on: '2026-05-19', topic: 'feed-amount' },
  ],
  ['no hens this is wrong, undo', { ...plain, topic: 'undo' }],
  ['why 2', { ...plain, topic: 'why' }],
  ['where does that come from', { ...plain, topic: 'rule-source' }],
  ['help', { ...plain, topic: 'help' }],
])('%s', (words, expected) => {
  expect(best(hear(words))).toEqual(expected);
});

test('why has the number of the reason', () => {
  expect(hear('why 2').readings[0]?.slots.n).toBe(2);
});

test.each([
  ['how much feed until we process', 'processing'],
  ['how much feed until they go out', 'out'],
  ['feed for the whole batch', 'batch'],
])('%s ends where it says', (words, horizon) => {
  expect(hear(words).readings[0]?.slots.horizon).toBe(horizon);
});

test.each([
  [
    "can the reds go out if it's 38 tonight",
    'go-out',
    [{ what: 'night low', fact: 'night-low', value: 38, unit: null, adds: false }],
  ],
  [
    'if the nights stayed above 55 could the reds go out',
    'go-out',
    [{ what: 'night low', fact: 'night-low', value: 55, unit: null, adds: false }],
  ],
  [
    'can the reds go out if tonight is 4 degrees colder',
    'go-out',
    [{ what: 'night low', fact: 'night-low', value: -4, unit: 'F', adds: true }],
  ],
  [
    'say we had 10 more birds, how much feed this week',
    'feed-amount',
    [{ what: 'birds', fact: 'alive', value: 10, unit: null, adds: true }],
  ],
  [
    'what if we had 10 fewer birds, how much feed do they need',
    'feed-amount',
    [{ what: 'birds', fact: 'alive', value: -10, unit: null, adds: true }],
  ],
  [
    'how many bags do I buy if feed goes to 30 a bag',
    'feed-buy',
    [{ what: 'feed price', fact: 'bag-price', value: 30, unit: 'money', adds: false }],
  ],
  [
    'when are the whites ready if we want 6 lb',
    'process-when',
    [{ what: 'wanted carcass', fact: 'wanted-carcass', value: 6, unit: 'lb', adds: false }],
  ],
])('%s', (words, topic, supposing) => {
  const heard = hear(words);
  const supposed = heard.readings[0]?.supposing.map(({ orElse: _, ...each }) => each);
  expect([heard.sure, heard.readings[0]?.topic, supposed]).toEqual([true, topic, supposing]);
});

test('an if that only means whether supposes nothing', () => {
  expect(hear('tell me if the reds can go out').readings[0]?.supposing).toEqual([]);
});

test('a follow-up keeps what it does not change', () => {
  const first = hear('how much feed this week');
  const second = hear('and the reds?', { before: first });
  expect(best(second)).toEqual({ ...plain, ...week, groups: ['reds'], topic: 'feed-amount' });
  const third = hear('tomorrow?', { before: second });
  expect(best(third)).toEqual({ ...plain, groups: ['reds'], on: '2026-05-15', topic: 'feed-amount' });
  const fourth = hear('what about next week', { before: third });
  expect(best(fourth)).toEqual({
    ...plain,
    groups: ['reds'],
    on: '2026-05-18',
    until: '2026-05-24',
    days: 7,
    topic: 'feed-amount',
  });
});

test.each([
  'can the turkeys go out',
  'do ducks need a pond',
  'what is the capital of norway',
  'tell me a joke',
  'asdf qwer zxcv',
  'got any recipe for dumplings',
  'convert 14 stone to kilograms',
])('%s is outside', (words) => {
  expect(hear(words).readings).toEqual([]);
});

test('nothing said is nothing heard', () => {
  expect(hear('  ')).toEqual({ words: '  ', readings: [], sure: false, nearest: [] });
  expect(hear('???')).toEqual({ words: '???', readings: [], sure: false, nearest: [] });
});

test('a close call is asked back with choices', () => {
  const heard = hear('the reds');
  expect(heard.sure).toBe(false);
});

test('the evidence names ideas and the words that carry them', () => {
  const evidence = hear('can the reds go out').readings[0]?.evidence ?? [];
  expect(evidence.slice(0, 3)).toContainEqual(
    expect.objectContaining({ idea: 'go-outside', words: 'go out' }),
  );
});

test.each([
  ['temprature in the broder', 'brooder-heat'],
  ['how much fede do they need', 'feed-amount'],
  ['how many died so fra', 'losses'],
  ['can teh reds go outsdie', 'go-out'],
])('slips: %s', (words, topic) => {
  expect(hear(words).readings[0]?.topic).toBe(topic);
});
