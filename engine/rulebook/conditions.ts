/** Walking the conditions of a rule. */
import type { Condition, Leaf, Rule } from '../types.ts';
import type { Path } from './document.ts';

export const isLeaf = (condition: Condition): condition is Leaf => 'fact' in condition;

/** Every leaf with its path below the rule's root, in the order of the file. */
export const leavesOf = (
  condition: Condition,
  path: Path = ['when'],
): { readonly leaf: Leaf; readonly path: Path }[] => {
  if (isLeaf(condition)) return [{ leaf: condition, path }];
  if ('not' in condition) return leavesOf(condition.not, [...path, 'not']);
  const [key, list] =
    'all' in condition ? (['all', condition.all] as const) : (['any', condition.any] as const);
  return list.flatMap((each, index) => leavesOf(each, [...path, key, index]));
};

/** The {names} in a wording: fact ids, and figure ids by their slash. */
export const placeholdersIn = (template: string): string[] =>
  [...template.matchAll(/\{([^}]+)\}/g)].map((match) => match[1] as string);

const choreWordingsOf = ({ chore }: Rule): { readonly text: string; readonly path: Path }[] =>
  chore === null
    ? []
    : [
        { text: chore.says, path: ['chore', 'says'] },
        ...(chore.rightWhen === null ? [] : [{ text: chore.rightWhen, path: ['chore', 'right-when'] }]),
        ...(chore.ringWhen === null ? [] : [{ text: chore.ringWhen, path: ['chore', 'ring-when'] }]),
      ];

/** All wordings of a rule with their paths. */
export const wordingsOf = (rule: Rule): { readonly text: string; readonly path: Path }[] => [
  { text: rule.says, path: ['says'] },
  ...choreWordingsOf(rule),
  ...leavesOf(rule.when).map(({ leaf, path }) => ({ text: leaf.because, path: [...path, 'because'] })),
];
