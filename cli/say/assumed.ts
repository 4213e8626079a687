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

/** All of them as they are read, the same assumption for several groups said once. */
export const sayEachAssumed = (speech: Speech, assumed: readonly Assumed[]): readonly string[] => {
  const groups = new Map<string, string[]>();
  for (const each of eachOnce(assumed)) {
    const words = wordsOf(speech, each);
    const named = each.group === null || words.includes(each.group) ? [] : [each.group];
    groups.set(words, [...(groups.get(words) ?? []), ...named]);
  }
  return [...groups].map(([words, names]) =>
    names.length === 0 ? words : `for ${listed([...new Set(names)].map((name) => `the ${name}`))}, ${words}`,
  );
};

/** All of them in one line; null when nothing was assumed. */
export const sayAllAssumed = (speech: Speech, assumed: readonly Assumed[]): string | null => {
  const said = sayEachAssumed(speech, assumed);
  return said.length === 0 ? null : `Taken for granted: ${said.join('; ')}.`;
};

/** How many they are, counted as they are read, so that whoever counts the list comes to the same; null when nothing was assumed. */
export const sayHowManyAssumed = (speech: Speech, assumed: readonly Assumed[]): string | null => {
  const count = sayEachAssumed(speech, assumed).length;
  if (count === 0) return null;
  return `${count === 1 ? 'One thing is' : `${count} things are`} taken for granted here`;
};
