/** Which groups of birds a line names: by name, by kind, by where they live, or all of them. */
import type { GroupSpan } from '../spans.ts';
import { stemOf } from '../stem.ts';
import type { Token } from '../tokens.ts';
import type { KnownGroup } from '../types.ts';

const everyone = [
  ['all', 'the', 'birds'],
  ['all', 'of', 'them'],
  ['both', 'groups'],
  ['both', 'lots'],
  ['both', 'flocks'],
  ['each', 'lot'],
  ['each', 'pen'],
  ['the', 'lot', 'of', 'them'],
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
  'un',
  'uns',
  'yin',
  'yins',
  'een',
  'eens',
  'lot',
  'lads',
  'crowd',
  'sort',
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

/** Words that set the younger of two groups apart from the older one, by size or age. */
const younger = new Set(
  'little small smaller smallest young younger youngest wee tiny lil baby later'.split(' '),
);
const older = new Set('big bigger large larger older oldest fat meat'.split(' '));
/** What such a word is said of, or where they are: `the little ones`, `the grass crowd`. */
const crowds = new Set(
  'one ones un uns yin yins een eens lot crowd mob bunch gang fellas fellows lads boys guys birds chicks flock group kind sort end team'.split(
    ' ',
  ),
);
const lone = new Map([
  ['littluns', 'younger'],
  ['littlest', 'younger'],
  ['babies', 'younger'],
  ['biguns', 'older'],
]);
const homes = new Map<string, KnownGroup['place']>([
  ['brooder', 'brooder'],
  ['shed', 'brooder'],
  ['garage', 'brooder'],
  ['pen', 'pen'],
  ['grass', 'pen'],
  ['field', 'pen'],
  ['pasture', 'pen'],
  ['ark', 'pen'],
  ['tractor', 'pen'],
]);

interface Beside {
  readonly names: readonly string[];
  readonly to: number;
}

/** The one of two living groups that the words set apart from the other: by its age, or by where it is. */
const besideAt = (tokens: readonly Token[], at: number, groups: readonly KnownGroup[]): Beside | null => {
  const [young, old, third] = groups
    .filter(({ place }) => place !== 'gone')
    .toSorted((one, other) => (one.hatched < other.hatched ? 1 : -1));
  if (young === undefined || old === undefined || third !== undefined || young.hatched === old.hatched)
    return null;
  const word = tokens[at]?.word ?? '';
  const side = lone.get(word);
  if (side !== undefined) return { names: [side === 'younger' ? young.name : old.name], to: at + 1 };
  if (!crowds.has(tokens[at + 1]?.word ?? '')) return null;
  if (younger.has(word)) return { names: [young.name], to: at + 2 };
  if (older.has(word)) return { names: [old.name], to: at + 2 };
  const home = homes.get(word);
  const there = home === undefined ? [] : [young, old].filter(({ place }) => place === home);
  return there.length === 0 ? null : { names: there.map(({ name }) => name), to: at + 2 };
};

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
    const beside = naming === undefined && every === undefined ? besideAt(tokens, begin, groups) : null;
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
    } else if (beside !== null) {
      const one = ['one', 'un', 'yin', 'een'].includes(tokens[beside.to - 1]?.word ?? '');
      found.push({ kind: 'group', from: begin, to: beside.to, names: beside.names, bird: null, one });
      at = beside.to;
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
          byPlace: true,
        });
      at = begin + place[0].length;
    } else at += 1;
  }
  return found;
};
