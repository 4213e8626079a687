/** How many people eat, and how many birds they eat a week, as a line about the household says it. */
import type { Token } from '../tokens.ts';
import { numberAt } from './number.ts';

interface Said {
  readonly value: number;
  /** Tokens that say it, so that the number is not taken for birds. */
  readonly from: number;
  readonly to: number;
  /** Whether it tells of all at the table: `six of us`. */
  readonly isOfUs?: boolean;
}

const people = new Set(
  'people persons person adults adult grownups mouths eaters eater kids children diners head'.split(' '),
);
const households = new Set('family household table'.split(' '));
const birds = new Set(
  'bird birds chicken chickens chook chooks whole roast roaster roasters broiler broilers'.split(' '),
);
const weekly = new Set(['week', 'wk', 'weeks', 'wks']);

const word = (tokens: readonly Token[], at: number): string => tokens[at]?.word ?? '';

const being = new Set(['are', 'were', 'was', 'be', 'is']);
/** What such a number may count besides people. */
const counted = new Set('weeks days hours birds miles minutes bags short down out'.split(' '));
const weekDays = 7;
const monthWeeks = 52 / 12;

const own = new Set(['my', 'our', 'the']);
const kin = new Set(
  'wife husband partner spouse girlfriend boyfriend mother father mum mom dad sister brother son daughter grandmother grandfather'.split(
    ' ',
  ),
);

/** `me`, `my wife`: one more at the table, where others are counted beside. */
const loneAt = (tokens: readonly Token[], at: number): Said | null => {
  const first = word(tokens, at);
  if (first === 'me' || first === 'myself') return { value: 1, from: at, to: at + 1 };
  if (own.has(first) && kin.has(word(tokens, at + 1))) return { value: 1, from: at, to: at + 2 };
  // "just me and dad"
  const isJoined = word(tokens, at - 1) === 'and' && (kin.has(first) || first === 'him' || first === 'her');
  return isJoined ? { value: 1, from: at, to: at + 1 } : null;
};

/** `4 people`, `two adults`, `5 of us`, `a family of six`. */
const eatersAt = (tokens: readonly Token[], at: number): Said | null => {
  const number = numberAt(tokens, at);
  if (number === null || !Number.isInteger(number.value)) return null;
  const after = word(tokens, number.to);
  const said = { value: number.value, from: number.from, to: number.to };
  if (['mouths', 'plates', 'eaters'].includes(after)) return { ...said, to: number.to + 1, isOfUs: true };
  if (people.has(after)) return { ...said, to: number.to + 1 };
  if (after === 'of' && word(tokens, number.to + 1) === 'us')
    return { ...said, to: number.to + 2, isOfUs: true };
  const inHouse =
    after === 'in' &&
    ['household', 'house', 'family'].some(
      (place) => place === word(tokens, number.to + 1) || place === word(tokens, number.to + 2),
    );
  if (inHouse) return { ...said, isOfUs: true };
  const led = word(tokens, at - 1) === 'of' && households.has(word(tokens, at - 2));
  // "if we were four"
  const isWe = being.has(word(tokens, at - 1)) && word(tokens, at - 2) === 'we';
  if (isWe && !counted.has(after)) return said;
  return led ? said : null;
};

/** `a week`, `per week`, `weekly`, `every 2 weeks`, `most weeks`: so many weeks, and where it ends. */
const spellAt = (
  tokens: readonly Token[],
  at: number,
): { readonly weeks: number; readonly to: number } | null => {
  const first = word(tokens, at);
  if (first === 'weekly') return { weeks: 1, to: at + 1 };
  if (!['a', 'per', 'each', 'every', 'most', 'in'].includes(first)) return null;
  if (weekly.has(word(tokens, at + 1))) return { weeks: 1, to: at + 2 };
  if (word(tokens, at + 1) === 'fortnight') return { weeks: 2, to: at + 2 };
  if (word(tokens, at + 1) === 'month') return { weeks: monthWeeks, to: at + 2 };
  if (first !== 'every' && first !== 'in') return null;
  if (word(tokens, at + 1) === 'other' && weekly.has(word(tokens, at + 2))) return { weeks: 2, to: at + 3 };
  const many = numberAt(tokens, at + 1);
  if (many !== null && many.value > 0 && ['day', 'days'].includes(word(tokens, many.to)))
    return { weeks: many.value / weekDays, to: many.to + 1 };
  return many !== null && many.value > 0 && weekly.has(word(tokens, many.to))
    ? { weeks: many.value, to: many.to + 1 }
    : null;
};

/** `a chicken a week`, `2 birds per week`, `one every other week`. */
const paceAt = (tokens: readonly Token[], at: number): Said | null => {
  const number = numberAt(tokens, at);
  const article = ['a', 'an'].includes(word(tokens, at)) && birds.has(word(tokens, at + 1));
  const value = number?.value ?? (article ? 1 : undefined);
  if (value === undefined) return null;
  let to = number?.to ?? at + 1;
  while (birds.has(word(tokens, to))) to += 1;
  const spell = spellAt(tokens, to);
  return spell === null ? null : { value: value / spell.weeks, from: number?.from ?? at, to: spell.to };
};

export interface Household {
  readonly eaters?: number;
  readonly birdsAWeek?: number;
  /** All who are named, also one alone, who does not make a household. */
  readonly mouths: number;
  readonly spans: readonly { readonly from: number; readonly to: number }[];
}

/** What a line says of the household; several kinds of people are added up. */
export const findHousehold = (tokens: readonly Token[]): Household => {
  const eaters: Said[] = [];
  const alone: Said[] = [];
  let pace: Said | null = null;
  for (let at = 0; at < tokens.length; at += 1) {
    const found = eatersAt(tokens, at);
    if (found !== null) {
      eaters.push(found);
      at = found.to - 1;
      continue;
    }
    const one = loneAt(tokens, at);
    if (one !== null) alone.push(one);
    pace ??= paceAt(tokens, at);
  }
  // Who is named beside a number of all of them is among them: "six of us now that the daughter is home".
  const isAll = eaters.length === 1 && eaters.some(({ isOfUs }) => isOfUs === true);
  if (isAll) alone.length = 0;
  const mouths = [...eaters, ...alone].reduce((sum, each) => sum + each.value, 0);
  const isHousehold = eaters.length > 0 || alone.length > 1;
  const said = isHousehold ? [...eaters, ...alone].sort((one, other) => one.from - other.from) : [];
  return {
    ...(isHousehold ? { eaters: mouths } : {}),
    ...(pace === null ? {} : { birdsAWeek: pace.value }),
    mouths,
    spans: [...said, ...(pace === null ? [] : [pace])],
  };
};
