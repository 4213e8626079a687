import { describe, expect, test } from 'vitest';
import type { State, Supposition } from '../../../../engine/types.ts';
import { settingsOf } from '../../../helpers/settings-of.ts';
import { group, stateOf } from '../../../helpers/state-of.ts';
import { workOut, worth } from '../../../helpers/work-out.ts';

const wanted = (value: number): Supposition => ({ what: { fact: 'birds-wanted' }, value, adds: false });
const percent = (value: number): Supposition => ({ what: { fact: 'percent-told' }, value, adds: false });
const work = (state: State, fact: string, ...supposing: readonly Supposition[]) =>
  workOut(state, undefined, supposing).step(fact, null).value;
const empty = stateOf({ groups: [] });

/** A flock that is over: so many lost of 50, the rest processed after eight weeks. */
const past = (lost: number) =>
  stateOf({
    on: '2026-07-20',
    groups: [
      group({
        losses: [{ on: '2026-05-20', line: 3, count: lost, cause: 'unknown' }],
        processed: [{ on: '2026-06-26', line: 4, count: 50 - lost, dressed: null }],
      }),
    ],
  });

describe('the share lost', () => {
  test('by the table: 2 % on the way, then what is usual by the day they are ready', () => {
    const ready = Number(work(empty, 'order-ready-age'));
    expect(ready).toBeGreaterThan(49);
    expect(ready).toBeLessThan(60);
    expect(work(empty, 'box-loss')).toBeCloseTo(0.02, 10);
    const growing = Number(work(empty, 'growing-loss'));
    expect(growing).toBeLessThanOrEqual(0.08);
    expect(work(empty, 'order-loss')).toBeCloseTo(1 - 0.98 * (1 - growing), 10);
  });

  test('own boxes and own flocks pull on it, by their size', () => {
    const boxes = stateOf({ groups: [group({ boxed: 100, dead: 8 })] });
    expect(work(boxes, 'box-loss')).toBeCloseTo((2 + 8) / 200, 10);
    expect(Number(work(past(0), 'growing-loss'))).toBeLessThan(Number(work(empty, 'growing-loss')));
    expect(Number(work(past(10), 'growing-loss'))).toBeGreaterThan(Number(work(empty, 'growing-loss')));
  });

  test('a flock that lost many makes the order larger', () => {
    expect(Number(work(past(10), 'order', wanted(50)))).toBeGreaterThan(
      Number(work(empty, 'order', wanted(50))),
    );
  });
});

describe('what a share in the question means', () => {
  test.each([
    [0.95, 0.95, 0],
    [0.1, 0.9, 0.1],
    [0, 0.9, 0],
  ])('%d: %d sure, %d extra', (said, certainty, overage) => {
    expect(work(empty, 'certainty', percent(said))).toBe(certainty);
    expect(work(empty, 'overage', percent(said))).toBe(overage);
  });

  test('a setting holds where nothing was said', () => {
    const state = stateOf({ settings: settingsOf({ certainty: 0.99 }) });
    expect(work(state, 'certainty')).toBe(0.99);
    expect(work(state, 'certainty', percent(0.8))).toBe(0.8);
  });
});

test('an order, its extras, its chance and its neighbours belong together', () => {
  const facts = ['order', 'order-extras', 'order-one-fewer', 'order-two-more'] as const;
  const [order, extras, fewer, more] = facts.map((fact) => Number(work(empty, fact, wanted(40))));
  expect(extras).toBe((order ?? 0) - 40);
  expect([fewer, more]).toEqual([(order ?? 0) - 1, (order ?? 0) + 2]);
  const chances = ['chance-two-fewer', 'chance-one-fewer', 'order-chance', 'chance-two-more'].map((fact) =>
    Number(work(empty, fact, wanted(40))),
  );
  expect(chances).toEqual([...chances].sort((one, other) => one - other));
  expect(chances[1]).toBeLessThan(0.9);
  expect(chances[2]).toBeGreaterThanOrEqual(0.9);
});

describe('what the place takes at once', () => {
  const foot = 0.3048;
  const settings = settingsOf({
    brooder: 24 * foot ** 2,
    pen: 120 * foot ** 2,
    'freezer-free': 14 * 28.316846592,
  });
  const state = stateOf({ groups: [], settings });

  test('brooder at four weeks, pens at full weight, freezer in whole birds', () => {
    expect(work(state, 'brooder-takes')).toBe(32);
    expect(work(state, 'pens-take')).toBe(80);
    expect(work(state, 'freezer-takes')).toBe(77);
    expect(work(state, 'lot-limit')).toBe(32);
  });

  test('an order beyond it falls into lots', () => {
    expect(work(state, 'lots', wanted(50))).toBe(2);
    expect(Number(work(state, 'lot-size', wanted(50)))).toBeLessThanOrEqual(32);
  });

  test('unknown where nothing of the place is set', () => {
    expect(worth(empty, 'lot-limit')).toBeNull();
  });
});
