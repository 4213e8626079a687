/** Who a line about birds for others speaks of. */
import type { Line } from './all.ts';

const notNames = new Set(
  'i we they it he she you there that this who today yesterday dropped gave promised sold put reserve handed told save hold mark birds bird them the me us over oh no not ok so and end lend work free down deposit cash also now please note ma sir yes received cancellation price all mine hers payment take'.split(
    ' ',
  ),
);
const verbs = new Set(
  'collected took wants gets get paid pay pays picked got has have had ordered wanted asked asks owes owe is are was came fetched will needs need want wanted like likes take takes taking took reduces reduced raises raised backed changed cancels cancelled canceled cancel bailed claims claimed settled squared give gives gave would can to down dep says say had having promise promises promised gone goes dropped'.split(
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
  'from',
  'put',
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

/** Whose name opens a record: `barber 4`, `Mair's down for four`, `Bowls club: 10 head`; null for none. */
const opensWith = (words: string, line: Line): string | null => {
  const { tokens } = line;
  const [first] = tokens;
  if (first === undefined || (notNames.has(first.word) && first.word !== 'the') || verbs.has(first.word))
    return null;
  return leads.has(first.word) || fillers.has(first.word) ? null : nameFrom(words, line, 0);
};

const fillers = new Set(
  'yesterday today last this on at in by a an down thirty correction handing received receipt half'.split(
    ' ',
  ),
);

/** Whose name stands in a record: before a verb such as `wants`, behind a word such as `for`, or in front of all; null for none. */
export const findWho = (words: string, line: Line): string | null => {
  const { tokens } = line;
  const verb = tokens.findIndex((token) => verbs.has(token.word));
  const opening = tokens[0]?.word ?? '';
  const isName = verb > 0 && (opening === 'the' || !notNames.has(opening)) && !leads.has(opening);
  const first = isName ? nameFrom(words, line, 0) : null;
  return first ?? behind(words, line, leads) ?? opensWith(words, line);
};

/** Whose name stands in a question: behind `does`, `for`, `promise` and the like; null for none. */
export const findWhoAsked = (words: string, line: Line): string | null => behind(words, line, asking);
