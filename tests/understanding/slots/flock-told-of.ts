/** The flock that the labelled lines speak of, opened as the program opens one: whites on grass, reds in the brooder. */
import type { Flock } from '../../../cli/talk/flock.ts';
import type { Lexicon } from '../../../cli/understand/lexicon.ts';
import { openText } from '../../../engine/index.ts';
import type { Rulebook } from '../../../engine/types.ts';

const settings: Readonly<Record<string, string>> = {
  'units-system': 'us',
  brooder: '5 ft x 8 ft',
  pen: '10 ft x 12 ft',
  pens: '2',
  ground: '60 ft x 150 ft',
  bag: '50 lb',
  'feed-price': '19.50',
  'feed-in-stock': '120 lb',
  drinkers: '3',
  'drinker-size': '5 gal',
  feeders: '2',
  lamps: '2',
  'room-temperature': '55 F',
  'wanted-carcass': '4.5 lb',
  freezer: '14 ft3',
  'freezer-free': '7 ft3',
  eaters: '4',
  helpers: '2',
};

const entries = [
  {
    kind: 'arrive',
    on: '2026-04-09',
    group: 'whites',
    count: 52,
    dead: 1,
    bird: 'fast',
    hatched: '2026-04-07',
  },
  ...Object.entries(settings).map(([what, value]) => ({ kind: 'setting', on: '2026-04-09', what, value })),
  { kind: 'loss', on: '2026-04-20', group: 'whites', count: 3, cause: 'cold' },
  { kind: 'arrive', on: '2026-04-22', group: 'reds', count: 30, bird: 'slow', hatched: '2026-04-21' },
  { kind: 'out', on: '2026-05-06', group: 'whites', to: 'pen' },
  { kind: 'feed', on: '2026-05-13', group: 'whites', amount: '14 lb' },
  { kind: 'weather', on: '2026-05-14', low: '48 F', high: '72 F', forecast: true },
];

/** Nothing can be written to it. */
export const flockToldOf = (book: Rulebook, lexicon: Lexicon): Flock => {
  const engine = openText(book, 'flock.jsonl', entries.map((entry) => `${JSON.stringify(entry)}\n`).join(''));
  return {
    book,
    lexicon,
    today: '2026-05-14',
    asOf: null,
    isAscii: true,
    canWrite: false,
    engine: () => engine,
    record: () => Promise.resolve({ lines: [], first: 0, problems: [], isWritten: false }),
  };
};
