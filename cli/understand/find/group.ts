/** Which groups of birds a line names: by name, by kind, by where they live, or all of them. */
import type { GroupSpan } from '../spans.ts';
import { stemOf } from '../stem.ts';
import type { Token } from '../tokens.ts';
import type { KnownGroup } from '../types.ts';

const everyone = [
  ['all', 'the', 'birds'],
  ['all', 'of', 'them'],
  ['both', 'groups'],
  ['each', 'group'],
  ['every', 'group'],
  ['the', 'whole', 'flock'],
  ['the', 'flock'],
  ['everyone'],
  ['everybody'],
  ['both'],
];

const places: readonly (readonly [readonly string[], KnownGroup['place']])[] = [
  [['in', 'the', 'brooder'], 'brooder'],
  [['brooder', 'birds'], 'brooder'],
  [['brooder', 'chicks'], 'brooder'],
  [['in', 'the', 'pen'], 'pen'],
  [['pen', 'birds'], 'pen'],
  [['on', 'the', 'grass'], 'pen'],
  [['on', 'grass'], 'pen'],
];

const tails = new Set([
  'one',
  'ones',
  'birds',
  'bird',
  'chicks',
  'chick',
  'chickens',
  'hens',
  'group',
  'batch',
  'guys',
  'fellas',
]);

/** One way to name birds: its stems, the groups meant, and the kind of bird. */
export interface Naming {
  readonly words: readonly string[];
  readonly names: readonly string[];
  readonly bird: string | null;
}

const startsWith = (tokens: readonly Token[], at: number, words: readonly string[]): boolean =>
  words.every((each, n) => tokens[at + n]?.word === each || tokens[at + n]?.stem === each);

const stems = (name: string): readonly string[] =>
  name
    .toLowerCase()
    .split(/[\s-]+/)
    .map(stemOf);

/** All ways to name a bird on this place, longest first, so that `late whites` is tried before `whites`. */
export const nameBirds = (
  groups: readonly KnownGroup[],
  kinds: Readonly<Record<string, readonly string[]>>,
): readonly Naming[] => {
  const living = groups.filter((group) => group.place !== 'gone');
  const own = groups.map((group) => ({ words: stems(group.name), names: [group.name], bird: group.kind }));
  const byKind = Object.entries(kinds).flatMap(([kind, words]) =>
    words.map((each) => {
      const named = stems(each);
      const sameWord = living.filter((group) => stems(group.name).includes(named[0] ?? ''));
      const same = sameWord.length > 0 ? sameWord : living.filter((group) => group.kind === kind);
      return { words: named, names: same.map((group) => group.name), bird: kind };
    }),
  );
  return [...own, ...byKind].sort((one, other) => other.words.length - one.words.length);
};

/** The groups named in a line, by the ways to name them. A kind of bird that is not kept here is found with no names. */
export const findGroups = (
  tokens: readonly Token[],
  groups: readonly KnownGroup[],
  namings: readonly Naming[],
): readonly GroupSpan[] => {
  const living = groups.filter((group) => group.place !== 'gone').map((group) => group.name);
  const found: GroupSpan[] = [];
  let at = 0;
  while (at < tokens.length) {
    const begin = at;
    const naming = namings.find((each) => startsWith(tokens, begin, each.words));
    const every = everyone.find((words) => startsWith(tokens, begin, words));
    const place = places.find(([words]) => startsWith(tokens, begin, words));
    if (naming !== undefined) {
      const end = begin + naming.words.length;
      const last = tokens[end - 1]?.word ?? '';
      const tail = tails.has(tokens[end]?.word ?? '') ? end + 1 : end;
      const word = tokens[tail - 1]?.word ?? last;
      found.push({
        kind: 'group',
        from: begin,
        to: tail,
        names: naming.names,
        bird: naming.bird,
        one: !word.endsWith('s'),
      });
      at = tail;
    } else if (every !== undefined) {
      found.push({
        kind: 'group',
        from: begin,
        to: begin + every.length,
        names: living,
        bird: null,
        one: false,
      });
      at = begin + every.length;
    } else if (place !== undefined) {
      const names = groups.filter((group) => group.place === place[1]).map((group) => group.name);
      if (names.length > 0)
        found.push({
          kind: 'group',
          from: begin,
          to: begin + place[0].length,
          names,
          bird: null,
          one: false,
        });
      at = begin + place[0].length;
    } else at += 1;
  }
  return found;
};
