/** Birds taken from the freezer and eaten, from words. */
import { readCount } from './count.ts';
import { type Build, known, lacking, quantities, says, written } from './told.ts';

export const buildEat: Build = (told) => {
  const weight = quantities(told, 'mass')[0];
  const one = says(
    told,
    'a chicken',
    'a bird',
    'another bird',
    'another chicken',
    'another one',
    'a whole',
    'the last',
    'the big one',
    'the biggest',
    'the small one',
    'one of them',
    'one of the',
    'a roaster',
  )
    ? 1
    : null;
  const fields = {
    count: readCount(told) ?? one,
    weight: weight === undefined ? null : written(weight.value, weight.unit),
  };
  return { fields: known(fields), missing: lacking(fields, 'count'), assumed: [] };
};
