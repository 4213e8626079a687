/** Who a line about birds for others speaks of. */
import type { Line } from './all.ts';

const notNames = new Set(
  'i we they it he she you there that this who today yesterday dropped gave promised sold put reserve handed told save hold mark birds bird them the'.split(
    ' ',
  ),
);
const verbs = new Set(
  'collected took wants gets paid picked got has ordered wanted asked owes is came fetched will needs want'.split(
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
  'a an two three four five six can one some for his her their of and said that on this bird birds chickens chicken at today yesterday tomorrow more next last she he they still owe get have had due yet already'.split(
    ' ',
  ),
);
/** Words before a name in a question besides those. */
const asking = new Set([...leads, 'does', 'did', 'do', 'has', 'have', 'promise', 'let', 'by']);
const titles = new Set(['mr', 'mrs', 'ms', 'miss', 'dr', 'my', 'our', 'the', 'his', 'her']);

const nameFrom = (words: string, { tokens, spans }: Line, at: number): string | null => {
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
  const said = tokens.slice(at, to).map((token) => token.word);
  if (said.length === 0 || said.every((word) => notNames.has(word) || titles.has(word))) return null;
  return words.slice(tokens[at]?.start ?? 0, tokens[to - 1]?.end ?? 0).replace(/['’]s?$/, '');
};

const behind = (words: string, line: Line, of: ReadonlySet<string>): string | null => {
  const { tokens } = line;
  for (const [at, token] of tokens.entries()) {
    if (!of.has(token.word)) continue;
    const next = tokens[at + 1]?.word ?? '';
    const name = notNames.has(next) && next !== 'the' ? null : nameFrom(words, line, at + 1);
    if (name !== null) return name;
  }
  return null;
};

/** Whose name stands in a record: before a verb such as `wants`, or behind a word such as `for`; null for none. */
export const findWho = (words: string, line: Line): string | null => {
  const { tokens } = line;
  const verb = tokens.findIndex((token) => verbs.has(token.word));
  const opening = tokens[0]?.word ?? '';
  const isName = verb > 0 && (opening === 'the' || !notNames.has(opening));
  const first = isName ? nameFrom(words, line, 0) : null;
  return first ?? behind(words, line, leads);
};

/** Whose name stands in a question: behind `does`, `for`, `promise` and the like; null for none. */
export const findWhoAsked = (words: string, line: Line): string | null => behind(words, line, asking);
