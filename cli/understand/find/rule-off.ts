/** Which rule a line wants switched off: `without the feather rule`, `if we ignored the rule about rain`. */
import type { Token } from '../tokens.ts';
import type { SupposingClause } from './clauses.ts';

const away = new Set(
  'without ignoring ignore ignored ignores skip skipped skipping drop dropped dropping disregard disregarded disregarding forget forgot except leaving left leave dropped waive waived'.split(
    ' ',
  ),
);
const ruleWords = new Set(['rule', 'rules', 'limit', 'limits', 'condition', 'requirement']);
/** Words that stand around the rule's own. */
const around = new Set(
  'the a that this your our out of off aside about on for against any one and we i you'.split(' '),
);
/** How far behind the word that switches it off a rule is looked for. */
const farthest = 8;

/** A rule that is to be switched off, by the words that name it. */
export interface RuleOff extends SupposingClause {
  readonly words: readonly string[];
}

const contentOf = (tokens: readonly Token[], from: number, to: number): readonly string[] =>
  tokens
    .slice(from, to)
    .filter((token) => !token.isMark && !around.has(token.word))
    .map((token) => token.word);

/** The first rule that is to be switched off, or null. */
export const findRuleOff = (tokens: readonly Token[]): RuleOff | null => {
  const at = tokens.findIndex((token) => away.has(token.word));
  const rule = tokens.findIndex(
    (token, n) => at >= 0 && n > at && n <= at + farthest && ruleWords.has(token.word),
  );
  if (rule < 0) return null;
  const before = contentOf(tokens, at + 1, rule);
  if (before.length > 0) return { from: at, begin: at, to: rule + 1, words: before };
  // "the rule about rain": what it is about comes behind it, up to a mark.
  const mark = tokens.findIndex((token, n) => n > rule && token.isMark);
  const to = mark < 0 ? tokens.length : mark;
  const after = contentOf(tokens, rule + 1, to);
  return after.length === 0 ? null : { from: at, begin: at, to, words: after };
};
