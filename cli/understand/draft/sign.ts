/** Something seen, from words; a sign that is in no list is kept in the keeper's own words as `other`. */
import { readCount } from './count.ts';
import { namedGroups } from './group.ts';
import { type Build, known, longestTerm } from './told.ts';

export const buildSign: Build = (told) => {
  const named = namedGroups(told);
  const group =
    named.length === 1 ? named[0] : named.length === 0 && told.carried.length === 1 ? told.carried[0] : null;
  const fields = {
    sign: longestTerm(told, 'sign')?.id ?? 'other',
    group: group ?? null,
    count: readCount(told),
    words: told.words.trim(),
  };
  return { fields: known(fields), missing: [], assumed: [] };
};
