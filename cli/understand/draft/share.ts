/** Birds promised, handed over or paid for, from words. */
import { findWho } from '../find/who.ts';
import { type NumberSpan, spansOf } from '../spans.ts';
import { type Build, known, lacking, moneyText, numbers, says, type Told } from './told.ts';

const handed = [
  'collected',
  'took',
  'picked up',
  'dropped off',
  'handed',
  'gave',
  'got his',
  'got her',
  'got their',
  'delivered',
  'dropped',
  'came for',
  'fetched',
];
const paid = ['paid', 'payed', 'gave me', 'settled'];
/** A bare sum right behind `paid`, where the birds are counted elsewhere: `paid 60 for 4`. */
const barePaid = (told: Told): NumberSpan | undefined => {
  const sum = numbers(told).find((span) => paid.includes(told.line.tokens[span.from - 1]?.word ?? ''));
  return numbers(told).length > 1 ? sum : undefined;
};

const countIn = (told: Told): number | null => {
  const sum = barePaid(told);
  const whole = numbers(told).find((span) => span !== sum && Number.isInteger(span.value) && span.value > 0);
  if (whole !== undefined) return whole.value;
  const one = told.line.tokens.some(
    (token, at) =>
      ['a', 'one'].includes(token.word) &&
      ['bird', 'chicken', 'one', 'red', 'white'].includes(told.line.tokens[at + 1]?.word ?? ''),
  );
  return one ? 1 : null;
};

export const buildShare: Build = (told) => {
  const money = spansOf(told.line.spans, 'money')[0];
  const bare = barePaid(told);
  const cents = money?.cents ?? (bare === undefined ? undefined : Math.round(bare.value * 100));
  const step = says(told, ...paid) ? 'paid' : says(told, ...handed) ? 'handed' : 'promised';
  const fields = {
    who: findWho(told.words, told.line),
    count: countIn(told),
    step,
    paid: step === 'paid' && cents !== undefined ? moneyText(cents) : null,
  };
  return { fields: known(fields), missing: lacking(fields, 'who', 'count'), assumed: [] };
};
