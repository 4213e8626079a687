/** Birds promised, handed over or paid for, from words. */
import { findWho } from '../find/who.ts';
import { type NumberSpan, spansOf } from '../spans.ts';
import { type Build, known, lacking, moneyText, numbers, says, type Told } from './told.ts';

/** Words of birds that have left the place for somebody. */
const handed = [
  'collected',
  'took',
  'picked up',
  'dropped off',
  'handed',
  'gave',
  'got his',
  'got her',
  'got hers',
  'got their',
  'delivered',
  'deliver',
  'dropped',
  'came for',
  'fetched',
  'had his',
  'had her',
  'had hers',
  'had their',
  'made over',
  'sold',
  'away to',
  'went to',
  'gone to',
  'owes',
  'a present',
  'as a gift',
];
/** Words that promise, whatever else has happened to other birds. */
const promising = [
  'promised',
  'wants',
  'having',
  'will take',
  'down for',
  'good for',
  'reserve',
  'reserved',
  'ordered',
  'can have',
];
const paid = [
  'paid',
  'payed',
  'gave me',
  'give me',
  'settled',
  'squared up',
  'received',
  'deposit',
  'down payment',
  'already pay',
  'dep',
];
const word = (told: Told, at: number): string => told.line.tokens[at]?.word ?? '';
const payers = new Set([
  'paid',
  'payed',
  'pays',
  'received',
  'me',
  'us',
  'dep',
  'deposit',
  'payment',
  'owes',
  'owe',
  'give',
  'him',
]);
const sums = new Set(['down', 'cash', 'deposit', 'dollars', 'quid', 'bucks', 'in']);

/** A bare sum beside a word for paying: `paid me 40 for 2`, `give 50 cash deposit`, `owes me 24`. */
const barePaid = (told: Told): NumberSpan | undefined =>
  numbers(told).find(({ from, to }) => {
    const isLed = payers.has(word(told, from - 1)) && (says(told, ...paid) || says(told, 'owes', 'owe'));
    const isSum = sums.has(word(told, to)) && says(told, ...paid, 'cash');
    const isLast = word(told, from - 1) === ',' && says(told, ...paid);
    return isLed || isSum || isLast;
  });

const places = new Set(['number', 'no']);

const countIn = (told: Told): number | null => {
  const { tokens } = told.line;
  const sum = barePaid(told);
  const changed = /\bfrom\b.*\bto\b/.test(told.words.toLowerCase());
  const whole = numbers(told).filter(
    (span) =>
      span !== sum &&
      Number.isInteger(span.value) &&
      span.value > 0 &&
      !places.has(word(told, span.from - 1)) &&
      !(changed && word(told, span.from - 1) === 'from'),
  );
  // "the couple at the end of the road for four" are people
  const [first] = whole.filter(
    ({ from, to }) => !(tokens[to - 1]?.word === 'couple' && tokens[from - 1]?.word === 'the'),
  );
  if (first !== undefined) return first.value;
  const one = tokens.some(
    (token, at) =>
      (['a', 'one', 'his', 'her', 'their'].includes(token.word) &&
        ['bird', 'chicken', 'one', 'red', 'white'].includes(tokens[at + 1]?.word ?? '')) ||
      token.word === 'hers',
  );
  return one ? 1 : null;
};

/** What has happened with the birds; where they were handed over and paid for at once, both. */
const stepsIn = (told: Told): readonly ('promised' | 'handed' | 'paid')[] => {
  const isPaid =
    says(told, ...paid) &&
    !says(told, 'will pay', 'to pay', 'not have it', 'not hear of', 'not paid', 'no pay');
  const isHanded = says(told, ...handed) && !says(told, 'gave me', 'give me', ...promising);
  if (isHanded && isPaid) return ['handed', 'paid'];
  return [isPaid ? 'paid' : isHanded ? 'handed' : 'promised'];
};

/** `handed over 2, paid 36`: the sum right behind the word for paying. */
const sumIn = (told: Told): number | null => {
  const money = spansOf(told.line.spans, 'money')[0];
  if (money !== undefined) return money.cents;
  const bare = barePaid(told);
  if (bare !== undefined) return Math.round(bare.value * 100);
  // "pounds" are no weight of money
  const pounds = spansOf(told.line.spans, 'quantity').find(({ from, to }) =>
    told.line.tokens.slice(from, to).some(({ word }) => ['pound', 'pounds'].includes(word)),
  );
  return pounds === undefined ? null : Math.round(pounds.value * 100);
};

export const buildShare: Build = (told) => {
  const cents = sumIn(told);
  const steps = stepsIn(told);
  const who = findWho(told.words, told.line);
  const count = countIn(told);
  const withStep = (step: (typeof steps)[number]) => ({
    who,
    count,
    step,
    paid: step === 'paid' && cents !== null ? moneyText(cents) : null,
  });
  const [first = 'promised', ...others] = steps;
  const fields = withStep(first);
  const missing = lacking(fields, 'who', 'count');
  return {
    fields: known(fields),
    missing,
    assumed: [],
    also: missing.length > 0 ? [] : others.map((step) => known(withStep(step))),
  };
};
