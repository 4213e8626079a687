/** The currency that words name, by its sign; one without a sign of its own goes by what it is called. */
const named: Readonly<Record<string, string>> = {
  $: '$',
  dollar: '$',
  dollars: '$',
  usd: '$',
  bucks: '$',
  '£': '£',
  pound: '£',
  pounds: '£',
  sterling: '£',
  gbp: '£',
  quid: '£',
  '€': '€',
  euro: '€',
  euros: '€',
  eur: '€',
};

/** The sign that a word of the line stands for; undefined where none does. */
export const currencyNamed = (words: readonly string[]): string | undefined =>
  words.map((word) => named[word.toLowerCase()]).find((sign) => sign !== undefined);

/** The sign that a sum is typed with, as in `£12`; undefined where there is none. */
export const signTyped = (words: string): string | undefined => /([$£€])\s?\d/.exec(words)?.[1];
