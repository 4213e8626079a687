import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { allFacts } from '../../../engine/facts/index.ts';
import { openWorkings } from '../../../engine/facts/workings.ts';
import type { Sign, State, Supposition, Value } from '../../../engine/types.ts';
import { rulebook } from '../../helpers/rulebook-of.ts';
import { group, stateOf } from '../../helpers/state-of.ts';

const { book } = rulebook();

const told = (facts: Readonly<Record<string, Value>>): Supposition[] =>
  Object.entries(facts).map(([fact, value]) => ({ what: { fact }, value, adds: false }));

/** A fact with these things told in the question, over a state with no other hint unless one is given. */
const worth = (
  fact: string,
  facts: Readonly<Record<string, Value>> = {},
  state: State = stateOf(),
): Value | null =>
  openWorkings({ state, book, facts: allFacts, on: state.on, until: null, supposing: told(facts) }).step(
    fact,
    null,
  ).value;

const points = (hunter: string, facts: Readonly<Record<string, Value>>): number =>
  Number(
    new Map(
      String(worth('hunter-ranking', facts))
        .split(' ')
        .map((each) => each.split('=') as [string, string]),
    ).get(hunter) ?? Number.NEGATIVE_INFINITY,
  );

const lostTo = (cause: string, on: string) =>
  stateOf({ groups: [group({ losses: [{ on, count: 1, cause, line: 2 }] })] });
const noted = (sign: string, on: string): Sign => ({
  sign,
  on,
  line: 3,
  count: null,
  group: null,
  words: sign,
});

describe('the likeliest hunter', () => {
  test.each([
    ['pulled-through-wire', 'raccoon'],
    ['opened-latch', 'raccoon'],
    ['buried', 'fox'],
    ['gone-without-trace', 'fox'],
    ['neck-bitten many-killed', 'weasel'],
    ['mauled torn-wire', 'dog'],
    ['belly-eaten', 'opossum'],
    ['musky belly-eaten', 'skunk'],
    ['small-hole chicks-missing', 'rat'],
    ['feathers-scattered hawk-seen', 'hawk'],
  ])('by %s is the %s', (signs, hunter) => {
    expect(worth('likely-hunter', { 'signs-told': signs })).toBe(hunter);
  });

  test('by a missing head is the raccoon, with the owl and the weasel close behind', () => {
    const facts = { 'signs-told': 'headless' };
    expect(worth('hunter-ranking', facts)).toBe('raccoon=5 owl=4 weasel=4 fox=3 hawk=3');
    expect(worth('hunter-lead', facts)).toBe(1);
  });

  test('by day is never an owl, by night never a hawk', () => {
    const signs = 'feathers-scattered';
    expect(worth('likely-hunter', { 'signs-told': signs, 'told-by-day': 'yes' })).toBe('hawk');
    expect(points('owl', { 'signs-told': signs, 'told-by-day': 'yes' })).toBe(-1);
    expect(points('hawk', { 'signs-told': signs, 'told-by-night': 'yes' })).toBe(1);
  });

  test('is nobody when nothing speaks for anybody', () => {
    expect(worth('likely-hunter')).toBeNull();
    expect(worth('hunter-signs')).toBe(0);
    expect(worth('hunters-to-reckon-with')).toBe('');
  });

  test('has its points shown one by one, so that they can be added up again', () => {
    const facts = { 'signs-told': 'pulled-through-wire', 'told-by-day': 'yes', 'causes-told': 'raccoon' };
    expect(worth('likely-for', facts)).toBe('pulled-through-wire=3 usual=2 named=1');
    expect(worth('likely-against', facts)).toBe('by-day=-2');
    expect(worth('likely-points', facts)).toBe(4);
  });
});

describe('records', () => {
  test('of a sign count for fourteen days', () => {
    const state = { ...stateOf(), signs: [noted('digging', '2026-05-01')] };
    expect(worth('hunter-evidence', {}, state)).toBe('digging');
    expect(worth('hunter-evidence', {}, { ...state, on: '2026-05-15' })).toBe('');
  });

  test('of a loss to a hunter make it the one to guard against, unless another is named', () => {
    const state = lostTo('hawk', '2026-05-05');
    expect(worth('named-hunters', {}, state)).toBe('hawk');
    expect(worth('named-hunters', { 'causes-told': 'fox' }, state)).toBe('fox');
    expect(worth('likely-for', { 'signs-told': 'hawk-seen' }, state)).toBe(
      'hawk-seen=3 usual=2 took-birds=1',
    );
  });

  test('of a loss to sickness say nothing of hunters', () => {
    expect(worth('named-hunters', {}, lostTo('illness', '2026-05-05'))).toBe('');
  });
});

describe('the ways in', () => {
  test.each([
    ['hawk', 'comes-from-above', 'yes'],
    ['hawk', 'digs-in', 'no'],
    ['fox', 'digs-in', 'yes'],
    ['fox', 'is-protected', 'no'],
    ['owl', 'is-protected', 'yes'],
    ['rat', 'takes-chicks', 'yes'],
    ['dog', 'is-somebodys', 'yes'],
  ])('of the %s: %s is %s', (hunter, way, answer) => {
    expect(worth(way, { 'causes-told': hunter })).toBe(answer);
  });

  test('are those of all that are not ruled out', () => {
    // A missing head leaves the raccoon, the owl and the weasel: no one way in is enough to close.
    const facts = { 'signs-told': 'headless' };
    expect(worth('hunters-to-reckon-with', facts)).toBe('raccoon owl weasel');
    expect(['comes-from-above', 'slips-in', 'reaches-in'].map((way) => worth(way, facts))).toEqual([
      'yes',
      'yes',
      'yes',
    ]);
  });

  test('round the pens is twice length and width, for each pen', () => {
    const size = { on: '2026-05-02', line: 2, what: 'pen', value: 11.1, size: [3, 3.7] as const, said: '' };
    const two = { on: '2026-05-02', line: 3, what: 'pens', value: 2, size: null, said: '2' };
    const state = stateOf({ settings: { pen: [size], pens: [two] } });
    expect(worth('round-the-pens', {}, state)).toBeCloseTo(26.8, 10);
    expect(worth('round-the-pens')).toBeNull();
  });
});

const figure = book.figures['hunters/evidence']?.values[0]?.value as Record<string, Record<string, number>>;
const hunters = Object.keys(figure);
const signs = [...new Set(hunters.flatMap((hunter) => Object.keys(figure[hunter] ?? {})))];

test('every sign of the table has a name to be said by, and every hunter a cause', () => {
  expect(signs.filter((sign) => book.words.signs[sign] === undefined)).toEqual([]);
  expect(hunters.filter((hunter) => book.words.causes[hunter]?.class !== 'hunter')).toEqual([]);
});

test('naming a hunter never takes points from it', () => {
  fc.assert(
    fc.property(
      fc.subarray(signs, { minLength: 1, maxLength: 4 }),
      fc.constantFrom(...hunters),
      (seen, hunter) => {
        const facts = { 'signs-told': seen.join(' ') };
        expect(points(hunter, { ...facts, 'causes-told': hunter })).toBeGreaterThanOrEqual(
          points(hunter, facts),
        );
      },
    ),
    { numRuns: 60 },
  );
});

test('the order in which signs are told changes nothing', () => {
  fc.assert(
    fc.property(fc.shuffledSubarray(signs, { minLength: 2, maxLength: 4 }), (seen) => {
      expect(worth('hunter-ranking', { 'signs-told': [...seen].reverse().join(' ') })).toBe(
        worth('hunter-ranking', { 'signs-told': seen.join(' ') }),
      );
    }),
    { numRuns: 40 },
  );
});
