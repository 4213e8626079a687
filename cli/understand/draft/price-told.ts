/** What a purchase cost, from words: marked as money, said behind a word for paying, or left over as the last number. */
import { type MoneySpan, type NumberSpan, spansOf } from '../spans.ts';
import { numbers, quantities, says, type Told } from './told.ts';

export interface PriceTold {
  readonly cents: number;
  /** Whether it is the price of one. */
  readonly isEach: boolean;
}

const leads = new Set(
  'at for paid @ was cost costs bill check cheque total invoice is to comes came spent spending give gave paying'.split(
    ' ',
  ),
);
/** Of those, the ones behind which whoever is paid may be named. */
const payers = new Set(['paid', 'gave', 'give']);
const totals = new Set(['total', 'altogether', 'all', 'even', 'both', 'lot']);
const eachWords = new Set(['each', 'apiece', 'ea', 'piece', 'one', 'per', 'hd', 'head']);
const currencies = new Set(['pound', 'pounds']);
const hundred = 100;

const word = (told: Told, at: number): string => told.line.tokens[at]?.word ?? '';

/** What stands right behind a sum: whether it is of one or of all; `the bag`, `a bag`, `in all`. */
const isEachAt = (told: Told, at: number): boolean | null => {
  const [first, second] = [word(told, at), word(told, at + 1)];
  if (
    ['a', 'the', 'per', '/'].includes(first) &&
    /^(?:bag|sack|bale|piece|kilo|kg|lb|metre|meter|m|bird|chick|head|hd)$/.test(second)
  )
    return true;
  if (eachWords.has(first)) return true;
  if (
    totals.has(first) ||
    (['in', 'for', 'the'].includes(first) && (totals.has(second) || second === 'pair'))
  )
    return false;
  return null;
};

/** `twelve pound eighty`, `at eleven pounds fifty`: pounds that are money and no weight. */
const poundsIn = (told: Told): PriceTold | null => {
  for (const span of quantities(told, 'mass')) {
    const { tokens } = told.line;
    const name = tokens.slice(span.from, span.to).find((token) => currencies.has(token.word));
    if (span.unit !== 'lb' || name === undefined) continue;
    const next = numbers(told).find(({ from }) => from === span.to);
    const pence = next !== undefined && next.value > 15 && next.value < hundred ? next : undefined;
    const after = isEachAt(told, pence?.to ?? span.to);
    const before = word(told, span.from - 1);
    const isPaid =
      leads.has(before) ||
      says(told, 'paid', 'cost', 'gave', 'bill') ||
      after !== null ||
      pence !== undefined;
    if (!isPaid && quantities(told, 'bags').length === 0) continue;
    const cents = Math.round(span.value * hundred) + (pence?.value ?? 0);
    return { cents, isEach: after ?? before === 'at' };
  }
  return null;
};

/** `$11 and 49 cents`: the cents behind a sum. */
const centsBehind = (told: Told, money: MoneySpan): number => {
  const at = word(told, money.to) === 'and' ? money.to + 1 : money.to;
  const next = spansOf(told.line.spans, 'number').find(({ from }) => from === at);
  return next !== undefined && ['cents', 'cent', 'pence', 'p'].includes(word(told, next.to)) ? next.value : 0;
};

/** `nineteen ninety-nine`, `eleven fifty`: two numbers side by side in words are a sum. */
const spokenIn = (told: Told): PriceTold | null => {
  const all = numbers(told);
  for (const [at, first] of all.entries()) {
    const second = all[at + 1];
    const isPair =
      second !== undefined && second.from === first.to && first.digits === null && second.digits === null;
    if (!isPair || second.value < 10 || second.value >= hundred || first.value >= hundred) continue;
    return {
      cents: Math.round(first.value * hundred + second.value),
      isEach: isEachAt(told, second.to) ?? word(told, first.from - 1) === 'at',
    };
  }
  return null;
};

/** The bare number that is a price: behind a word for paying, written with cents, or standing last by itself. */
const bareIn = (told: Told, count: NumberSpan | undefined): PriceTold | null => {
  const free = numbers(told).filter((span) => span !== count && span.value > 0);
  const isCounted = ({ to }: NumberSpan): boolean => {
    const next = told.line.tokens[to];
    return (
      next !== undefined &&
      !next.isMark &&
      isEachAt(told, to) === null &&
      !['all', 'even', 'delivered'].includes(next.word)
    );
  };
  // "paid Dewey 20": a name may stand between
  const led =
    free.find(({ from }) => leads.has(word(told, from - 1))) ??
    free.find(({ from, to }) => payers.has(word(told, from - 2)) && word(told, to) === 'for');
  const written = free.find(({ digits }) => /^\d+\.\d\d$/.test(digits ?? ''));
  const summed = free.find(({ to }) => isEachAt(told, to) !== null);
  const last = free.filter((span) => !isCounted(span)).at(-1);
  const isAlone =
    last !== undefined &&
    (count !== undefined || quantities(told, 'mass').length > 0 || quantities(told, 'bags').length > 0);
  const found = led ?? written ?? summed ?? (isAlone ? last : undefined);
  if (found === undefined) return null;
  const isEach = isEachAt(told, found.to) ?? ['at', '@'].includes(word(told, found.from - 1));
  return { cents: Math.round(found.value * hundred), isEach };
};

/** The price; `count` is the bare number that says how many were bought. */
export const priceTold = (told: Told, count: NumberSpan | undefined): PriceTold | null => {
  const [money] = spansOf(told.line.spans, 'money');
  if (money !== undefined)
    return {
      cents: money.cents + centsBehind(told, money),
      isEach: money.each === true || isEachAt(told, money.to) === true,
    };
  return poundsIn(told) ?? spokenIn(told) ?? bareIn(told, count);
};
