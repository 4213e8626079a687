/** Something bought, from words; a price for one is multiplied out exactly. */
import { type NumberSpan, type QuantitySpan, spansOf } from '../spans.ts';
import { ownUnit } from './mass.ts';
import { packsIn } from './packs.ts';
import { priceTold } from './price-told.ts';
import { rationIn } from './ration.ts';
import {
  type Build,
  decimal,
  known,
  lacking,
  moneyText,
  numbers,
  quantities,
  says,
  type Told,
  terms,
  written,
} from './told.ts';

const isIdea = (told: Told, ...ids: readonly string[]): boolean =>
  terms(told, 'idea').some((span) => ids.includes(span.id));

const whatIn = (told: Told): string | null => {
  if (isIdea(told, 'bedding')) return 'bedding';
  if (isIdea(told, 'processing-bill')) return 'processing';
  if (isIdea(told, 'electric-bill')) return 'electricity';
  if (isIdea(told, 'gear')) return 'gear';
  if (quantities(told, 'bags').length > 0 || rationIn(told) !== null || isIdea(told, 'feed')) return 'feed';
  if (says(told, 'chicks', 'chick', 'day olds', 'birds')) return 'chicks';
  return null;
};

/** The one group it was bought for: "for the reds"; a group named otherwise only says what was bought. */
const groupFor = (told: Told): string | null => {
  const word = (at: number): string => told.line.tokens[at]?.word ?? '';
  const named = spansOf(told.line.spans, 'group').filter(({ from }) => {
    const before = ['the', 'our', 'my'].includes(word(from - 1)) ? from - 2 : from - 1;
    return word(before) === 'for';
  });
  const [first, ...others] = new Set(named.flatMap(({ names }) => names));
  return first === undefined || others.length > 0 ? null : first;
};

/** Words in front of a sum; a number behind them counts nothing. */
const priceLeads = new Set('at for paid @ bill total was cost spent spending give gave paying'.split(' '));

/** The bare number that says how many were bought: in front of a thing, and before any price. */
const countOf = (told: Told): NumberSpan | undefined => {
  const { tokens } = told.line;
  const whole = numbers(told).filter(
    (span) =>
      Number.isInteger(span.value) && span.value > 0 && !priceLeads.has(tokens[span.from - 1]?.word ?? ''),
  );
  return whole.find(({ to }) => tokens[to] !== undefined && tokens[to]?.isMark === false) ?? whole[0];
};

/** `a bag of finisher`, `the last sack`. */
const saysOneBag = (told: Told): boolean =>
  says(
    told,
    'a bag',
    'one bag',
    'another bag',
    'the last bag',
    'a sack',
    'one sack',
    'another sack',
    'a bag of',
    'a single sack',
    'a single bag',
  ) && !says(told, 'each bag');

interface Amounts {
  readonly bags: number | null;
  readonly amount: string | null;
  readonly assumed: readonly string[];
}

/** How many bags, and what all of it weighs. */
const amountsIn = (told: Told, isFeed: boolean): Amounts => {
  const packs = packsIn(told);
  if (packs !== null && (packs.isBags || isFeed))
    return {
      bags: packs.isBags ? packs.count : null,
      amount: written(packs.size.value * packs.count, packs.size.unit),
      assumed: [],
    };
  const stated = quantities(told, 'bags')[0]?.value;
  const isOne =
    stated === undefined &&
    saysOneBag(told) &&
    spansOf(told.line.spans, 'money').every(({ each }) => each !== true);
  const bags = stated ?? (isOne ? 1 : null);
  const mass = quantities(told, 'mass').find((span) => !isPounds(told, span));
  if (mass !== undefined && bags === null)
    return { bags, amount: written(mass.value, mass.unit), assumed: [] };
  if (bags === null && isFeed && says(told, 'a ton', 'one ton', 'a tonne'))
    return { bags, amount: written(1, told.about.system === 'us' ? 'ton' : 'tonne'), assumed: [] };
  const measure = told.about.measures.bag;
  if (bags === null || measure === undefined || !isFeed) return { bags, amount: null, assumed: [] };
  const unit = ownUnit(told);
  const one = Math.round((measure.kg / unit.kg) * 100) / 100;
  return {
    bags,
    amount: written(one * bags, unit.id),
    assumed: measure.stated ? [] : [`taking a bag as ${decimal(one)} ${unit.id}`],
  };
};

/** Pounds behind a word for paying are money. */
const isPounds = (told: Told, { from, to, unit }: QuantitySpan): boolean =>
  unit === 'lb' &&
  told.line.tokens.slice(from, to).some(({ word }) => word === 'pound' || word === 'pounds') &&
  (priceLeads.has(told.line.tokens[from - 1]?.word ?? '') || says(told, 'paid', 'gave'));

export const buildBuy: Build = (told) => {
  const what = whatIn(told);
  const isFeed = what === 'feed';
  const { bags, amount, assumed } = amountsIn(told, isFeed);
  const count =
    bags === null ? countOf(told) : numbers(told).find(({ from }) => packsIn(told)?.from === from);
  // A bill is a sum: `paid the butcher 90` counts nothing.
  const isBill = what === 'processing' || what === 'electricity';
  const price = priceTold(told, isBill ? undefined : count);
  const bill = isBill && count !== undefined ? Math.round(count.value * 100) : null;
  const many = bags ?? count?.value ?? 1;
  // What one chick costs is no price of a purchase until it is known how many there were.
  const isOfOne = what === 'chicks' && price?.isEach === true && count === undefined;
  const cents =
    isOfOne || price === null ? bill : price.isEach ? Math.round(price.cents * many) : price.cents;
  const fields = {
    what,
    ration: isFeed ? rationIn(told) : null,
    bags: bags === null ? null : written(bags, 'bag'),
    amount,
    count: bags === null && !isFeed && !isBill ? (count?.value ?? null) : null,
    price: cents === null ? null : moneyText(cents),
    group: groupFor(told),
  };
  const missing = isOfOne ? lacking(fields, 'what', 'count') : lacking(fields, 'what');
  return { fields: known(fields), missing, assumed };
};
