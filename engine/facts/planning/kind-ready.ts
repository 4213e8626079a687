/** At which age birds of a kind that are not here yet are expected to have the wanted carcass. */
import type { Reader } from '../define.ts';
import { planCurveFor, planFigures } from '../growth/plan.ts';
import { firstWhere } from '../sums/search.ts';

export const readyNeeds = ['wanted-carcass'];
export const readyFigures = [
  ...planFigures,
  'process/dressing',
  'process/window-opens',
  'process/held-longest',
];

/** Kind and sexes that chicks to order are taken to be where nothing else was said. */
export const usualKind = 'fast';
const usualSexes = 'mixed';

/** Live weight, kg, that dresses to the wanted carcass. */
export const liveWanted = (read: Reader, kind: string): number =>
  read.number('wanted-carcass') / read.figure('process/dressing', [kind]);

/** Age in days, inside the ages at which such birds are processed at all. The fact declares `readyNeeds` and `readyFigures`. */
export const readyAge = (read: Reader, kind: string): number => {
  const opens = read.figure('process/window-opens', [kind]);
  const curve = planCurveFor(read, kind, usualSexes, opens);
  const last = read.figure('process/held-longest', [kind]);
  return firstWhere(opens, last, (age) => curve(age) >= liveWanted(read, kind)) ?? last;
};
