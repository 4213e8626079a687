/** The coldest night that birds can stand out of doors, by their age, their feathers and how harsh the night is. */
import type { Sign } from '../types.ts';
import type { Reader } from './define.ts';
import { signsFor } from './signs-for.ts';

/** Figures that `nightFloorFor` reads; a fact that uses it declares them. */
export const nightFigures = [
  'pasture/lowest-night',
  'pasture/wet-or-windy-adds',
  'pasture/thin-feathers-add',
];

/** Signs of these names for the group or for all birds, oldest first. */
export const signsOf = (read: Reader, ...names: readonly string[]): readonly Sign[] =>
  signsFor(read).filter((each) => names.includes(each.sign) && each.on <= read.on);

/** The coldest air, °C, that they stand in a pen; `harsh` is wet or windy. Undefined for an age that stands no night. */
export const nightFloorFor = (
  read: Reader,
  { harsh, feathered }: { readonly harsh: boolean; readonly feathered: boolean },
): number | undefined => {
  const dry = read.maybeFigure('pasture/lowest-night');
  if (dry === undefined) return undefined;
  const thin = !feathered && signsOf(read, 'bald', 'downy').length > 0;
  return (
    dry +
    (harsh ? read.figure('pasture/wet-or-windy-adds') : 0) +
    (thin ? read.figure('pasture/thin-feathers-add') : 0)
  );
};
