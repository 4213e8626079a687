/** What the demo's keeper has told so far; `ago` is in days, below zero for a forecast; `hatched` in days too. */

export interface DemoEntry {
  readonly ago: number;
  readonly kind: string;
  readonly [field: string]: unknown;
}

const settings: readonly DemoEntry[] = (
  [
    ['place', 'Fennick Hollow'],
    ['units-system', 'us'],
    ['brooder', '5 ft x 8 ft'],
    ['pen', '10 ft x 12 ft'],
    ['pens', '2'],
    ['pen-cover', 'yes'],
    ['ground', '60 ft x 150 ft'],
    ['bag', '50 lb'],
    ['feed-price', '19.50'],
    ['drinkers', '3'],
    ['drinker-size', '5 gal'],
    ['wanted-carcass', '4.5 lb'],
    ['eaters', '4'],
  ] as const
).map(([what, value]) => ({ ago: 34, kind: 'setting', what, value }));

const whitesFed = (ago: number, pounds: number): DemoEntry => ({
  ago,
  kind: 'feed',
  group: 'whites',
  amount: `${pounds} lb`,
  ration: 'grower',
});
const redsFed = (ago: number, pounds: number): DemoEntry => ({
  ago,
  kind: 'feed',
  group: 'reds',
  amount: `${pounds} lb`,
  ration: 'starter',
});
const night = (ago: number, low: number, high: number): DemoEntry => ({
  ago,
  kind: 'weather',
  low: `${low} F`,
  high: `${high} F`,
});
const forecast = (ago: number, low: number, high: number, rain: number): DemoEntry => ({
  ago,
  kind: 'weather',
  low: `${low} F`,
  high: `${high} F`,
  rain: `${rain} mm`,
  forecast: true,
});

/** In the order in which they were told. */
export const demoEntries: readonly DemoEntry[] = [
  ...settings,
  { ago: 31, kind: 'buy', what: 'feed', ration: 'starter', bags: '3 bag', amount: '150 lb', price: '60.00' },
  { ago: 30, kind: 'buy', what: 'chicks', count: 50, price: '127.50' },
  { ago: 30, kind: 'arrive', group: 'whites', count: 51, dead: 1, bird: 'fast', hatched: 32 },
  { ago: 28, kind: 'loss', group: 'whites', count: 1, cause: 'unknown' },
  { ago: 20, kind: 'buy', what: 'chicks', count: 25, price: '81.25' },
  { ago: 20, kind: 'arrive', group: 'reds', count: 26, bird: 'slow', hatched: 22 },
  { ago: 18, kind: 'weigh', group: 'whites', weights: ['0.9 lb', '0.8 lb', '1.0 lb', '0.9 lb', '0.9 lb'] },
  { ago: 15, kind: 'buy', what: 'feed', ration: 'grower', bags: '5 bag', amount: '250 lb', price: '97.50' },
  { ago: 13, kind: 'sign', group: 'whites', sign: 'heat-down', words: 'heat down for the whites' },
  { ago: 11, kind: 'loss', group: 'reds', count: 1, cause: 'unknown' },
  { ago: 10, kind: 'sign', group: 'whites', sign: 'heat-off', words: 'heat off for the whites' },
  { ago: 8, kind: 'out', group: 'whites', to: 'pen' },
  whitesFed(7, 12),
  redsFed(7, 2.5),
  { ago: 7, kind: 'move', group: 'whites' },
  night(6, 49, 68),
  whitesFed(6, 12),
  redsFed(6, 2.5),
  { ago: 6, kind: 'move', group: 'whites' },
  { ago: 5, kind: 'loss', group: 'whites', count: 1, cause: 'hawk' },
  night(5, 47, 66),
  whitesFed(5, 12.5),
  redsFed(5, 3),
  { ago: 5, kind: 'move', group: 'whites' },
  night(4, 50, 70),
  whitesFed(4, 13),
  redsFed(4, 3),
  { ago: 4, kind: 'move', group: 'whites' },
  { ago: 4, kind: 'weigh', group: 'whites', weights: ['2.4 lb', '2.2 lb', '2.6 lb', '2.1 lb', '2.5 lb'] },
  night(3, 52, 71),
  whitesFed(3, 13),
  redsFed(3, 3),
  { ago: 3, kind: 'move', group: 'whites' },
  { ago: 2, kind: 'sign', group: 'reds', sign: 'heat-down', words: 'heat down a little for the reds' },
  night(2, 51, 70),
  whitesFed(2, 13.5),
  redsFed(2, 3.5),
  { ago: 2, kind: 'move', group: 'whites' },
  { ago: 2, kind: 'share', who: 'the Marlows', count: 6, step: 'promised' },
  night(1, 50, 69),
  whitesFed(1, 14),
  redsFed(1, 3.5),
  { ago: 1, kind: 'move', group: 'whites' },
  { ago: 1, kind: 'sign', group: 'reds', sign: 'feathered', words: 'the reds are feathered on the back' },
  forecast(0, 48, 67, 0),
  forecast(-1, 46, 64, 0),
  forecast(-2, 51, 68, 3),
  redsFed(0, 3.5),
];
