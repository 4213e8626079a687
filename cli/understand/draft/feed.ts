/** Feed given, from words; without a group it went to all. */
import { namedGroups } from './group.ts';
import { readMass } from './mass.ts';
import { rationIn } from './ration.ts';
import { type Build, known, lacking } from './told.ts';

export const buildFeed: Build = (told) => {
  const mass = readMass(told);
  const named = namedGroups(told);
  const all = told.about.groups.filter((group) => group.place !== 'gone').length;
  const group =
    named.length === 1 ? named[0] : named.length === 0 && told.carried.length === 1 ? told.carried[0] : null;
  // several but not all of them: it has to be asked which got how much
  const unclear = named.length > 1 && named.length < all;
  const fields = { group: group ?? null, amount: mass.amount, ration: rationIn(told) };
  return {
    fields: known(fields),
    missing: [...lacking(fields, 'amount'), ...(unclear ? ['group'] : [])],
    assumed: mass.assumed,
  };
};
