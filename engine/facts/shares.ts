/** Who was promised birds, who has them, and who owes for them. */
import type { Share } from '../types.ts';
import { defineFact, type Reader } from './define.ts';
import { asCounted } from './named-list.ts';
import { settingNumber } from './setting.ts';
import { partMoney, sumMoney, timesMoney } from './sums/exact-money.ts';
import { onlyAsked } from './told.ts';

const same = (one: string, other: string): boolean => one.trim().toLowerCase() === other.trim().toLowerCase();

/** Shares up to the day, of the person asked about where one is. */
const sharesOf = (read: Reader): readonly Share[] => {
  const who = read.text('who-asked');
  const all = read.state.shares.filter((each) => each.on <= read.on);
  const own = all.filter((each) => same(each.who, who));
  return own.length > 0 ? own : all;
};

const countIn = (shares: readonly Share[], step: Share['step']): number =>
  shares.filter((each) => each.step === step).reduce((sum, each) => sum + each.count, 0);

/** Shares by person, each under the name first used, in the order in which they were first told. */
const byPerson = (shares: readonly Share[]): ReadonlyMap<string, readonly Share[]> => {
  const people = new Map<string, Share[]>();
  for (const each of shares) {
    const name = [...people.keys()].find((known) => same(known, each.who)) ?? each.who.trim();
    people.set(name, [...(people.get(name) ?? []), each]);
  }
  return people;
};

/** Birds that a person was promised and has not been handed. */
const waitingOf = (shares: readonly Share[]): number =>
  Math.max(0, countIn(shares, 'promised') - countIn(shares, 'handed'));

/** Birds that a person has and has not paid for. */
const unpaidOf = (shares: readonly Share[]): number =>
  Math.max(0, countIn(shares, 'handed') - countIn(shares, 'paid'));

/** Names with counts, as one value: blanks inside a name give way to hyphens. */
const listOf = (read: Reader, of: (shares: readonly Share[]) => number): string =>
  asCounted(
    new Map(
      [...byPerson(sharesOf(read))]
        .map(([who, shares]) => [who.replaceAll(/\s+/g, '-').replaceAll('=', ''), of(shares)] as const)
        .filter(([, count]) => count > 0),
    ),
  );

export const shareFacts = [
  defineFact({ id: 'who-asked', unit: null, per: 'flock', compute: () => '' }),
  defineFact({
    id: 'shares-told',
    unit: null,
    per: 'flock',
    compute: (read) => {
      read.from(...read.state.shares);
      return read.state.shares.some((each) => each.on <= read.on) ? 'yes' : 'no';
    },
  }),
  defineFact({
    id: 'who-is-meant',
    unit: null,
    per: 'flock',
    needs: ['who-asked'],
    compute: (read) => {
      const found = read.state.shares.find((each) => same(each.who, read.text('who-asked')));
      return found?.who ?? 'all';
    },
  }),
  ...(['promised', 'handed', 'paid'] as const).map((step) =>
    defineFact({
      id: step === 'promised' ? 'promised-in-all' : step === 'handed' ? 'handed-here' : 'paid-for',
      unit: 'bird',
      per: 'flock',
      needs: ['who-asked'],
      compute: (read) => {
        const shares = sharesOf(read).filter((each) => each.step === step);
        read.from(...shares);
        return countIn(shares, step);
      },
    }),
  ),
  defineFact({
    id: 'promised',
    unit: 'bird',
    per: 'flock',
    compute: (read) => {
      const shares = read.state.shares.filter((each) => each.on <= read.on);
      read.from(...shares.filter(({ step }) => step !== 'paid'));
      // Birds handed over without a promise on record do not make up for what another was promised.
      return [...byPerson(shares).values()].reduce((sum, own) => sum + waitingOf(own), 0);
    },
  }),
  onlyAsked('asks-to-promise', null, 'no'),
  // Only a question names it.
  defineFact({ id: 'birds-to-promise', unit: 'bird', per: 'flock', compute: () => 0 }),
  defineFact({
    id: 'handed',
    unit: 'bird',
    per: 'flock',
    compute: (read) => {
      const handed = read.state.shares.filter((each) => each.step === 'handed' && each.on <= read.on);
      read.from(...handed);
      return countIn(handed, 'handed');
    },
  }),
  defineFact({
    id: 'still-to-hand',
    unit: 'bird',
    per: 'flock',
    needs: ['who-asked'],
    compute: (read) =>
      [...byPerson(sharesOf(read)).values()].reduce((sum, shares) => sum + waitingOf(shares), 0),
  }),
  defineFact({
    id: 'who-waits',
    unit: 'named',
    per: 'flock',
    needs: ['who-asked'],
    compute: (read) => listOf(read, waitingOf),
  }),
  defineFact({
    id: 'who-is-served',
    unit: 'named',
    per: 'flock',
    needs: ['who-asked'],
    compute: (read) => listOf(read, (shares) => countIn(shares, 'handed')),
  }),
  defineFact({
    id: 'who-owes',
    unit: 'named',
    per: 'flock',
    needs: ['who-asked'],
    compute: (read) => listOf(read, unpaidOf),
  }),
  defineFact({
    id: 'birds-unpaid',
    unit: 'bird',
    per: 'flock',
    needs: ['who-asked'],
    compute: (read) =>
      [...byPerson(sharesOf(read)).values()].reduce((sum, shares) => sum + unpaidOf(shares), 0),
  }),
  defineFact({
    id: 'paid-in-all',
    unit: 'money',
    per: 'flock',
    needs: ['who-asked'],
    compute: (read) =>
      sumMoney(sharesOf(read).flatMap(({ step, paid }) => (step === 'paid' && paid !== null ? [paid] : []))),
  }),
  defineFact({
    id: 'share-price',
    unit: 'money',
    per: 'flock',
    compute: (read) => {
      const set = settingNumber(read, 'bird-price');
      if (set !== undefined) return sumMoney([set]);
      const paid = read.state.shares.filter((each) => each.step === 'paid' && each.paid !== null);
      const birds = paid.reduce((sum, each) => sum + each.count, 0);
      if (birds === 0) return undefined;
      read.from(...paid);
      const price = partMoney(sumMoney(paid.map((each) => each.paid ?? 0)), birds);
      read.assume('price-as-others-paid', { price: { value: price, unit: 'money' } });
      return price;
    },
  }),
  defineFact({
    id: 'price-is-known',
    unit: null,
    per: 'flock',
    wants: ['share-price'],
    compute: (read) => (read.maybe('share-price') === undefined ? 'no' : 'yes'),
  }),
  defineFact({
    id: 'owed',
    unit: 'money',
    per: 'flock',
    needs: ['birds-unpaid'],
    wants: ['share-price'],
    compute: (read) => {
      if (read.number('birds-unpaid') === 0) return 0;
      const price = read.maybe('share-price');
      return price === undefined ? undefined : timesMoney(Number(price), read.number('birds-unpaid'));
    },
  }),
];
