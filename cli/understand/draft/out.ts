/** A group put out to the pen, or taken back to the brooder, from words. */
import { pickGroup } from './group.ts';
import { type Build, known, lacking, says } from './told.ts';

export const buildOut: Build = (told) => {
  const isBack = says(
    told,
    'back in',
    'back inside',
    'back to the brooder',
    'back into the brooder',
    'brought in',
    'brought them in',
    'back indoors',
    'in again',
    'back in the brooder',
    'brought them back in',
  );
  const picked = pickGroup(told, (group) => group.place === (isBack ? 'pen' : 'brooder'));
  const daysOnly = says(
    told,
    'for the day',
    'days only',
    'daytime',
    'during the day',
    'back tonight',
    'back in tonight',
    'in at night',
    'just for the afternoon',
    'for the afternoon',
    'day trip',
    'back in at night',
  );
  const fields = {
    group: picked.group,
    to: isBack && !daysOnly ? 'brooder' : 'pen',
    'days-only': daysOnly ? true : null,
  };
  return { fields: known(fields), missing: lacking(fields, 'group'), assumed: picked.assumed };
};
