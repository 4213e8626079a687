/** Five seasons as different as keepers meet them: what the weather does and what happens, by day of the season. */
import type { Script } from './keeper.ts';

export interface Season {
  readonly name: string;
  /** First day. */
  readonly first: string;
  readonly days: number;
  readonly script: Script;
}

type Events = Readonly<Record<number, readonly string[]>>;

const round = (value: number): number => Math.round(value);

/** A day's weather as a keeper would tell it. */
const weather = (low: number, high: number, rain: number | null = null): readonly string[] => [
  `low of ${round(low)} F tonight`,
  `high of ${round(high)} F today`,
  ...(rain === null ? [] : [`${rain} mm of rain today`]),
];

const place = (pen: string, pens: number, ground: string): readonly string[] => [
  'the brooder is 6 by 8 ft',
  `pen is ${pen}`,
  `we have ${pens} ${pens === 1 ? 'pen' : 'pens'}`,
  `the ground is ${ground}`,
  'bag is 50 lb',
  'bought 4 bags of starter at 19.50',
];

const scripted =
  (events: Events, weatherOn: (day: number) => readonly string[]): Script =>
  (day) => [...(events[day] ?? []), ...weatherOn(day)];

const every = (days: readonly number[], lines: (day: number) => readonly string[]): Events =>
  Object.fromEntries(days.map((day) => [day, lines(day)]));

/** Nights from 38 °F, days from 60 °F, both rising; a wet cold week in the middle. */
const spring: Season = {
  name: 'a spring batch of one kind',
  first: '2026-04-20',
  days: 63,
  script: scripted(
    {
      0: [
        ...place('10 by 12 ft', 1, '100 by 150 ft'),
        'the pen is covered',
        '50 whites hatched yesterday came this morning, 1 dead',
      ],
      1: ['the whites are piled up under the lamp'],
      2: ['the whites are spread evenly', 'lost one white, too weak'],
      14: ['bought 12 bags of grower at 20'],
      21: ['weighed 8 whites: 1.5 1.6 1.4 1.7 1.5 1.6 1.4 1.5'],
      24: ['whites are fully feathered'],
      35: ['weighed 8 whites: 3.1 3.4 2.9 3.3 3.6 3.0 3.2 3.1'],
      42: ['bought 14 bags of grower at 20.50'],
      49: ['weighed 8 whites: 5.0 5.4 4.9 5.3 5.6 5.0 5.2 5.1'],
    },
    (day) => weather(38 + day / 3, 60 + day / 4, day >= 27 && day <= 31 ? 14 : 0),
  ),
};

/** Nights about freezing at first; a few birds, kept back longer. */
const mildWinter: Season = {
  name: 'a small batch in a mild winter',
  first: '2026-01-12',
  days: 63,
  script: scripted(
    {
      0: [
        ...place('8 by 8 ft', 1, '60 by 120 ft'),
        'the pen is covered',
        '20 whites hatched yesterday came this morning, none dead',
      ],
      16: ['bought 6 bags of grower at 21'],
      23: ['whites are fully feathered'],
      28: ['weighed 6 whites: 2.1 2.3 2.0 2.4 2.2 2.1'],
      44: ['bought 6 bags of grower at 21'],
      48: ['weighed 6 whites: 4.0 4.4 3.9 4.2 4.5 4.1'],
    },
    (day) => weather(33 + (day % 7), 48 + (day % 5)),
  ),
};

/** Days to 98 °F when the birds are heavy. */
const hotAugust: Season = {
  name: 'heavy birds in a hot August',
  first: '2026-07-01',
  days: 56,
  script: scripted(
    {
      0: [
        ...place('10 by 12 ft', 1, '120 by 150 ft'),
        'the pen is covered',
        '45 whites hatched yesterday came this morning, 2 dead',
      ],
      13: ['bought 12 bags of grower at 19'],
      28: ['weighed 7 whites: 2.6 2.8 2.5 2.7 3.0 2.6 2.7'],
      40: ['bought 12 bags of grower at 19'],
      45: ['lost 2 whites to heat'],
      46: ['weighed 7 whites: 5.0 5.4 4.9 5.3 5.6 5.0 5.2'],
    },
    (day) => weather(64 + (day % 4), day >= 38 ? 92 + (day % 7) : 84 + (day % 5)),
  ),
};

/** An open pen and a hawk that learns. */
const hawkCountry: Season = {
  name: 'slow birds where hawks hunt',
  first: '2026-05-01',
  days: 70,
  script: scripted(
    {
      0: [
        ...place('10 by 10 ft', 1, '100 by 120 ft'),
        'the pen is not covered',
        '30 slow reds hatched yesterday came this morning',
      ],
      18: ['bought 8 bags of grower at 20'],
      26: ['reds are fully feathered'],
      35: ['weighed 6 reds: 2.2 2.4 2.1 2.5 2.3 2.2'],
      40: ['lost 2 reds to a hawk'],
      42: ['lost a red to a hawk'],
      43: ['the pen is covered'],
      47: ['bought 8 bags of grower at 20'],
      60: ['weighed 6 reds: 4.0 4.3 3.9 4.4 4.2 4.1'],
    },
    (day) => weather(46 + day / 4, 66 + day / 4),
  ),
};

/** Fast and slow birds three weeks apart, two pens, the fast ones done first. */
const twoKinds: Season = {
  name: 'two kinds three weeks apart',
  first: '2026-05-10',
  days: 77,
  script: scripted(
    {
      0: [
        ...place('10 by 12 ft', 2, '150 by 200 ft'),
        'the pen is covered',
        '40 whites hatched yesterday came this morning, none dead',
      ],
      15: ['bought 10 bags of grower at 20'],
      21: ['25 slow reds hatched yesterday came this morning, 1 dead'],
      24: ['whites are fully feathered'],
      ...every([28, 42], (day) => [
        day === 28
          ? 'weighed 6 whites: 2.3 2.5 2.2 2.6 2.4 2.3'
          : 'weighed 6 whites: 4.4 4.7 4.2 4.8 4.5 4.4',
      ]),
      40: ['bought 16 bags of grower at 20'],
      47: ['reds are fully feathered'],
      58: ['processed 40 whites, 184 lb in all'],
      60: ['weighed 6 reds: 2.3 2.5 2.2 2.6 2.4 2.3'],
      62: ['bought 6 bags of grower at 20'],
    },
    (day) => weather(48 + day / 4, 68 + day / 5, day % 11 === 5 ? 6 : 0),
  ),
};

export const seasons: readonly Season[] = [spring, mildWinter, hotAugust, hawkCountry, twoKinds];
