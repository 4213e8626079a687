/** Birds kept back from processing, from words. */
import { readCount } from './count.ts';
import { pickGroup } from './group.ts';
import { type Build, known, lacking, plain } from './told.ts';

const reasons = new Set([
  'breed',
  'breeding',
  'lay',
  'eggs',
  'pet',
  'pets',
  'grow',
  'laying',
  'small',
  'underweight',
]);

export const buildKeep: Build = (told) => {
  const picked = pickGroup(told, () => true);
  const until =
    told.days.until ?? (told.days.on !== null && told.days.on > told.about.today ? told.days.on : null);
  const why = plain(told).find((word) => reasons.has(word)) ?? null;
  const fields = { group: picked.group, count: readCount(told), until, why };
  return { fields: known(fields), missing: lacking(fields, 'group', 'count'), assumed: picked.assumed };
};
