/** Fetched forecasts in the ledger: what outranks them, which of them counts, and what one must say of itself. */
import { describe, expect, test } from 'vitest';
import { ledgerOf, stateOf } from '../../helpers/ledger-of.ts';

type Line = Readonly<Record<string, unknown>> & { readonly kind: string; readonly on: string };

const on = '2026-05-14';
const fetchedAt = (time: string, more: Readonly<Record<string, unknown>> = {}): Line => ({
  kind: 'weather',
  on,
  low: '3 C',
  forecast: true,
  fetched: `${on}T${time}:00-04:00`,
  provider: 'us',
  ...more,
});
const told: Line = { kind: 'weather', on, low: '5 C', forecast: true };
const seen: Line = { kind: 'weather', on, low: '7 C' };

const lowAfter = (...lines: readonly Line[]): unknown => stateOf(ledgerOf(...lines)).weather[on]?.low;

describe('what counts', () => {
  test.each<readonly [string, readonly Line[], object]>([
    [
      'a fetched forecast, with its time',
      [fetchedAt('07:12')],
      { on, line: 1, value: 3, fetched: `${on}T07:12:00-04:00` },
    ],
    ['what a keeper told as forecast, before it', [told, fetchedAt('07:12')], { on, line: 1, value: 5 }],
    ['what a keeper told as forecast, after it', [fetchedAt('07:12'), told], { on, line: 2, value: 5 }],
    ['what was seen, before it', [seen, fetchedAt('07:12'), told], { on, line: 1, value: 7 }],
    ['what was seen, after it', [fetchedAt('07:12'), told, seen], { on, line: 3, value: 7 }],
    [
      'the later one',
      [fetchedAt('07:12'), fetchedAt('13:00', { low: '2 C' })],
      { on, line: 2, value: 2, fetched: `${on}T13:00:00-04:00` },
    ],
    [
      'the later one also where two copies were merged the other way round',
      [fetchedAt('13:00', { low: '2 C' }), fetchedAt('07:12')],
      { on, line: 1, value: 2, fetched: `${on}T13:00:00-04:00` },
    ],
    [
      'the later one by the clock of the world, not by its digits',
      [fetchedAt('07:12'), fetchedAt('07:30', { low: '2 C', fetched: `${on}T07:30:00+02:00` })],
      { on, line: 1, value: 3, fetched: `${on}T07:12:00-04:00` },
    ],
  ])('%s', (_, lines, low) => {
    expect(lowAfter(...lines)).toEqual(low);
  });

  test('each value by itself: a low that was seen leaves the fetched rain', () => {
    const day = stateOf(ledgerOf(fetchedAt('07:12', { rain: '4 mm' }), seen)).weather[on];
    expect([day?.low?.value, day?.rain?.value]).toEqual([7, 4]);
  });
});

const codesOf = (line: Line): readonly unknown[] =>
  ledgerOf(line).problems.map(({ code, data }) => [code, data.field]);

test.each<readonly [string, Line, readonly unknown[]]>([
  [
    'says that it is a forecast',
    { ...fetchedAt('07:12'), forecast: undefined },
    [['missing-field', 'forecast']],
  ],
  ['says from whom it is', { ...fetchedAt('07:12'), provider: undefined }, [['missing-field', 'provider']]],
  ['says when it was fetched', { ...fetchedAt('07:12'), fetched: undefined }, [['missing-field', 'fetched']]],
  ['says it as a time', { ...fetchedAt('07:12'), fetched: '2026-05-14' }, [['bad-time', 'fetched']]],
  ['may foretell a night warmer than its day', { ...fetchedAt('07:12'), high: '1 C' }, []],
])('a fetched forecast %s', (_, line, codes) => {
  expect(codesOf(line)).toEqual(codes);
});
