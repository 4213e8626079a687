/** A group put out to the pen, or taken back to the brooder, from words. */
import { pickGroup, withoutPlaces } from './group.ts';
import { type Build, known, lacking, says, type Told } from './told.ts';

const saysBack = (told: Told): boolean =>
  !says(told, 'not back', 'never back') &&
  says(
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

const saysDaysOnly = (told: Told): boolean =>
  says(
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
    'then back in',
    'back in at night',
  );

export const buildOut: Build = (whole) => {
  // Where they go to is not where they are.
  const told = withoutPlaces(whole);
  const daysOnly = saysDaysOnly(told);
  const isBack = saysBack(told) && !daysOnly;
  const picked = pickGroup(told, (group) => group.place === (isBack ? 'pen' : 'brooder'));
  const fields = {
    group: picked.group,
    to: isBack ? 'brooder' : 'pen',
    'days-only': daysOnly ? true : null,
  };
  return { fields: known(fields), missing: lacking(fields, 'group'), assumed: picked.assumed };
};
