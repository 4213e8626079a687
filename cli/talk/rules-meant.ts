/** Which rules of a question a keeper means by some words: `feather` → go-out/not-feathered. */
import { known } from '../../engine/index.ts';
import type { Condition, Rule, Rulebook } from '../../engine/types.ts';
import { stemOf } from '../understand/stem.ts';

/** How much a word counts where it stands: in the rule's name, in what it compares, in its wording. */
const weights = { name: 4, compared: 2, wording: 1 };

/** A shorter stem begins too many others. */
const shortest = 4;

const stemsIn = (text: string): ReadonlySet<string> =>
  new Set(
    text
      .toLowerCase()
      .split(/[^a-z]+/)
      .filter((word) => word !== '')
      .map(stemOf),
  );

/** A stem, or one that it begins: `feather` is also meant by `feathered`. */
const isIn = (stems: ReadonlySet<string>, stem: string): boolean =>
  [...stems].some((each) => each === stem || (stem.length >= shortest && each.startsWith(stem)));

/** Ids of the facts and figures that a condition compares, and its wordings. */
const comparedIn = (condition: Condition): readonly string[] => {
  if ('all' in condition) return condition.all.flatMap(comparedIn);
  if ('any' in condition) return condition.any.flatMap(comparedIn);
  if ('not' in condition) return comparedIn(condition.not);
  return [condition.fact, condition.figure ?? '', condition.other ?? ''];
};

/** Figures that go into the facts a rule compares stand behind it as well. */
const figuresBehind = (ids: readonly string[]): readonly string[] =>
  known.facts.filter(({ id }) => ids.includes(id)).flatMap(({ figures }) => figures);

const scoreOf = (rule: Rule, words: readonly string[]): number => {
  const compared = comparedIn(rule.when);
  const places = [
    { stems: stemsIn(rule.id.split('/')[1] ?? ''), weight: weights.name },
    { stems: stemsIn([...compared, ...figuresBehind(compared)].join(' ')), weight: weights.compared },
    { stems: stemsIn(`${rule.says.replace(/\{[^}]*\}/g, ' ')} ${rule.whyRight}`), weight: weights.wording },
  ];
  return words
    .map(stemOf)
    .map((stem) => places.find(({ stems }) => isIn(stems, stem))?.weight ?? 0)
    .reduce((sum, each) => sum + each, 0);
};

/** The rules of these questions that the words fit best; several where they fit equally well, none where no word fits. */
export const rulesMeant = (
  book: Rulebook,
  questions: readonly string[],
  words: string,
): readonly string[] => {
  const said = words.split(' ');
  const scored = Object.values(book.rules)
    .filter((rule) => questions.includes(rule.question))
    .map((rule) => ({ id: rule.id, score: scoreOf(rule, said) }));
  const best = Math.max(0, ...scored.map(({ score }) => score));
  return best === 0 ? [] : scored.filter(({ score }) => score === best).map(({ id }) => id);
};
