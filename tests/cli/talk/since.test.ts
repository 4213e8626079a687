/** Which earlier moment is meant, and which advice. */
import { describe, expect, test } from 'vitest';
import type { Speech } from '../../../cli/say/speech.ts';
import { adviceMeant, askedAgain, dayOfLine, lastAdvice, markIn } from '../../../cli/talk/since.ts';
import type { Reading } from '../../../cli/understand/types.ts';
import { understand } from '../../../cli/understand/understand.ts';
import type { Advice, Answer, Result } from '../../../engine/types.ts';
import { shipped } from '../../helpers/flock-of.ts';
import { lexiconFor } from '../../helpers/learned.ts';

/** A Wednesday. */
const today = '2026-05-13';
const lexicon = lexiconFor(shipped);
const speech: Speech = { book: shipped, system: 'us', currency: '$', today };

const read = (words: string): Reading => {
  const about = {
    today,
    groups: [],
    system: 'us',
    measures: {},
    before: null,
    asking: null,
    book: shipped,
  } as const;
  const [reading] = understand(words, about, lexicon).readings;
  if (reading === undefined) throw new Error(`nothing heard in: ${words}`);
  return reading;
};

describe('the mark', () => {
  test.each([
    ['what changed', { kind: 'last' }],
    ['what changed since yesterday', { kind: 'days', days: ['2026-05-12'] }],
    ['what has changed since monday', { kind: 'days', days: ['2026-05-11'] }],
    ['what changed since line 40', { kind: 'line', line: 40 }],
    [
      'what changed since 41-0123abcd-2026-05-10',
      { kind: 'ref', ref: '41-0123abcd-2026-05-10', lines: 41, rules: '0123abcd', on: '2026-05-10' },
    ],
    // Saturday was said on Monday, and the last Saturday lies before that Monday.
    ['you said saturday on monday', { kind: 'days', days: ['2026-05-11', '2026-05-09'] }],
    ['on monday you said saturday', { kind: 'days', days: ['2026-05-11'] }],
  ])('of "%s"', (words, mark) => {
    const reading = read(words);
    expect([reading.topic, markIn(words, reading, today)]).toEqual(['what-changed', mark]);
  });
});

const advice = (
  on: string,
  question: string,
  results: readonly Partial<Result>[] = [],
  more: Partial<Advice> = {},
): Advice => ({
  at: `${on}T07:00:00+00:00`,
  asked: question,
  request: { question, groups: [], moment: { on, asOf: null, lines: 40 }, until: null, supposing: [] },
  rules: shipped.hash,
  print: '',
  ref: `40-${shipped.hash}-${on}`,
  parts: [],
  results: results.map((each) => ({ id: 'x', fact: 'x', group: null, value: 0, unit: null, ...each })),
  ...more,
});

describe('the advice', () => {
  const monday = '2026-05-11';
  const log = [
    advice('2026-05-10', 'feed-amount', [{ value: 100, unit: 'kg' }]),
    advice(monday, 'go-out', [{ value: '2026-05-16', unit: 'date' }]),
    advice(monday, 'feed-amount', [{ value: 96.1615, unit: 'kg' }]),
    advice(monday, 'losses'),
  ];
  const meant = (words: string, question: string | null): string | null =>
    adviceMeant(speech, log, read(words), monday, question)?.request.question ?? null;

  test('that named the day spoken of', () => {
    expect(meant('you said saturday on monday', 'losses')).toBe('go-out');
  });

  test('that named the number spoken of, as it was shown', () => {
    expect(meant('on monday you said 212 lb', 'losses')).toBe('feed-amount');
  });

  test('else on the question asked last, else none', () => {
    expect([meant('what changed since monday', 'losses'), meant('what changed since monday', null)]).toEqual([
      'losses',
      null,
    ]);
  });

  test('last given on a question from less than is known now', () => {
    const answer = { question: 'feed-amount', ref: log[2]?.ref, request: log[2]?.request } as Answer;
    expect([lastAdvice(log, answer), lastAdvice([], answer)]).toEqual([log[0], null]);
  });
});

describe('asked again', () => {
  const request = (more: object) => ({ ...advice('2026-05-11', 'go-out').request, ...more });

  test('a question about its own day is about today', () => {
    expect(askedAgain(advice('2026-05-11', 'go-out'), today, null)).toEqual(
      request({ moment: { on: today, asOf: null, lines: null } }),
    );
  });

  test('a question about another day stays with it', () => {
    const moment = { on: '2026-05-16', asOf: null, lines: 40 };
    const given = advice('2026-05-11', 'go-out', [], { request: request({ moment }) });
    expect(askedAgain(given, today, '2026-05-13').moment).toEqual({
      on: '2026-05-16',
      asOf: '2026-05-13',
      lines: null,
    });
  });

  test('a span that has run out is the usual one again; one that has not stays', () => {
    const until = (day: string) =>
      askedAgain(advice('2026-05-11', 'go-out', [], { request: request({ until: day }) }), today, null).until;
    expect([until('2026-05-12'), until('2026-05-20')]).toEqual([null, '2026-05-20']);
  });
});

test('the day of a line is the one it was written on, else the one it is about', () => {
  const lines = [
    '{"on":"2026-05-03","written":"2026-05-04T07:00:00+00:00"}',
    '{"on":"2026-05-03"}',
    'not json',
    '{"on":"soon"}',
  ];
  expect([0, 1, 2, 3, 4, 5].map((line) => dayOfLine(lines, line))).toEqual([
    null,
    '2026-05-04',
    '2026-05-03',
    null,
    null,
    null,
  ]);
});
