/** Something bought, from words; a price for one is multiplied out exactly. */
import { spansOf } from '../spans.ts';
import { ownUnit } from './mass.ts';
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

/** Money of the line in hundredths: `at 19.50` and `each` times the number bought. */
const priceIn = (told: Told, many: number | null): number | null => {
  const money = spansOf(told.line.spans, 'money')[0];
  if (money !== undefined)
    return money.each === true && many !== null ? Math.round(money.cents * many) : money.cents;
  const bare = numbers(told).find((span) =>
    ['at', 'for', 'paid', '@', 'was', 'cost'].includes(told.line.tokens[span.from - 1]?.word ?? ''),
  );
  if (bare === undefined) return null;
  const each = ['at', '@'].includes(told.line.tokens[bare.from - 1]?.word ?? '');
  return Math.round(bare.value * 100 * (each ? (many ?? 1) : 1));
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

export const buildBuy: Build = (told) => {
  const what = whatIn(told);
  const bags = quantities(told, 'bags')[0];
  const mass = quantities(told, 'mass')[0];
  const whole = numbers(told).find(
    (span) =>
      Number.isInteger(span.value) &&
      !['at', 'for', 'paid', '@'].includes(told.line.tokens[span.from - 1]?.word ?? ''),
  );
  const many = bags?.value ?? whole?.value ?? null;
  // A bill is a sum: `paid the butcher 90` counts nothing.
  const isBill = what === 'processing' || what === 'electricity';
  const bill = isBill && whole !== undefined ? Math.round(whole.value * 100) : null;
  const cents = priceIn(told, many) ?? bill;
  const measure = told.about.measures.bag;
  const assumed: string[] = [];
  let amount: string | null = null;
  if (mass !== undefined)
    amount = written(bags === undefined ? mass.value : mass.value * bags.value, mass.unit);
  else if (bags !== undefined && measure !== undefined && what === 'feed') {
    const unit = ownUnit(told);
    const one = Math.round((measure.kg / unit.kg) * 100) / 100;
    amount = written(one * bags.value, unit.id);
    if (!measure.stated) assumed.push(`taking a bag as ${decimal(one)} ${unit.id}`);
  }
  const fields = {
    what,
    ration: what === 'feed' ? rationIn(told) : null,
    bags: bags === undefined ? null : written(bags.value, 'bag'),
    amount,
    count: bags === undefined && what !== 'feed' && !isBill ? (whole?.value ?? null) : null,
    price: cents === null ? null : moneyText(cents),
    group: groupFor(told),
  };
  return { fields: known(fields), missing: lacking(fields, 'what'), assumed };
};
