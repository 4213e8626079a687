/** Where a line supposes something: the stretches behind `what if`, `suppose`, `without … rule` and the like. */
import type { Token } from '../tokens.ts';

/** A stretch of tokens that supposes something, cue and all; `begin` is where what is supposed begins. */
export interface SupposingClause {
  readonly from: number;
  readonly begin: number;
  readonly to: number;
}

const cues = `
what if|what about if|even if|let us say|lets say|say we|say i|say the|say it|suppose|supposing|imagine|assume|assuming|pretend
hypothetically|in case|in the event|provided|if|were|should tonight|should the|should it|should that|had|given|let us say|let the|make it|make that|say it is|with only|with just|figure
`
  .trim()
  .split(/[|\n]/)
  .map((cue) => cue.split(' '));

/** An `if` behind these only means whether. */
const whether = new Set('see know sure wonder wondering ask check tell me unsure certain'.split(' '));
const startOnly = new Set([
  'were',
  'should',
  'say',
  'provided',
  'assume',
  'imagine',
  'had',
  'given',
  'let',
  'make',
  'with',
  'figure',
]);
const joiners = new Set(['and', 'but', 'ok', 'so']);

/** Words that open the question behind a supposition: `if nights stayed above 55 could the reds …`. */
const openers = new Set('could would can do does how what when will should which may is are must'.split(' '));
/** Marks that stand inside a value. */
const inner = new Set(['-', '/', "'"]);

const cueAt = (tokens: readonly Token[], at: number): number | null => {
  const before = tokens[at - 1]?.word ?? '';
  for (const cue of cues) {
    if (!cue.every((word, n) => tokens[at + n]?.word === word)) continue;
    if (cue[0] === 'if' && whether.has(before)) return null;
    const opens = at === 0 || tokens[at - 1]?.isMark === true || joiners.has(before);
    if (startOnly.has(cue[0] ?? '') && !opens) continue;
    return at + cue.length;
  }
  return null;
};

/** Openers that ask by themselves; the others only before a subject: `could the reds …`, but not `is vacant`. */
const asking = new Set('how what when which'.split(' '));
const subjects = new Set(
  'i we you they it he she the my our this that these those there all both every each any anyone one'.split(
    ' ',
  ),
);
const pronouns = new Set('they it we you i he she that those these there'.split(' '));

const isOpener = (tokens: readonly Token[], at: number): boolean => {
  const word = tokens[at]?.word ?? '';
  if (!openers.has(word)) return false;
  const isInverted = subjects.has(tokens[at + 1]?.word ?? '') && !pronouns.has(tokens[at - 1]?.word ?? '');
  return asking.has(word) || isInverted;
};

const clauseEnd = (tokens: readonly Token[], from: number): number => {
  const end = tokens.findIndex(
    (token, n) =>
      n > from && ((token.isMark && !inner.has(token.word)) || (n > from + 2 && isOpener(tokens, n))),
  );
  return end < 0 ? tokens.length : end;
};

/** A line that names another value than the one there is, without any cue: `99 % instead`. */
const insteadClause = (tokens: readonly Token[]): SupposingClause | null => {
  const at = tokens.findIndex(
    ({ word }, n) => word === 'instead' || (word === 'rather' && tokens[n + 1]?.word === 'than'),
  );
  if (at < 0) return null;
  const opens = tokens.slice(0, at).findLastIndex(({ isMark, word }) => isMark && !inner.has(word)) + 1;
  return { from: opens, begin: opens, to: clauseEnd(tokens, opens) };
};

/** All such stretches, in the order of the line. */
export const findClauses = (tokens: readonly Token[]): readonly SupposingClause[] => {
  const found: SupposingClause[] = [];
  let at = 0;
  while (at < tokens.length) {
    const begin = cueAt(tokens, at);
    if (begin === null) {
      at += 1;
      continue;
    }
    const to = clauseEnd(tokens, begin);
    found.push({ from: at, begin, to });
    at = to;
  }
  const alone = found.length === 0 ? insteadClause(tokens) : null;
  return alone === null ? found : [alone];
};

/** A clause cut at each `and`, so that `it is 38 tonight and they are 5 weeks old` supposes two things. */
export const cutAtAnd = (tokens: readonly Token[], clause: SupposingClause): readonly SupposingClause[] => {
  const cuts = tokens.flatMap((token, at) =>
    token.word === 'and' && at > clause.begin && at < clause.to - 1 ? [at] : [],
  );
  const starts = [clause.from, ...cuts];
  return starts.map((from, n) => ({
    from,
    begin: n === 0 ? clause.begin : from + 1,
    to: starts[n + 1] ?? clause.to,
  }));
};
