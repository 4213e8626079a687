/** Birds promised, handed over or paid for, from words. */
import { spansOf } from '../spans.ts';
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
const notNames = new Set(
  'i we they it he she you there that this who today yesterday dropped gave promised sold put reserve handed told save hold mark birds bird them the'.split(
    ' ',
  ),
);
const verbs = new Set(
  'collected took wants gets paid picked got has ordered wanted asked owes is came fetched will needs'.split(
    ' ',
  ),
);
const leads = new Set([
  'for',
  'to',
  'told',
  'gave',
  'promised',
  'at',
  'handed',
  'with',
  'off',
  'give',
  'gives',
  'save',
]);
const ends = new Set(
  'a an two three four five six can one some for his her their of and said that on this bird birds chickens chicken at today yesterday tomorrow more next last she he they'.split(
    ' ',
  ),
);
const titles = new Set(['mr', 'mrs', 'ms', 'miss', 'dr', 'my', 'our', 'the', 'his', 'her']);

const nameFrom = (told: Told, at: number): string | null => {
  const { tokens, spans } = told.line;
  let to = at;
  const isFree = (n: number): boolean => {
    const token = tokens[n];
    const isValue = spans.some((span) => span.kind !== 'term' && span.from <= n && n < span.to);
    return (
      token !== undefined &&
      !token.isMark &&
      !isValue &&
      !ends.has(token.word) &&
      !verbs.has(token.word) &&
      !leads.has(token.word)
    );
  };
  while (isFree(to) && to - at < 4) to += 1;
  const words = tokens.slice(at, to).map((token) => token.word);
  if (words.length === 0 || words.every((word) => notNames.has(word) || titles.has(word))) return null;
  return told.words.slice(tokens[at]?.start ?? 0, tokens[to - 1]?.end ?? 0).replace(/['’]s?$/, '');
};

const whoIn = (told: Told): string | null => {
  const { tokens } = told.line;
  const verb = tokens.findIndex((token) => verbs.has(token.word));
  if (verb > 0 && !notNames.has(tokens[0]?.word ?? '')) {
    const name = nameFrom(told, 0);
    if (name !== null) return name;
  }
  for (const [at, token] of tokens.entries()) {
    if (!leads.has(token.word)) continue;
    const name =
      notNames.has(tokens[at + 1]?.word ?? '') && tokens[at + 1]?.word !== 'the'
        ? null
        : nameFrom(told, at + 1);
    if (name !== null) return name;
  }
  return null;
};

const countIn = (told: Told): number | null => {
  const whole = numbers(told).find((span) => Number.isInteger(span.value) && span.value > 0);
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
  const step = says(told, ...paid) ? 'paid' : says(told, ...handed) ? 'handed' : 'promised';
  const fields = {
    who: whoIn(told),
    count: countIn(told),
    step,
    paid: step === 'paid' && money !== undefined ? moneyText(money.cents) : null,
  };
  return { fields: known(fields), missing: lacking(fields, 'who', 'count'), assumed: [] };
};
