/** What batches cost: which purchases count, how they are shared, and what comes of it by the bird and by weight. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Group, Purchase, State } from '../../../../engine/types.ts';
import { bought, setTo } from '../../../helpers/bought.ts';
import { group, stateOf } from '../../../helpers/state-of.ts';
import { workOut, worth } from '../../../helpers/work-out.ts';

const pound = 0.45359237;
const bag = { bags: 1, mass: 20 } as const;

/** Forty whites, all processed on 1 July at 2 kg each. */
const done = (more: Partial<Group> = {}): Group =>
  group({
    boxed: 40,
    processed: [{ on: '2026-07-01', line: 5, count: 40, dressed: 80 }],
    whereabouts: [{ on: '2026-05-22', line: 4, place: 'pen', daysOnly: false }],
    ...more,
  });

const whole: readonly Purchase[] = [
  bought('2026-04-20', 'chicks', '96.00', { count: 40 }),
  bought('2026-05-02', 'feed', '243.00', { ration: 'grower', bags: 12, mass: 270 }),
  bought('2026-05-02', 'bedding', '21.00'),
  bought('2026-05-10', 'gear', '60.00'),
  bought('2026-07-03', 'processing', '90.00'),
  bought('2026-06-01', 'nails', '3.05'),
];

const state = (more: Partial<State> = {}): State =>
  stateOf({ on: '2026-07-10', groups: [done()], purchases: whole, ...more });

const money = (given: State, fact: string, name: string | null = null) => worth(given, fact, given.on, name);

describe('a batch that is done', () => {
  test('costs what was paid for it, gear by its part, line by line', () => {
    const lines = ['chicks', 'feed', 'bedding', 'heat', 'gear', 'processing', 'labour', 'other'];
    expect(Object.fromEntries(lines.map((each) => [each, money(state(), `cost-${each}`, 'whites')]))).toEqual(
      {
        chicks: 96,
        feed: 243,
        bedding: 21,
        heat: 0,
        gear: 12,
        processing: 90,
        labour: 0,
        other: 3.05,
      },
    );
    expect(money(state(), 'projected')).toBe(465.05);
    expect(money(state(), 'spent')).toBe(513.05);
    expect(money(state(), 'cost-per-bird')).toBe(11.63);
    expect(Number(money(state(), 'cost-per-weight'))).toBeCloseTo(465.05 / 80, 12);
  });

  test('says what is not counted and what was taken for granted', () => {
    const workings = workOut(state());
    workings.step('projected', null);
    workings.step('spent', null);
    const assumed = workings.steps().flatMap((step) => step.assumed.map(({ id }) => id));
    expect([...new Set(assumed)].sort()).toEqual([
      'feed-as-bought',
      'grows-as-planned',
      'heat-not-counted',
      'own-time-not-counted',
    ]);
  });

  test('counts the lamps at the price of electricity: 20 days, 2 lamps of 250 W, 240 kWh', () => {
    const settings = { 'electricity-price': setTo('electricity-price', 0.15) };
    expect(money(state({ settings }), 'heat-days', 'whites')).toBe(20);
    expect(money(state({ settings }), 'cost-heat', 'whites')).toBe(36);
    const billed = [...whole, bought('2026-06-01', 'electricity', '25.00')];
    expect(money(state({ settings, purchases: billed }), 'cost-heat', 'whites')).toBe(25);
  });

  test('counts time where it has a price: 60 days of a quarter hour', () => {
    const settings = { 'labour-price': setTo('labour-price', 12) };
    expect(money(state({ settings }), 'cost-labour', 'whites')).toBe(180);
  });

  test('counts a fee for each bird where no bill is on record', () => {
    const settings = { 'processing-fee': setTo('processing-fee', 5) };
    const purchases = whole.filter(({ what }) => what !== 'processing');
    expect(money(state({ settings, purchases }), 'cost-processing', 'whites')).toBe(200);
    expect(money(state({ settings }), 'cost-processing', 'whites')).toBe(90);
  });

  test('names the lines that move it most', () => {
    const ranked = ['first-line', 'second-line', 'third-line'].map((each) => money(state(), each));
    expect(ranked).toEqual(['feed', 'chicks', 'processing']);
    expect(Number(money(state(), 'first-line-share'))).toBeCloseTo(243 / 465.05, 12);
  });

  test('spreads its losses over those that are left', () => {
    const losses = [{ on: '2026-05-20', line: 6, count: 8, cause: 'hawk' }];
    const processed = [{ on: '2026-07-01', line: 5, count: 32, dressed: 64 }];
    const given = state({ groups: [done({ losses, processed })] });
    expect(money(given, 'cost-per-bird')).toBe(14.53);
    expect(money(given, 'cost-of-losses')).toBe(2.9);
  });
});

describe('purchases', () => {
  test('made after the last bird are for birds to come, but for late bills', () => {
    const on = '2026-07-20';
    const late = [bought('2026-07-05', 'feed', '40.00', bag), bought('2026-07-16', 'processing', '9.00')];
    expect(money(state({ on, purchases: [...whole, ...late] }), 'spent')).toBe(513.05);
    const inTime = [...whole, bought('2026-07-15', 'processing', '9.00')];
    expect(money(state({ on, purchases: inTime }), 'spent')).toBe(522.05);
  });

  test('without a price count for nothing, and that is said', () => {
    const given = state({ purchases: [...whole, bought('2026-06-01', 'twine', null)] });
    const step = workOut(given).step('spent', null);
    expect([step.value, step.assumed.map(({ id, values }) => [id, values.times?.value])]).toEqual([
      513.05,
      [['bought-without-price', 1]],
    ]);
  });

  test('of chicks belong to the batch with as many in the box', () => {
    const reds = group({ name: 'reds', kind: 'slow', boxed: 25, arrived: '2026-05-03', line: 2 });
    const purchases = [bought('2026-04-20', 'chicks', '75.00', { count: 25 }), ...whole];
    const given = state({ groups: [done(), reds], purchases, on: '2026-05-20' });
    expect(money(given, 'cost-chicks', 'reds')).toBe(75);
    expect(money(given, 'cost-chicks', 'whites')).toBe(96);
  });

  test('of batches one after the other are not mixed, nor does a later batch change what an earlier one cost', () => {
    const reds = group({
      name: 'reds',
      kind: 'slow',
      boxed: 25,
      arrived: '2026-07-20',
      hatched: '2026-07-19',
    });
    const later = [...whole, bought('2026-07-20', 'feed', '126.00', { bags: 6, mass: 135 })];
    const given = state({ groups: [done(), reds], purchases: later, on: '2026-07-25' });
    const lines = ['cost-feed', 'cost-bedding', 'cost-processing', 'cost-chicks'];
    expect(lines.map((each) => money(given, each, 'whites'))).toEqual([243, 21, 90, 96]);
    expect(['cost-bedding', 'cost-processing'].map((each) => money(given, each, 'reds'))).toEqual([0, 0]);
  });

  test('of gear are borne by five seasons', () => {
    const years = [2026, 2027, 2028, 2029, 2030, 2031];
    const groups = years.map((year) =>
      done({
        name: `whites ${year}`,
        hatched: `${year}-05-01`,
        arrived: `${year}-05-02`,
        processed: [{ on: `${year}-07-01`, line: 5, count: 40, dressed: 80 }],
      }),
    );
    const given = state({ groups, on: '2031-08-01' });
    expect(groups.map(({ name }) => money(given, 'cost-gear', name))).toEqual([12, 12, 12, 12, 12, 0]);
  });
});

describe('a batch that is still growing', () => {
  const growing = (more: Partial<State> = {}) =>
    stateOf({
      on: '2026-05-20',
      purchases: [
        bought('2026-05-02', 'chicks', '96.00', { count: 50 }),
        bought('2026-05-02', 'feed', '48.00', { bags: 2, mass: 100 * pound }),
      ],
      ...more,
    });

  test('costs what is paid and the bags still to buy', () => {
    const [bags, price, projected, spent] = ['bags-to-end', 'bag-price', 'projected', 'spent'].map((each) =>
      Number(money(growing(), each)),
    );
    expect([price, spent]).toEqual([24, 144]);
    expect(projected).toBe(144 + 24 * Number(bags));
    expect(bags).toBeGreaterThan(5);
  });

  test('asks for the price of feed where none is on record', () => {
    const purchases = [bought('2026-05-02', 'chicks', '96.00', { count: 50 })];
    const step = workOut(growing({ purchases })).step('projected', null);
    expect(step.value).toBeNull();
    expect(money(growing({ purchases }), 'spent')).toBe(96);
  });

  test('counts all that they eat at the price set where no feed was bought', () => {
    const purchases = [bought('2026-05-02', 'chicks', '96.00', { count: 50 })];
    const settings = { 'feed-price': setTo('feed-price', 20), bag: setTo('bag', 20) };
    const given = growing({ purchases, settings });
    const feed = Number(money(given, 'feed-in-all', 'whites'));
    expect(Number(money(given, 'projected'))).toBeCloseTo(96 + feed, 2);
  });

  test('costs no less when a bag costs more, and no less for more birds', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1500, max: 3000 }), fc.integer({ min: 10, max: 60 }), (cents, birds) => {
        const at = (price: number, boxed: number): number =>
          Number(
            money(
              growing({
                groups: [group({ boxed })],
                settings: { 'feed-price': setTo('feed-price', price / 100, '2026-05-19') },
              }),
              'projected',
            ),
          );
        expect(at(cents + 100, birds)).toBeGreaterThanOrEqual(at(cents, birds));
        expect(at(cents, birds + 1)).toBeGreaterThanOrEqual(at(cents, birds));
      }),
      { numRuns: 8 },
    );
  });
});

describe('two batches at the same time', () => {
  test('cost together what one of all their birds costs, and what was paid is shared to the hundredth', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 39 }), (some) => {
        const half = (name: string, boxed: number, line: number): Group =>
          done({
            name,
            boxed,
            line,
            processed: [{ on: '2026-07-01', line, count: boxed, dressed: boxed * 2 }],
          });
        const parted = state({ groups: [half('whites', some, 1), half('others', 40 - some, 2)] });
        expect(money(parted, 'projected')).toBe(465.05);
        expect(money(parted, 'cost-per-bird')).toBe(11.63);
        const paid = ['whites', 'others'].map((name) => Number(money(parted, 'batch-paid', name)));
        expect(Math.round(paid.reduce((sum, each) => sum + each, 0) * 100)).toBe(51305);
      }),
      { numRuns: 12 },
    );
  });
});

describe('what was bought for one batch', () => {
  const half = (name: string, line: number): Group =>
    done({ name, line, boxed: 20, processed: [{ on: '2026-07-01', line, count: 20, dressed: 40 }] });
  const groups = [half('whites', 1), half('reds', 2)];
  const costs = (purchases: readonly Purchase[], fact: string) =>
    ['whites', 'reds'].map((name) => money(state({ groups, purchases }), fact, name));

  test('is borne by it alone, all else by both', () => {
    const purchases = [
      bought('2026-05-02', 'bedding', '20.00'),
      bought('2026-05-02', 'bedding', '7.00', { group: 'reds' }),
    ];
    expect(costs(purchases, 'cost-bedding')).toEqual([10, 17]);
    expect(costs(purchases, 'batch-paid')).toEqual([10, 17]);
  });

  test('of gear is borne over its seasons', () => {
    const gear = [bought('2026-05-10', 'gear', '60.00', { group: 'reds' })];
    expect(costs(gear, 'cost-gear')).toEqual([0, 12]);
  });

  test('of feed leaves the others the larger part of what was bought for all', () => {
    const common = bought('2026-05-02', 'feed', '100.00', { bags: 5, mass: 113 });
    const own = bought('2026-05-02', 'feed', '50.00', { bags: 2.5, mass: 56, group: 'reds' });
    expect(costs([common], 'cost-feed')).toEqual([50, 50]);
    const [whites, reds] = costs([common, own], 'cost-feed').map(Number);
    expect(Number(whites) + Number(reds)).toBe(150);
    expect(Number(whites)).toBeGreaterThan(60);
    expect(Number(reds)).toBeLessThan(90);
  });

  test('goes with a batch of its name, whenever it was bought', () => {
    const late = [bought('2026-07-09', 'feed', '40.00', { ...bag, group: 'reds' })];
    expect(costs(late, 'batch-paid')).toEqual([0, 40]);
  });
});
