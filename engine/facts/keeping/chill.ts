/** How long a carcass of some weight may take to be chilled through. */
import type { Reader } from '../define.ts';

/** What a fact must declare to use `chillSpan`. */
export const chillFigures = ['keep/chill-light', 'keep/chill-heavy', 'keep/chill-hours'];

/** The class of a carcass weight in kg; both ends of the middle class belong to it. */
export const chillClass = (read: Reader, weight: number): 'light' | 'middle' | 'heavy' => {
  if (weight < read.figure('keep/chill-light')) return 'light';
  return weight > read.figure('keep/chill-heavy') ? 'heavy' : 'middle';
};

/** Time for a carcass of a weight in kg, days. */
export const chillSpan = (read: Reader, weight: number): number =>
  read.figure('keep/chill-hours', [chillClass(read, weight)]);
