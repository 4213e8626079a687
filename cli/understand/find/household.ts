/** How many people eat, and how many birds they eat a week, as a line about the household says it. */
import type { Token } from '../tokens.ts';
import { numberAt } from './number.ts';

interface Said {
  readonly value: number;
  /** Tokens that say it, so that the number is not taken for birds. */
  readonly from: number;
  readonly to: number;
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

/** `4 people`, `two adults`, `5 of us`, `a family of six`. */
const eatersAt = (tokens: readonly Token[], at: number): Said | null => {
  const number = numberAt(tokens, at);
  if (number === null || !Number.isInteger(number.value)) return null;
  const after = word(tokens, number.to);
  const said = { value: number.value, from: number.from, to: number.to };
  if (people.has(after)) return { ...said, to: number.to + 1 };
  if (after === 'of' && word(tokens, number.to + 1) === 'us') return { ...said, to: number.to + 2 };
  const led = word(tokens, at - 1) === 'of' && households.has(word(tokens, at - 2));
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
  if (first !== 'every') return null;
  if (word(tokens, at + 1) === 'other' && weekly.has(word(tokens, at + 2))) return { weeks: 2, to: at + 3 };
  const many = numberAt(tokens, at + 1);
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
  readonly spans: readonly { readonly from: number; readonly to: number }[];
}

/** What a line says of the household; several kinds of people are added up. */
export const findHousehold = (tokens: readonly Token[]): Household => {
  const eaters: Said[] = [];
  let pace: Said | null = null;
  for (let at = 0; at < tokens.length; at += 1) {
    const found = eatersAt(tokens, at);
    if (found !== null) {
      eaters.push(found);
      at = found.to - 1;
      continue;
    }
    pace ??= paceAt(tokens, at);
  }
  return {
    ...(eaters.length === 0 ? {} : { eaters: eaters.reduce((sum, each) => sum + each.value, 0) }),
    ...(pace === null ? {} : { birdsAWeek: pace.value }),
    spans: [...eaters, ...(pace === null ? [] : [pace])],
  };
};
