/** Which group a record is about: the one named, the one spoken of before, or the only one it can be. */
import { type GroupSpan, spansOf } from '../spans.ts';
import type { KnownGroup } from '../types.ts';
import type { Told } from './told.ts';

export interface Picked {
  readonly group: string | null;
  readonly assumed: readonly string[];
}

const none: Picked = { group: null, assumed: [] };

/** The groups a line names, without doubles. */
export const namedGroups = (told: Told): readonly string[] => [
  ...new Set(spansOf(told.line.spans, 'group').flatMap((span) => span.names)),
];

const homes = new Map<string, KnownGroup['place']>([
  ['brooder', 'brooder'],
  ['tank', 'brooder'],
  ['shed', 'brooder'],
  ['pen', 'pen'],
  ['ark', 'pen'],
  ['tractor', 'pen'],
  ['grass', 'pen'],
]);

/** The groups that were fed: those named, or those that are where the feed went: `20 lb to the pen`. */
export const groupsFed = (told: Told): readonly string[] => {
  const named = namedGroups(told);
  if (named.length > 0) return named;
  const { tokens } = told.line;
  const places = new Set(
    tokens.flatMap(({ word }, at) => {
      const before = tokens[at - 1]?.word === 'the' ? tokens[at - 2]?.word : tokens[at - 1]?.word;
      const place = homes.get(word);
      return place !== undefined && ['to', 'into', 'in', 'by', 'of', 'for'].includes(before ?? '')
        ? [place]
        : [];
    }),
  );
  return told.about.groups.filter(({ place }) => places.has(place)).map(({ name }) => name);
};

/** The first group span, known group or not. */
export const firstGroup = (told: Told): GroupSpan | null => spansOf(told.line.spans, 'group')[0] ?? null;

/** The same line without groups that are only named by a place, for a record of birds that go there. */
export const withoutPlaces = (told: Told): Told => ({
  ...told,
  line: {
    ...told.line,
    spans: told.line.spans.filter((span) => span.kind !== 'group' || span.byPlace !== true),
  },
});

/** Picks the group among those that can be meant; null when that takes asking. */
export const pickGroup = (told: Told, can: (group: KnownGroup) => boolean): Picked => {
  const named = namedGroups(told);
  if (named.length === 1) return { group: named[0] ?? null, assumed: [] };
  const possible = told.about.groups.filter(
    (group) => group.place !== 'gone' && group.alive > 0 && can(group),
  );
  if (named.length > 1) {
    const left = possible.filter((group) => named.includes(group.name));
    return left.length === 1 && left[0] !== undefined
      ? { group: left[0].name, assumed: [`taking the ${left[0].name}`] }
      : none;
  }
  if (firstGroup(told) !== null) return none;
  if (told.carried.length === 1) return { group: told.carried[0] ?? null, assumed: [] };
  const only = possible.length === 1 ? possible[0] : undefined;
  return only === undefined
    ? none
    : { group: only.name, assumed: [`taking the ${only.name}, the only group it can be`] };
};
