/** What was taken for granted, in words: each thing once, with the groups it was taken for. */
import type { Assumed } from '../../engine/types.ts';
import { listed } from './listed.ts';
import { fill } from './phrase.ts';
import type { Speech } from './speech.ts';

const wordsOf = (speech: Speech, { id, group, values }: Assumed): string =>
  fill(speech, speech.book.assumptions[id] ?? id, { group: { value: group, unit: null }, ...values });

/** One assumption, with its group where it is one group's. */
export const sayAssumed = (speech: Speech, assumed: Assumed): string => {
  const words = wordsOf(speech, assumed);
  return assumed.group === null || words.includes(assumed.group)
    ? words
    : `for the ${assumed.group}, ${words}`;
};

/** The same taken for the same birds on two days of one answer is told once, as it was first. */
const eachOnce = (assumed: readonly Assumed[]): readonly Assumed[] =>
  assumed.filter(
    ({ id, group }, at) => assumed.findIndex((other) => other.id === id && other.group === group) === at,
  );

/** All of them in one line, the same assumption for several groups said once; null when nothing was assumed. */
export const sayAllAssumed = (speech: Speech, assumed: readonly Assumed[]): string | null => {
  const groups = new Map<string, string[]>();
  for (const each of eachOnce(assumed)) {
    const words = wordsOf(speech, each);
    const named = each.group === null || words.includes(each.group) ? [] : [each.group];
    groups.set(words, [...(groups.get(words) ?? []), ...named]);
  }
  if (groups.size === 0) return null;
  const said = [...groups].map(([words, names]) =>
    names.length === 0 ? words : `for ${listed([...new Set(names)].map((name) => `the ${name}`))}, ${words}`,
  );
  return `Taken for granted: ${said.join('; ')}.`;
};
