/** What the lamps of a batch burn and cost. */
import { addDays, daysBetween } from '../../day.ts';
import { defineFact } from '../define.ts';
import { settingNumber } from '../setting.ts';
import { timesMoney } from '../sums/exact-money.ts';
import { ownRun, runFigures } from './season.ts';
import { boughtOn, partOfBought, shareByBirds } from './sharing.ts';

const hoursInDay = 24;
const wattsInKilowatt = 1000;

export const heatMoneyFacts = [
  defineFact({
    id: 'heat-days',
    unit: 'day',
    needs: ['kind'],
    figures: ['pasture/feathered-by'],
    compute: (read) => {
      const { group } = read;
      const off = read.state.signs.filter(
        (each) => each.sign === 'heat-off' && (each.group === null || each.group === group.name),
      );
      const out = group.whereabouts.find(({ place, daysOnly }) => place === 'pen' && !daysOnly);
      const ends = [...off, ...(out === undefined ? [] : [out])].filter(({ on }) => on >= group.arrived);
      const end = ends.map(({ on }) => on).sort()[0];
      read.from(...ends);
      if (end !== undefined) return daysBetween(group.arrived, end);
      const feathered = addDays(group.hatched, read.figure('pasture/feathered-by'));
      read.assume('heat-until-feathered', { until: { value: feathered, unit: 'date' } });
      return Math.max(0, daysBetween(group.arrived, feathered));
    },
  }),
  defineFact({
    id: 'heat-lamps',
    unit: 'lamp',
    needs: ['arrived-alive'],
    figures: ['brooder/least-lamps'],
    compute: (read) => {
      const set = settingNumber(read, 'lamps');
      if (set !== undefined) return set;
      if ((settingNumber(read, 'heat-plates') ?? 0) > 0) return 0;
      const lamps = read.figure('brooder/least-lamps', [read.number('arrived-alive')]);
      read.assume('usual-number-of-lamps', { lamps: { value: lamps, unit: 'lamp' } });
      return lamps;
    },
  }),
  defineFact({
    id: 'heat-energy',
    unit: 'kWh',
    needs: ['heat-days', 'heat-lamps', 'lamp-watts'],
    compute: (read) =>
      (read.number('heat-days') * hoursInDay * read.number('heat-lamps') * read.number('lamp-watts')) /
      wattsInKilowatt,
  }),
  defineFact({
    id: 'cost-heat',
    unit: 'money',
    wants: ['heat-energy'],
    figures: runFigures,
    compute: (read) => {
      const run = ownRun(read);
      const bills = boughtOn(read, run, 'heat');
      // A bill that is on record has the lamps in it already.
      if (bills.length > 0) return partOfBought(read, run, bills, shareByBirds);
      const price = settingNumber(read, 'electricity-price');
      if (price === undefined) {
        read.assume('heat-not-counted');
        return 0;
      }
      const energy = read.maybe('heat-energy');
      return energy === undefined ? undefined : timesMoney(price, Number(energy));
    },
  }),
];
