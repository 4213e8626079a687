/** What many facts want to see of the same records, such as the feedings by day: made once for as long as the records stay. */

/** Hands out what `make` makes of some parts of a state; `make` is a pure function that is the same one every time. */
export type See = <Parts extends readonly object[], T>(make: (...parts: Parts) => T, ...parts: Parts) => T;

/** The same for facts: of lists alone, since what is looked into by keys has to be put down key by key. */
export type SeeLists = <Lists extends readonly (readonly object[])[], T>(
  make: (...lists: Lists) => T,
  ...lists: Lists
) => T;

interface Kept {
  readonly made: Map<unknown, unknown>;
  readonly next: WeakMap<object, Kept>;
}

const keepNothing = (): Kept => ({ made: new Map(), next: new WeakMap() });

/** Keeps what was made for as long as the parts it was made of are in use; make one for as long as a ledger is open. */
export const rememberViews = (): See => {
  const root = keepNothing();
  const keptFor = (parts: readonly object[]): Kept => {
    let kept = root;
    for (const part of parts) {
      const next = kept.next.get(part) ?? keepNothing();
      kept.next.set(part, next);
      kept = next;
    }
    return kept;
  };
  return <Parts extends readonly object[], T>(make: (...parts: Parts) => T, ...parts: Parts): T => {
    const { made } = keptFor(parts);
    if (!made.has(make)) made.set(make, make(...parts));
    return made.get(make) as T;
  };
};

/** By day, oldest first within the order given: what was told of each. */
export const byDay = <T extends { readonly on: string }>(
  entries: readonly T[],
): ReadonlyMap<string, readonly T[]> => {
  const found = new Map<string, T[]>();
  for (const each of entries) {
    const others = found.get(each.on);
    if (others === undefined) found.set(each.on, [each]);
    else others.push(each);
  }
  return found;
};

/** What was told of a group or of all birds, in the order given. */
export type OfGroup<T> = (group: string) => readonly T[];

/** Parts what was told of single groups from what was told of all of them. */
export const byGroup = <T extends { readonly group: string | null }>(entries: readonly T[]): OfGroup<T> => {
  const places = new Map<string | null, number[]>([[null, []]]);
  entries.forEach(({ group }, at) => {
    const others = places.get(group);
    if (others === undefined) places.set(group, [at]);
    else others.push(at);
  });
  const known = new Map<string, readonly T[]>();
  return (group) => {
    const before = known.get(group);
    if (before !== undefined) return before;
    const own = [...(places.get(group) ?? []), ...(places.get(null) ?? [])].sort((a, b) => a - b);
    const found = own.map((at) => entries[at] as T);
    known.set(group, found);
    return found;
  };
};
