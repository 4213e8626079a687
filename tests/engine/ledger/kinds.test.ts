/** Every entry kind: its example reads, its file is on the list, and what it does to the state. */
import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { kinds } from '../../../engine/ledger/index.ts';
import { type Line, ledgerOf, reds, stateOf, whites } from '../../helpers/ledger-of.ts';

// 1 lb = 0.45359237 kg, 1 ft = 0.3048 m, 1 mph = 0.44704 m/s: exact by definition (NIST Handbook 44, appendix C).
const POUND = 0.45359237;
const FOOT = 0.3048;

describe('kinds', () => {
  it('are all on the list', () => {
    const folder = new URL('../../../engine/ledger/kinds', import.meta.url).pathname;
    const files = readdirSync(folder).map((name) => name.replace('.ts', ''));
    const others = ['index', 'kind', 'take'];
    expect(kinds.map(({ kind }) => kind).sort()).toEqual(
      files.filter((name) => !others.includes(name)).sort(),
    );
  });

  it.each(kinds.map(({ kind, example }) => [kind, example]))(
    '%s: the example reads and holds each field by its declared name',
    (kind, example) => {
      const { entries, problems } = ledgerOf(example);
      expect(problems).toEqual([]);
      expect(entries.map((entry) => entry.kind)).toEqual([kind]);
    },
  );

  it('declare each field once and none of the envelope', () => {
    for (const { fields } of kinds) {
      const names = ['kind', 'on', 'written', 'by', ...fields.map(({ name }) => name)];
      expect(new Set(names).size).toBe(names.length);
    }
  });
});

describe('what entries do to the state', () => {
  it('arrive starts a group; loss, out, process and keep add to it', () => {
    const { groups } = stateOf(
      ledgerOf(
        { ...whites, hour: '06:30', sexes: 'cockerels' },
        { kind: 'loss', on: '2026-05-02', group: 'whites', count: 2, cause: 'hawk' },
        { kind: 'loss', on: '2026-05-03', group: 'whites', count: 1 },
        { kind: 'out', on: '2026-05-04', group: 'whites', 'days-only': true },
        { kind: 'out', on: '2026-05-06', group: 'whites', to: 'brooder' },
        { kind: 'process', on: '2026-06-02', group: 'whites', count: 12, dressed: '54 lb' },
        { kind: 'process', on: '2026-06-03', group: 'whites', count: 2, weights: ['4 lb', '5 lb'] },
        { kind: 'keep', on: '2026-06-04', group: 'whites', count: 3, until: '2026-08-01' },
      ),
    );
    expect(groups).toEqual([
      {
        name: 'whites',
        kind: 'fast',
        sexes: 'cockerels',
        hatched: '2026-04-07',
        hatchHour: '06:30',
        arrived: '2026-04-09',
        line: 1,
        boxed: 52,
        dead: 1,
        losses: [
          { on: '2026-05-02', line: 2, count: 2, cause: 'hawk' },
          { on: '2026-05-03', line: 3, count: 1, cause: 'unknown' },
        ],
        weighings: [],
        whereabouts: [
          { on: '2026-05-04', line: 4, place: 'pen', daysOnly: true },
          { on: '2026-05-06', line: 5, place: 'brooder', daysOnly: false },
        ],
        processed: [
          { on: '2026-06-02', line: 6, count: 12, dressed: 54 * POUND },
          { on: '2026-06-03', line: 7, count: 2, dressed: 4 * POUND + 5 * POUND },
        ],
        kept: [{ on: '2026-06-04', line: 8, count: 3, until: '2026-08-01' }],
      },
    ]);
  });

  it('weigh takes single weights, with mean and sample standard deviation, or a mean and a count', () => {
    const { groups } = stateOf(
      ledgerOf(
        whites,
        {
          kind: 'weigh',
          on: '2026-05-05',
          group: 'whites',
          weights: ['2 kg', '4 kg', '4 kg', '4 kg', '5 kg', '5 kg', '7 kg', '9 kg'],
        },
        { kind: 'weigh', on: '2026-05-06', group: 'whites', mean: '3 kg', count: 4 },
        { kind: 'weigh', on: '2026-05-07', group: 'whites', weights: ['3 kg'], count: 1 },
      ),
    );
    // The eight numbers have mean 5 and a sum of squares about it of 32 (plain arithmetic).
    expect(groups[0]?.weighings).toEqual([
      { on: '2026-05-05', line: 2, mean: 5, count: 8, spread: Math.sqrt(32 / 7) },
      { on: '2026-05-06', line: 3, mean: 3, count: 4, spread: null },
      { on: '2026-05-07', line: 4, mean: 3, count: 1, spread: null },
    ]);
  });

  it('a second telling of the weights must agree with the first', () => {
    const codes = (fields: object) =>
      ledgerOf({ kind: 'weigh', on: '2026-05-05', group: 'whites', ...fields }).problems.map(
        ({ code, data }) => [code, data.field],
      );
    expect(codes({ weights: ['3 kg', '4 kg'], count: 3 })).toEqual([['out-of-range', 'count']]);
    expect(codes({ mean: '3 kg' })).toEqual([['missing-field', 'count']]);
    expect(codes({ count: 3 })).toEqual([['missing-field', 'weights']]);
    expect(codes({ weights: [] })).toEqual([['out-of-range', 'weights']]);
    const process = { kind: 'process', on: '2026-06-02', group: 'whites', count: 2 };
    expect(ledgerOf({ ...process, weights: ['4 lb'] }).problems[0]?.data).toEqual({
      field: 'weights',
      found: 1,
      min: 2,
      max: 2,
    });
    expect(ledgerOf({ ...process, weights: ['4 lb', '5 lb'], dressed: '9 lb' }).problems[0]?.code).toBe(
      'two-forms',
    );
  });

  it('feed, buy, move, sign, share, eat and note are kept for the flock', () => {
    const state = stateOf(
      ledgerOf(
        { kind: 'feed', on: '2026-05-01', amount: '10 kg' },
        { kind: 'feed', on: '2026-05-02', group: 'whites', amount: '25 lb' },
        {
          kind: 'buy',
          on: '2026-05-03',
          what: 'feed',
          ration: 'grower',
          bags: '1.5 bags',
          amount: '75 lb',
          price: '29.25',
          group: 'whites',
        },
        { kind: 'buy', on: '2026-05-03', what: 'chicks', count: 52 },
        { kind: 'move', on: '2026-05-04', group: 'whites', distance: '12 ft', strip: 'north' },
        { kind: 'sign', on: '2026-05-05', sign: 'panting', count: 3, words: 'three in the sun' },
        { kind: 'share', on: '2026-05-06', who: 'Ada', count: 4 },
        { kind: 'share', on: '2026-06-06', who: 'Ada', count: 4, step: 'paid', paid: '80' },
        { kind: 'eat', on: '2026-07-04', count: 1, weight: '2 kg' },
        { kind: 'note', on: '2026-07-05', words: 'gate hinge needs oil' },
      ),
    );
    expect(state).toEqual({
      on: '2026-11-25',
      lines: 10,
      groups: [],
      feedings: [
        { on: '2026-05-01', line: 1, mass: 10, group: null },
        { on: '2026-05-02', line: 2, mass: 25 * POUND, group: 'whites' },
      ],
      purchases: [
        {
          on: '2026-05-03',
          line: 3,
          what: 'feed',
          ration: 'grower',
          mass: 75 * POUND,
          bags: 1.5,
          count: null,
          price: '29.25',
          group: 'whites',
        },
        {
          on: '2026-05-03',
          line: 4,
          what: 'chicks',
          ration: null,
          mass: null,
          bags: null,
          count: 52,
          price: null,
          group: null,
        },
      ],
      moves: [{ on: '2026-05-04', line: 5, group: 'whites', distance: 12 * FOOT, strip: 'north' }],
      signs: [
        { on: '2026-05-05', line: 6, sign: 'panting', count: 3, group: null, words: 'three in the sun' },
      ],
      weather: {},
      settings: {},
      shares: [
        { on: '2026-05-06', line: 7, who: 'Ada', count: 4, step: 'promised', paid: null },
        { on: '2026-06-06', line: 8, who: 'Ada', count: 4, step: 'paid', paid: '80' },
      ],
      eaten: [{ on: '2026-07-04', line: 9, count: 1, mass: 2 }],
      ownFigures: [],
      notes: [{ on: '2026-07-05', line: 10, words: 'gate hinge needs oil' }],
    });
  });

  it('weather is kept by day in base units; inches of rain are rain and not length', () => {
    const { weather } = stateOf(
      ledgerOf({
        kind: 'weather',
        on: '2026-05-03',
        low: '50 F',
        high: '68 F',
        rain: '0.5 in',
        wind: '10 mph',
        humidity: '80 %',
      }),
    );
    const noted = { on: '2026-05-03', line: 1 };
    expect(weather).toEqual({
      '2026-05-03': {
        on: '2026-05-03',
        low: { ...noted, value: expect.closeTo(10, 10) },
        high: { ...noted, value: expect.closeTo(20, 10) },
        rain: { ...noted, value: 12.7 },
        wind: { ...noted, value: 4.4704 },
        humidity: { ...noted, value: 0.8 },
      },
    });
  });

  it('weather that was seen is not replaced by a later forecast, and a forecast is replaced by either', () => {
    const low = (line: number, value: string, forecast?: boolean) => ({
      kind: 'weather',
      on: '2026-05-03',
      low: value,
      forecast,
      by: `line ${line}`,
    });
    const latest = (...lines: readonly Line[]) => stateOf(ledgerOf(...lines)).weather['2026-05-03']?.low;
    expect(latest(low(1, '5 C', true), low(2, '4 C', true))).toEqual({ on: '2026-05-03', line: 2, value: 4 });
    expect(latest(low(1, '5 C', true), low(2, '4 C'))).toEqual({ on: '2026-05-03', line: 2, value: 4 });
    expect(latest(low(1, '5 C'), low(2, '4 C', true))).toEqual({ on: '2026-05-03', line: 1, value: 5 });
    expect(latest(low(1, '5 C'), low(2, '4 C'))).toEqual({ on: '2026-05-03', line: 2, value: 4 });
    expect(ledgerOf({ kind: 'weather', on: '2026-05-03' }).problems.map(({ data }) => data.field)).toEqual([
      'low',
    ]);
  });

  it('a setting is read by what it measures, the latest last', () => {
    const set = (what: string, value: unknown) => ({ kind: 'setting', on: '2026-05-03', what, value });
    const { settings } = stateOf(
      ledgerOf(
        set('place', '12'),
        set('brooder', '4 x 6 ft'),
        set('ground', '10 ft x 12 ft'),
        set('ground', '0.25 ha'),
        set('lamps', '2'),
        set('lamps', 3),
        set('bag', '50 lb'),
        set('pen-cover', 'yes'),
        set('pen-cover', false),
        set('feed-price', '19.50'),
        set('process-on', '2026-06-02'),
      ),
    );
    const told = Object.values(settings).flatMap((each) =>
      each.map(({ what, value, size, said }) => [what, value, size, said]),
    );
    expect(told).toEqual([
      ['place', '12', null, '12'],
      ['brooder', 4 * FOOT * (6 * FOOT), [4 * FOOT, 6 * FOOT], '4 ft x 6 ft'],
      ['ground', 10 * FOOT * (12 * FOOT), [10 * FOOT, 12 * FOOT], '10 ft x 12 ft'],
      ['ground', 2500, null, '0.25 ha'],
      ['lamps', 2, null, '2'],
      ['lamps', 3, null, '3'],
      ['bag', 50 * POUND, null, '50 lb'],
      ['pen-cover', true, null, 'yes'],
      ['pen-cover', false, null, 'no'],
      ['feed-price', 19.5, null, '19.5'],
      ['process-on', '2026-06-02', null, '2026-06-02'],
    ]);
    const problems = ledgerOf(
      set('lamps', 'two'),
      set('pen-cover', 'sometimes'),
      set('feed-price', 'cheap'),
      set('brooder', '4 ft x 6 lb'),
      set('brooder', '0 x 6 ft'),
      set('bag', '5 gal'),
    ).problems;
    expect(problems.map(({ code }) => code)).toEqual([
      'wrong-type',
      'wrong-type',
      'bad-money',
      'wrong-dimension',
      'out-of-range',
      'wrong-dimension',
    ]);
  });

  it('an own figure keeps the unit of the keeper', () => {
    const entry = {
      kind: 'figure',
      on: '2026-05-03',
      figure: 'feed/bag',
      value: '20 kg',
      reason: 'the mill packs so',
    };
    expect(stateOf(ledgerOf(entry)).ownFigures).toEqual([
      {
        on: '2026-05-03',
        line: 1,
        figure: 'feed/bag',
        quantity: { value: 20, unit: 'kg' },
        reason: 'the mill packs so',
      },
    ]);
  });

  it('an own figure may be one cell of a table, for one group, without a reason', () => {
    const entry = {
      kind: 'figure',
      on: '2026-05-03',
      figure: 'pasture/lowest-night',
      at: '28',
      value: '55 F',
      group: 'reds',
    };
    expect(stateOf(ledgerOf(entry)).ownFigures).toEqual([
      {
        on: '2026-05-03',
        line: 1,
        figure: 'pasture/lowest-night',
        at: '28',
        quantity: { value: 55, unit: 'F' },
        group: 'reds',
        reason: null,
      },
    ]);
  });

  it('what is told of a group that never arrived goes to no other group', () => {
    const { groups } = stateOf(ledgerOf(reds, { kind: 'loss', on: '2026-05-02', group: 'rods', count: 2 }));
    expect(groups.map(({ losses }) => losses)).toEqual([[]]);
  });
});
