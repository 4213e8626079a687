/** What the bare numbers of a question count: birds, or the gear they are kept with. */
import type { GroupSpan, NumberSpan } from '../spans.ts';
import type { Token } from '../tokens.ts';

const birds = new Set(
  'bird birds chick chicks chicken chickens broiler broilers hen hens head whites reds babies peeps poult layers cockerels pullets'.split(
    ' ',
  ),
);

const gear: Readonly<Record<string, string>> = {
  feeder: 'feeders',
  feeders: 'feeders',
  trough: 'feeders',
  troughs: 'feeders',
  drinker: 'drinkers',
  drinkers: 'drinkers',
  waterer: 'drinkers',
  waterers: 'drinkers',
  fount: 'drinkers',
  founts: 'drinkers',
  fountain: 'drinkers',
  fountains: 'drinkers',
  lamp: 'lamps',
  lamps: 'lamps',
  bulb: 'lamps',
  bulbs: 'lamps',
  pen: 'pens',
  pens: 'pens',
  tractor: 'pens',
  tractors: 'pens',
  batch: 'batches',
  batches: 'batches',
  lots: 'batches',
  rounds: 'batches',
  helper: 'helpers',
  helpers: 'helpers',
  hands: 'hands',
  crew: 'hands',
};

/** Words after which a new thing begins, so that what stands behind them is not what is counted. */
const turns = new Set(
  'in on at for with by to of under from and or per a an the is are was were be'.split(' '),
);

/** How far behind its number a thing may stand: "one long 36 inch trough". */
const reach = 4;

/** The bird or gear word that a number counts; null when it counts neither. */
const thingAfter = (
  tokens: readonly Token[],
  groups: readonly GroupSpan[],
  number: NumberSpan,
): string | null => {
  for (const [n, { word }] of tokens.slice(number.to, number.to + reach).entries()) {
    if (turns.has(word)) return null;
    if (birds.has(word) || groups.some((span) => span.from === number.to + n)) return 'birds';
    const found = Object.hasOwn(gear, word) ? gear[word] : undefined;
    if (found !== undefined) return found;
  }
  return null;
};

export interface Counted {
  /** The number said of birds outright: "50 chicks". */
  readonly birds: number | null;
  /** Gear → how many of it: "one feeder". */
  readonly gear: Readonly<Record<string, number>>;
  /** The whole number that may stand for birds: one said of them, else the first that is not said of gear. */
  readonly count: number | null;
}

/** What the whole numbers of a line count. */
export const findCounted = (
  tokens: readonly Token[],
  numbers: readonly NumberSpan[],
  groups: readonly GroupSpan[],
): Counted => {
  const whole = numbers
    .filter((span) => Number.isInteger(span.value))
    .map((span) => ({ value: span.value, of: thingAfter(tokens, groups, span) }));
  const ofBirds = whole.find((each) => each.of === 'birds')?.value ?? null;
  const free = whole.find((each) => each.of === null)?.value ?? null;
  return {
    birds: ofBirds,
    gear: Object.fromEntries(
      whole.flatMap(({ value, of }) => (of === null || of === 'birds' ? [] : [[of, value]])),
    ),
    count: ofBirds ?? free,
  };
};
