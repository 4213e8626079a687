/** Which values stand in a stretch of a line, by their sorts: what `takes` in rules/facts can ask for. */
import type { Span } from '../spans.ts';
import type { Token } from '../tokens.ts';
import type { Line } from './all.ts';
import { findHousehold } from './household.ts';
import { numberAt } from './number.ts';
import { findOften } from './often.ts';

export interface Sorted {
  /** A dimension, `money`, `age`, `day`, `time-of-day`, `hour`, `people`, `pace`, `number`, `share`, `times`, `often`, `size`, `long-side` or `short-side`. */
  readonly sort: string;
  readonly value: number;
  readonly unit: string | null;
  /** What is no number: a day, or a time of day. */
  readonly text?: string;
  /** The stretch it stands in. */
  readonly from: number;
  readonly to: number;
}

const factors = new Map(
  Object.entries({
    double: 2,
    doubled: 2,
    doubles: 2,
    triple: 3,
    tripled: 3,
    triples: 3,
    halved: 1 / 2,
    halves: 1 / 2,
  }),
);

/** Behind these stands the value that something has now: `52 instead of 44`. */
const insteadOf = [
  ['not'],
  ['instead', 'of'],
  ['stead', 'of'],
  ['rather', 'than'],
  ['in', 'place', 'of'],
  ['in', 'stead', 'of'],
  ['down', 'from'],
  ['up', 'from'],
  ['and', 'not'],
];

/** Whether a value is the one that there is now, and not the one supposed. */
const isPresent = (tokens: readonly Token[], { from }: { readonly from: number }): boolean =>
  insteadOf.some((words) => words.every((word, n) => tokens[from - words.length + n]?.word === word)) ||
  // "from three to five"
  (tokens[from - 1]?.word === 'from' && tokens.slice(from, from + 5).some(({ word }) => word === 'to'));

const ones = new Set(['a', 'an', 'another', 'one', 'extra']);
const spells = new Map([
  ['day', 1],
  ['week', 7],
  ['fortnight', 14],
  ['month', 30],
]);

/** `another week`, `a day older`: a time that is told without a number. */
const oneSpellIn = (tokens: readonly Token[], from: number, to: number): readonly Sorted[] =>
  tokens.slice(from, to).flatMap((token, n): Sorted[] => {
    const days = ones.has(token.word) ? spells.get(tokens[from + n + 1]?.word ?? '') : undefined;
    return days === undefined
      ? []
      : [{ sort: 'age', value: days, unit: 'day', from: from + n, to: from + n + 2 }];
  });

/** `two a week`, `one every ten days`; and people, counted: `just me and her`, `four of us`. */
const householdIn = (tokens: readonly Token[], from: number, to: number): readonly Sorted[] => {
  const { birdsAWeek, eaters } = findHousehold(tokens.slice(from, to));
  return [
    ...(birdsAWeek === undefined ? [] : [{ sort: 'pace', value: birdsAWeek, unit: null, from, to }]),
    ...(eaters === undefined ? [] : [{ sort: 'people', value: eaters, unit: null, from, to }]),
  ];
};

const articles = new Set(['a', 'an', 'the', 'that', 'my', 'our', 'one']);
const ordinals = new Set(['second', 'third', 'fourth', 'extra', 'spare']);

/** `another feeder`, `a second lamp`: one more, told without a number. */
const oneMoreIn = (tokens: readonly Token[], from: number, to: number): readonly Sorted[] =>
  tokens.slice(from, to).flatMap((token, n): Sorted[] => {
    const at = from + n;
    const next = tokens[at + 1]?.word ?? '';
    const isSecond = ordinals.has(token.word) && articles.has(tokens[at - 1]?.word ?? '');
    const isOne =
      (token.word === 'another' || isSecond) && !spells.has(next) && numberAt(tokens, at + 1) === null;
    return isOne ? [{ sort: 'number', value: 1, unit: null, from: at, to: at + 1 }] : [];
  });

/** A rhythm is that of the pen's moves, unless the words are about something else that is done so often. */
const othersDoneOften = new Set(
  'feed fed feeding eat water watered watering weigh weighed weighing check count clean'.split(' '),
);

const oftenIn = (tokens: readonly Token[], from: number, to: number): readonly Sorted[] => {
  const inside = tokens.slice(from, to);
  const often = inside.some((token) => othersDoneOften.has(token.word)) ? null : findOften(inside);
  return often === null ? [] : [{ sort: 'often', value: often, unit: null, from, to }];
};

const timesIn = (tokens: readonly Token[], from: number, to: number): readonly Sorted[] =>
  tokens.slice(from, to).flatMap((token, n): Sorted[] => {
    const value = factors.get(token.word);
    return value === undefined
      ? []
      : [{ sort: 'times', value, unit: null, from: from + n, to: from + n + 1 }];
  });

/** `2 nights in the cold`: so many of these are a time, and nothing else. */
const countedTimes = new Set(
  'night nights day days week weeks month months hour hours minutes times'.split(' '),
);

/** `if we begin at nine`: a number on the clock. */
const isHour = (value: number): boolean => Number.isInteger(value) && value >= 1 && value <= 12;

/** `lost none`: a number where nobody says one. */
const noneIn = (tokens: readonly Token[], from: number, to: number): readonly Sorted[] =>
  tokens
    .slice(from, to)
    .flatMap((token, n): Sorted[] =>
      token.word === 'none' || token.word === 'nobody'
        ? [{ sort: 'number', value: 0, unit: null, from: from + n, to: from + n + 1 }]
        : [],
    );

const sortsOf = (span: Span, tokens: readonly Token[]): readonly Sorted[] => {
  const { from, to } = span;
  switch (span.kind) {
    case 'money':
      return [{ sort: 'money', value: span.cents / 100, unit: 'money', from, to }];
    case 'age':
      return [{ sort: 'age', value: span.days, unit: 'day', from, to }];
    case 'number': {
      if (countedTimes.has(tokens[to]?.word ?? '')) return [];
      // "half of them", "a third of the birds": a part of what there is.
      const isPart = span.value > 0 && span.value < 1 && tokens[to]?.word === 'of';
      const own = { sort: isPart ? 'share' : 'number', value: span.value, unit: null, from, to };
      return isHour(span.value) ? [own, { ...own, sort: 'hour' }] : [own];
    }
    case 'quantity': {
      // "eleven pound a bag" is money
      const isPrice =
        span.unit === 'lb' &&
        /^pounds?$/.test(tokens[to - 1]?.word ?? '') &&
        ['a', 'per', 'the', 'each'].includes(tokens[to]?.word ?? '');
      if (isPrice) return [{ sort: 'money', value: span.value, unit: 'money', from, to }];
      const own = [{ sort: span.dimension, value: span.value, unit: span.unit, from, to }];
      const isAge = span.dimension === 'time' && span.unit !== 'h';
      return isAge
        ? [...own, { sort: 'age', value: span.value * (span.unit === 'week' ? 7 : 1), unit: 'day', from, to }]
        : own;
    }
    case 'size': {
      const { sides, unit } = span;
      return [
        { sort: 'size', value: sides[0] * sides[1], unit: unit === null ? null : `${unit}2`, from, to },
        { sort: 'long-side', value: Math.max(...sides), unit, from, to },
        { sort: 'short-side', value: Math.min(...sides), unit, from, to },
      ];
    }
    case 'day':
      return [{ sort: 'day', value: 0, text: span.future, unit: null, from, to }];
    case 'time':
      return [{ sort: 'time-of-day', value: 0, text: span.at, unit: null, from, to }];
    default:
      return [];
  }
};

const rank = ['pace', 'often', 'size', 'long-side', 'short-side', 'money', 'temperature', 'age'];
const rankOf = ({ sort }: Sorted): number => {
  const at = rank.indexOf(sort);
  if (at >= 0) return at;
  return sort === 'number' || sort === 'hour' ? rank.length + 1 : rank.length;
};

/** The values in a stretch, the more telling sorts first; bare numbers last. */
export const sortsIn = (line: Line, from: number, to: number): readonly Sorted[] => {
  const spans = line.spans.filter((span) => from <= span.from && span.to <= to);
  const isMeasured = (span: Span): boolean =>
    span.kind === 'number' &&
    spans.some(
      (other) => other !== span && other.kind !== 'term' && other.from <= span.from && span.to <= other.to,
    );
  // "six of us" counts people, and nothing else
  const { spans: ofPeople } = findHousehold(line.tokens);
  const isOfPeople = (span: Span): boolean =>
    span.kind === 'number' && ofPeople.some((said) => said.from <= span.from && span.to <= said.to);
  const found = [
    ...oftenIn(line.tokens, from, to),
    ...timesIn(line.tokens, from, to),
    ...householdIn(line.tokens, from, to),
    ...oneMoreIn(line.tokens, from, to),
    ...noneIn(line.tokens, from, to),
    ...oneSpellIn(line.tokens, from, to),
    ...spans
      .filter((span) => !isMeasured(span) && !isPresent(line.tokens, span) && !isOfPeople(span))
      .flatMap((span) => sortsOf(span, line.tokens)),
  ];
  return found.sort((one, other) => rankOf(one) - rankOf(other));
};
