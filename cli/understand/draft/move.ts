/** A pen moved, from words; without a distance it moved by its own length. */
import { namedGroups } from './group.ts';
import { type Build, known, quantities, type Told, written } from './told.ts';

const stripIn = (told: Told): string | null => {
  const { tokens } = told.line;
  const at = tokens.findIndex((token) => ['strip', 'plot', 'paddock', 'lane', 'row'].includes(token.word));
  const next = tokens[at + 1];
  return at < 0 || next === undefined || !/^(?:\d+|[a-z])$/.test(next.word)
    ? null
    : `${tokens[at]?.word} ${next.word}`;
};

export const buildMove: Build = (told) => {
  const named = namedGroups(told);
  const distance = quantities(told, 'length')[0];
  const group =
    named.length === 1 ? named[0] : told.carried.length === 1 && named.length === 0 ? told.carried[0] : null;
  const fields = {
    group: group ?? null,
    distance: distance === undefined ? null : written(distance.value, distance.unit),
    strip: stripIn(told),
  };
  return { fields: known(fields), missing: [], assumed: [] };
};
