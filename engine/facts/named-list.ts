/** Values of unit `named`: ids with blanks between them, each with `=number` behind it or none. */

export const idsIn = (value: string): readonly string[] => value.split(' ').filter((each) => each !== '');

export const asNamed = (ids: readonly string[]): string => ids.join(' ');

/** Ids with their counts, largest first, equal ones by name. */
export const asCounted = (counts: ReadonlyMap<string, number>): string =>
  [...counts]
    .sort(([a, some], [b, others]) => others - some || (a < b ? -1 : 1))
    .map(([id, count]) => `${id}=${count}`)
    .join(' ');
