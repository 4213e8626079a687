/** The low and the high that a record of weather tells, also by bare numbers. */
import { sideOf } from '../find/low-or-high.ts';
import { functionWords } from '../function-words.ts';
import { type NumberSpan, spansOf } from '../spans.ts';
import { numbers, quantities, says, type Told, written } from './told.ts';

interface Degrees {
  readonly value: number;
  readonly text: string;
  readonly from: number;
  readonly to: number;
  readonly bare: NumberSpan | null;
}

export interface DegreesTold {
  readonly low: string | null;
  readonly high: string | null;
  /** Where more than two of one side are told: the ones behind the first, for the days that follow. */
  readonly daily: readonly { readonly side: 'low' | 'high'; readonly text: string }[];
  /** The first bare number that was taken for degrees. */
  readonly bare: NumberSpan | null;
}

/** What may stand behind a bare number of degrees, besides small words, days and marks. */
const behind = new Set(
  'dry wet calm windy still sunny clear cloudy hot cold degrees outside inside out forecast expected predicted low high lo hi lows highs morning night rain rh humidity'.split(
    ' ',
  ),
);
/** A number behind these tells an hour, or counts something. */
const clockLeads = new Set(['at', 'since', 'by', 'until', 'from', 'till', 'rh']);
const hours = 12;

const isDegrees = (told: Told, span: NumberSpan): boolean => {
  const { tokens, spans } = told.line;
  const next = tokens[span.to];
  const before = tokens[span.from - 1]?.word ?? '';
  const isHour = Number.isInteger(span.value) && span.value >= 0 && span.value <= hours;
  if (clockLeads.has(before) && (isHour || before === 'rh')) return false;
  if (next === undefined) return true;
  if (
    [
      '%',
      'percent',
      'mil',
      'mils',
      'hundredths',
      'inch',
      'mm',
      ':',
      'nights',
      'days',
      'minutes',
      'weeks',
      'hours',
      'times',
      'lows',
      'highs',
    ].includes(next.word)
  )
    return false;
  const isFree =
    next.isMark || functionWords.has(next.word) || behind.has(next.word) || /^[\d.°]/.test(next.word);
  const isSpan = spans.some(
    (other) => other.kind !== 'term' && other.kind !== 'number' && other.from === span.to,
  );
  return isFree || isSpan || numbers(told).some(({ from }) => from === span.to);
};

/** `97/63`, a high over a low. */
const overIn = ({ line: { tokens } }: Told): readonly [number, number] | null => {
  for (const { word } of tokens) {
    const found = /^(\d{2,3})\/(\d{1,2})$/.exec(word);
    if (found !== null && Number(found[1]) > Number(found[2])) return [Number(found[1]), Number(found[2])];
  }
  return null;
};

const degreesIn = (told: Told, windAt: number | null): readonly Degrees[] => {
  const unit = told.about.system === 'us' ? 'F' : 'C';
  const stated = quantities(told, 'temperature').map((span) => ({
    value: span.value,
    text: written(span.value, span.unit),
    from: span.from,
    to: span.to,
    bare: null,
  }));
  const own = quantities(told, 'temperature')[0]?.unit ?? unit;
  const bare = numbers(told)
    .filter((span) => span.from !== windAt && isDegrees(told, span))
    .map((span) => ({
      value: span.value,
      text: written(span.value, own),
      from: span.from,
      to: span.to,
      bare: span,
    }));
  return [...stated, ...bare].sort((one, other) => one.from - other.from);
};

/** Only the first of several days is told by one record. */
const ofFirstDay = (told: Told, all: readonly Degrees[]): readonly Degrees[] => {
  const days = spansOf(told.line.spans, 'day');
  const [first, second] = days;
  if (first === undefined || second === undefined || first.future === second.future) return all;
  const before = all.filter(({ from }) => from < second.from);
  return all.length > before.length && before.length > 0 ? before.slice(0, 1) : all;
};

const early = ['morning', 'dawn', 'daybreak', 'daylight', 'sunrise', 'overnight', 'night', 'bedtime'];

/** The low and the high; a temperature that no word places is a high, or at an early hour a low. */
export const degreesTold = (told: Told, windAt: number | null): DegreesTold => {
  const over = overIn(told);
  const unit = told.about.system === 'us' ? 'F' : 'C';
  if (over !== null)
    return { low: written(over[1], unit), high: written(over[0], unit), daily: [], bare: null };
  const all = ofFirstDay(told, degreesIn(told, windAt));
  const isEarly = early.some((word) => says(told, word));
  const sided = all.map((each) => ({ ...each, side: sideOf(told.line.tokens, each.from) }));
  const [one, other] = sided;
  const sides: { low?: Degrees; high?: Degrees } = {};
  const side = one?.side ?? null;
  const isRow = side !== null && sided.length > 2 && sided.every((each) => each.side === side);
  if (one !== undefined && other !== undefined && one.value !== other.value) {
    // Of two, the lower is the low, whatever words stand about them, unless both are the same.
    const [lower, upper] = one.value < other.value ? [one, other] : [other, one];
    if (one.side !== null && one.side === other.side && sided.length > 2) sides[one.side] = one;
    else {
      sides.low = lower;
      sides.high = upper;
    }
  } else if (one !== undefined) sides[one.side ?? (isEarly ? 'low' : 'high')] = one;
  return {
    low: sides.low?.text ?? null,
    high: sides.high?.text ?? null,
    daily: isRow && side !== null ? sided.slice(1).map(({ text }) => ({ side, text })) : [],
    bare: all.find((each) => each.bare !== null)?.bare ?? null,
  };
};
