/** Whether a question with a what-if supposes what its label says: the right thing with the right value, as the engine is handed it. */
import type { Flock } from '../../../cli/talk/flock.ts';
import { toRequest } from '../../../cli/talk/to-request.ts';
import type { Reading } from '../../../cli/understand/types.ts';
import { known } from '../../../engine/index.ts';
import type { Rulebook, Supposition } from '../../../engine/types.ts';
import { dimensionOf, toBase, unitOf } from '../../../engine/units.ts';
import { daysMeant } from './day-meant.ts';
import type { Fault } from './judged.ts';
import { isNear, kilogramsOf, numberOf, type Slots, textOf } from './label.ts';

/** What a label's `changed` may be laid over here: facts by their ids, records by their kinds. Whatever is not named cannot be judged. */
const meant: Readonly<Record<string, readonly string[]>> = {
  eaters: ['eaters'],
  'birds eaten per week': ['birds-a-week', 'eating-rate'],
  'birds wanted': ['birds-wanted', 'alive', 'birds-to-last', 'promised-in-all', 'share'],
  certainty: ['certainty', 'percent-told'],
  losses: ['alive', 'lost', 'order-loss', 'loss-told', 'growing-loss', 'loss', 'lost-asked', 'percent-told'],
  'start date': ['season-day', 'season-month', 'chicks-due', 'chicks-on', 'on'],
  'meat wanted by': ['season-day', 'table-until', 'yield-on', 'on'],
  'feed price': ['bag-price'],
  'price asked': ['asked-a-bird', 'asked-a-weight'],
  labour: ['labour-price'],
  'bag size': ['bag-mass'],
  'feed in stock': ['feed-left', 'feed-in-stock'],
  'night low': ['night-low', 'tonight-low', 'batch-night', 'surroundings', 'coldest-air'],
  high: ['today-high', 'temperature-told', 'process-high'],
  rain: ['rain-soon', 'rain-today', 'rain-said', 'rain-lately'],
  wind: ['wind-soon', 'wind-today', 'wind-said'],
  birds: [
    'alive',
    'chicks-coming',
    'birds-wanted',
    'sharing',
    'trough-birds',
    'birds-to-freeze',
    'birds-on-the-day',
    'birds-told',
    'birds-asked-about',
    'keep-asked',
    'order',
  ],
  'pen size': ['pen-area', 'room-area'],
  'brooder size': ['brooder-floor', 'room-area'],
  ground: ['ground-area'],
  'freezer room': ['freezer-free', 'freezer-size'],
  lamps: ['lamps-there'],
  'room temperature': ['surroundings', 'room-temperature', 'night-low'],
  feeders: ['feeders', 'feeder-length', 'trough-length'],
  drinkers: ['drinkers'],
  'drinker size': ['drinker-size'],
  age: ['age', 'kept-age', 'yield-age'],
  'age at processing': ['age', 'process-on', 'process-date', 'yield-age', 'process-booked', 'on'],
  'processing date': ['process-date', 'process-booked', 'process-on', 'yield-on', 'season-day', 'on'],
  'wanted carcass': ['wanted-carcass', 'carcass-told', 'weight-told', 'carcass-to-freeze', 'table-weight'],
  hands: ['hands', 'helpers'],
  gear: ['plucker'],
  'start time': ['process-at', 'process-start'],
  'birds kept': ['keep-asked', 'kept-back', 'keep'],
  signs: ['signs-told', 'causes-told', 'sick-birds', 'sign'],
  'next purchase': ['buy', 'feed-left'],
  'pen moves': ['moves-a-day'],
};

/** `10 x 12`, `4 by 4`, as the product of its sides. */
const sizeOf = (label: unknown): number | null => {
  const sides = /(\d+(?:\.\d+)?)\D{0,12}?(?:x|by|×)\s*(\d+(?:\.\d+)?)/.exec(String(label));
  return sides === null ? null : Number(sides[1]) * Number(sides[2]);
};

const clockOf = (value: unknown): number | null => {
  const hour = /^(\d\d):00$/.exec(String(value))?.[1];
  return hour === undefined ? null : Number(hour) % 12;
};

const namesDay = (label: unknown): boolean =>
  /\d(?:st|nd|rd|th)|\d (?:june|july|may|aug|sept)|(?:june|july|may|august|september) \d|day$|tomorrow/i.test(
    String(label),
  ) && daysMeant(label, '2026-05-14') !== null;

/** Whether a line can be judged: its label changes something that is named above, to a number, a size or a day. */
export const canJudge = (slots: Slots): boolean => {
  const changed = textOf(slots.changed);
  const value = slots.value ?? slots.delta;
  if (changed === null || meant[changed] === undefined || value === undefined) return false;
  return typeof value === 'number' || sizeOf(value) !== null || namesDay(value);
};

interface Laid {
  readonly over: string;
  readonly supposition: Supposition;
  /** Base units → the number. */
  readonly value: unknown;
}

const laidOver = (supposition: Supposition): readonly Laid[] => {
  const { what, value } = supposition;
  if ('fact' in what) return [{ over: what.fact, supposition, value }];
  if ('figure' in what) return [{ over: what.figure, supposition, value }];
  if ('entry' in what) {
    const { kind, ...fields } = what.entry as { kind: string; [field: string]: unknown };
    return [
      { over: kind, supposition, value: fields.count ?? fields.bags ?? fields.value ?? fields.amount },
      ...(kind === 'setting' ? [{ over: String(fields.what), supposition, value: fields.value }] : []),
    ];
  }
  return [];
};

const unitWords: Readonly<Record<string, string>> = {
  degrees: 'F',
  degree: 'F',
  '%': 'percent',
  'per cent': 'percent',
  pounder: 'lb',
  c: 'C',
  f: 'F',
  weeks: 'week',
  wks: 'week',
  wk: 'week',
  days: 'day',
  d: 'day',
};

/** The label's number in base units, in every way in which it can be meant; a number without a unit as it is shown here. */
const wantedIn = (
  book: Rulebook,
  fact: string,
  value: number,
  unit: string | null,
  isStep: boolean,
): readonly number[] => {
  const of = known.facts.find(({ id }) => id === fact)?.unit ?? null;
  const plain = [value];
  if (of === null || unitOf(book.units, of) === undefined) return plain;
  const dimension = dimensionOf(book.units, of);
  const said =
    unit === null ? null : (unitWords[unit.toLowerCase()] ?? unit.toLowerCase().replace(/^(?:\$|£|€).*/, ''));
  const named = book.units.list.filter(
    (each) => each.dimension === dimension && (each.id === said || each.words.includes(said ?? '')),
  );
  const shown = [book.units.shown[dimension]?.us, book.units.shown[dimension]?.metric, of];
  const ids = named.length > 0 ? named.map(({ id }) => id) : shown.filter((id) => id !== undefined);
  const base = ids.map(
    (id) =>
      toBase(book.units, { value, unit: id }) - (isStep ? toBase(book.units, { value: 0, unit: id }) : 0),
  );
  // Days may be counted in weeks, and shares said in percent.
  const weight = dimension === 'mass' ? kilogramsOf(value, unit) : null;
  const weekly = dimension === 'pace' && /month/.test(unit ?? '') ? [(value * 12) / 52] : [];
  return [
    ...plain,
    ...base,
    ...weekly,
    ...(weight === null ? [] : [weight]),
    ...(dimension === 'time' ? [value * 7] : []),
    ...(dimension === 'ratio' ? [value / 100] : []),
  ];
};

/** A unit that stands in the words; one that only the voice tells is not held against the program. */
const unitSaid = (slots: Slots, text: string): string | null => {
  const unit = textOf(slots.unit);
  return unit !== null &&
    /^[CF]$|°C|°F|^c$|^f$|^kg$|^lb$|^m$/.test(unit) &&
    !new RegExp(`\\d ?°? ?${unit.replace('°', '')}\\b|degrees ${unit}`, 'i').test(text)
    ? null
    : unit;
};

const isValue = (book: Rulebook, { over, supposition, value }: Laid, slots: Slots, text: string): boolean => {
  const unit = unitSaid(slots, text);
  const size = sizeOf(slots.value);
  const delta = numberOf(slots.delta);
  const wanted = numberOf(slots.value);
  const found = typeof value === 'number' ? value : numberOf(value);
  if (supposition.times === true || supposition.adds) {
    const step = delta ?? wanted;
    if (step === null || found === null) return false;
    if (supposition.times === true) return Math.abs(found) > 0;
    const isSame = wantedIn(book, over, Math.abs(step), unit, true).some((each) =>
      isNear(Math.abs(found), Math.abs(each)),
    );
    // More losses are fewer birds; anything else goes the way that the label says.
    return (
      isSame &&
      (slots.changed === 'losses' ||
        slots.changed === 'birds kept' ||
        delta === null ||
        Math.sign(delta) === Math.sign(found))
    );
  }
  if (typeof value === 'string' && /^\d{4}-\d{2}-\d{2}$/.test(value)) {
    const days = daysMeant(slots.value ?? slots.delta, '2026-05-14');
    return days === null || days.has(value);
  }
  const clock = clockOf(value);
  if (clock !== null && wanted !== null) return clock === wanted % 12;
  if (
    size !== null &&
    found !== null &&
    wantedIn(book, over, size, unit === null ? null : `${unit}2`, false).some((each) => isNear(found, each))
  )
    return true;
  if (found === null || wanted === null)
    return (
      textOf(slots.value) !== null || (found !== null && delta !== null && isNear(found, Math.abs(delta)))
    );
  return (
    wantedIn(book, over, wanted, unit, false).some((each) => isNear(found, each)) ||
    isNear(found, wanted * (typeof value === 'string' ? 1 : 0))
  );
};

/** What is wrong with what a reading supposes; nothing where the right thing has the right value. */
export const judgeSupposition = (
  flock: Flock,
  text: string,
  slots: Slots,
  reading: Reading,
): readonly Fault[] => {
  const changed = textOf(slots.changed) ?? '';
  const { request, whatIf, leftOut } = toRequest(flock, reading, flock.today, 'us');
  const all = [...request.supposing, ...whatIf].flatMap(laidOver);
  const dated: readonly Laid[] =
    reading.on === null
      ? []
      : [
          {
            over: 'on',
            supposition: { what: { fact: 'on' }, value: reading.on, adds: false },
            value: reading.on,
          },
        ];
  const there = [...all, ...dated].filter(({ over }) => (meant[changed] ?? []).includes(over));
  const wanted = `${changed} ${JSON.stringify(slots.value ?? slots.delta)} ${textOf(slots.unit) ?? ''}`;
  const found = [
    ...all.map(({ over, value }) => `${over} ${JSON.stringify(value)}`),
    ...leftOut.map(({ why }) => `(${why})`),
  ].join(', ');
  if (there.some((each) => isValue(flock.book, each, slots, text))) return [];
  // What cannot be supposed is said in the answer, which then stands as things are.
  const outcome = all.length === 0 ? (leftOut.length > 0 ? 'asked' : 'lost') : 'wrong';
  return [{ slot: there.length > 0 ? 'value' : changed, outcome, wanted, found: found === '' ? '-' : found }];
};
