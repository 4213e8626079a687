/** Birds that died or were taken, from words. */
import { readCount } from './count.ts';
import { pickGroup } from './group.ts';
import { type Build, known, lacking, longestTerm, says } from './told.ts';

export const buildLoss: Build = (told) => {
  const picked = pickGroup(told, () => true);
  const cause = says(told, 'no idea', 'do not know', 'not sure', 'unknown')
    ? 'unknown'
    : (longestTerm(told, 'cause')?.id ?? null);
  const fields = { group: picked.group, count: readCount(told), cause };
  return { fields: known(fields), missing: lacking(fields, 'group', 'count'), assumed: picked.assumed };
};
