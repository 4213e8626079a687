/** Which two groups a question about mixing means, and how far apart they are in weight, age and feed. */
import { daysBetween } from '../../day.ts';
import type { Group, Value } from '../../types.ts';
import { defineFact, type Reader } from '../define.ts';

/** What a fact must declare in `each` to use `pairOf`. */
export const pairEach = ['has-birds', 'live-weight'];

export interface Pair {
  readonly lighter: Group;
  readonly heavier: Group;
}

const alive = (read: Reader): readonly Group[] =>
  read
    .each('has-birds')
    .filter(({ value }) => value === 'yes')
    .map(({ group }) => group);

/** A fact of one group among all of them; the fact that asks declares it in `each`. */
export const ofGroup = (read: Reader, fact: string, group: Group): Value | undefined => read.of(fact, group);

/** The two that are meant: those named, or one named and the only other, or the only two; undefined where that leaves a choice. */
const meant = (read: Reader): readonly [Group, Group] | undefined => {
  const groups = alive(read);
  const named = groups.filter((group) => read.named.includes(group.name));
  const others = groups.filter((group) => !named.includes(group));
  const [first, second] = others.length + named.length === 2 ? [...named, ...others] : named;
  return named.length > 2 || first === undefined || second === undefined ? undefined : [first, second];
};

/** The two groups by live weight; by age, the younger as the lighter, where one of the weights is not known. */
export const pairOf = (read: Reader): Pair | undefined => {
  const two = meant(read);
  if (two === undefined) return undefined;
  const [one, other] = two;
  const [weight, otherWeight] = two.map((group) => ofGroup(read, 'live-weight', group));
  const isLighter =
    typeof weight === 'number' && typeof otherWeight === 'number' && weight !== otherWeight
      ? weight < otherWeight
      : one.hatched > other.hatched;
  return isLighter ? { lighter: one, heavier: other } : { lighter: other, heavier: one };
};

const younger = ({ lighter, heavier }: Pair): Group =>
  lighter.hatched >= heavier.hatched ? lighter : heavier;
const older = (pair: Pair): Group => (younger(pair) === pair.lighter ? pair.heavier : pair.lighter);

/** Which two are meant is asked for once, as this fact. */
const known = ['mix-lighter'];

const nameFact = (id: string, pick: (pair: Pair) => Group, needs: readonly string[] = []) =>
  defineFact({
    id,
    unit: null,
    per: 'flock',
    needs,
    each: pairEach,
    compute: (read) => {
      const pair = pairOf(read);
      return pair === undefined ? undefined : pick(pair).name;
    },
  });

/** A fact of one of the two, as a fact of the flock. */
const borrowed = (id: string, unit: string | null, fact: string, pick: (pair: Pair) => Group) =>
  defineFact({
    id,
    unit,
    per: 'flock',
    needs: known,
    each: [...new Set([...pairEach, fact])],
    compute: (read) => {
      const pair = pairOf(read);
      return pair === undefined ? undefined : ofGroup(read, fact, pick(pair));
    },
  });

export const pairFacts = [
  defineFact({
    id: 'has-second-group',
    unit: null,
    per: 'flock',
    each: ['has-birds'],
    compute: (read) => (alive(read).length > 1 ? 'yes' : 'no'),
  }),
  nameFact('mix-lighter', ({ lighter }) => lighter),
  nameFact('mix-heavier', ({ heavier }) => heavier, known),
  nameFact('mix-younger', younger, known),
  nameFact('mix-older', older, known),
  borrowed('mix-lighter-weight', 'kg', 'live-weight', ({ lighter }) => lighter),
  borrowed('mix-heavier-weight', 'kg', 'live-weight', ({ heavier }) => heavier),
  borrowed('mix-younger-ration', null, 'ration', younger),
  borrowed('mix-older-ration', null, 'ration', older),
  borrowed('mix-younger-switch', 'date', 'ration-switch', younger),
  defineFact({
    id: 'weight-ratio',
    unit: 'ratio',
    per: 'flock',
    needs: [...known, 'mix-lighter-weight', 'mix-heavier-weight'],
    compute: (read) => read.number('mix-lighter-weight') / read.number('mix-heavier-weight'),
  }),
  defineFact({
    id: 'age-gap',
    unit: 'day',
    per: 'flock',
    needs: known,
    each: pairEach,
    compute: (read) => {
      const pair = pairOf(read);
      return pair === undefined ? undefined : daysBetween(older(pair).hatched, younger(pair).hatched);
    },
  }),
];
