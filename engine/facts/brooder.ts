/** How warm chicks must be, how cold it gets around them, what they themselves show, and when heat may come off. */
import { addDays, type Day, daysBetween } from '../day.ts';
import type { Sign } from '../types.ts';
import { defineFact, type Reader } from './define.ts';
import { settingOf } from './setting.ts';
import { signsFor } from './signs-for.ts';

const daysInWeek = 7;

/** Signs that tell whether chicks have the warmth they want. */
const waysOfLying = ['piled', 'spread-out', 'panting', 'even', 'one-side'];

/** Warm-spot temperature for an age, °C; undefined before the hatch. */
const targetAt = (read: Reader, days: number): number | undefined =>
  read.maybeFigure('brooder/target', [days / daysInWeek]);

/** Coldest surroundings, °C, that birds of an age stand without heat: while they are in down, no less than the warm spot. */
const heatlessAt = (read: Reader, days: number, feathered: boolean): number | undefined =>
  (feathered ? read.maybeFigure('pasture/lowest-night', [days]) : undefined) ?? targetAt(read, days);

/** Signs of these names for the group or for all birds, oldest first. */
const signsOf = (read: Reader, fits: (sign: string) => boolean): readonly Sign[] =>
  signsFor(read).filter((each) => fits(each.sign) && each.on <= read.on);

/** The last record of the heat going on or off. */
const heatSign = (read: Reader): Sign | undefined =>
  signsOf(read, (sign) => sign === 'heat-off' || sign === 'heat-on').at(-1);

export const brooderFacts = [
  defineFact({
    id: 'brooder-target',
    unit: 'C',
    needs: ['age'],
    figures: ['brooder/target'],
    compute: (read) => targetAt(read, read.number('age')),
  }),
  defineFact({
    id: 'brooder-target-low',
    unit: 'C',
    needs: ['age', 'brooder-target'],
    figures: ['brooder/lowest-in-band'],
    // The two tables overlap but for the fifth week; the band is taken to reach down to the target there.
    compute: (read) => Math.min(read.figure('brooder/lowest-in-band'), read.number('brooder-target')),
  }),
  defineFact({
    id: 'brooder-target-high',
    unit: 'C',
    needs: ['age', 'brooder-target'],
    figures: ['brooder/highest-in-band'],
    compute: (read) => Math.max(read.figure('brooder/highest-in-band'), read.number('brooder-target')),
  }),
  defineFact({
    id: 'heat-down-on',
    unit: 'date',
    needs: ['age', 'brooder-target'],
    figures: ['brooder/target'],
    compute: (read) => {
      const age = read.number('age');
      const [, lastWeek] = read.spanOf('brooder/target');
      for (let ahead = 1; age + ahead <= lastWeek * daysInWeek; ahead += 1) {
        const then = targetAt(read, age + ahead);
        if (then !== undefined && then < read.number('brooder-target')) return addDays(read.on, ahead);
      }
      return undefined;
    },
  }),
  defineFact({
    id: 'surroundings',
    unit: 'C',
    per: 'flock',
    wants: ['tonight-low'],
    compute: (read) => {
      const room = settingOf(read, 'room-temperature');
      if (typeof room?.value === 'number') {
        if (room.on < read.on)
          read.assume('room-as-set', {
            room: { value: room.value, unit: 'C' },
            set: { value: room.on, unit: 'date' },
          });
        return room.value;
      }
      const low = read.maybe('tonight-low');
      if (typeof low !== 'number') return undefined;
      read.assume('brooder-as-cold-as-outside', { low: { value: low, unit: 'C' } });
      return low;
    },
  }),
  defineFact({
    id: 'brooder-reading',
    unit: 'C',
    figures: ['brooder/behaviour-stands'],
    compute: (read) => {
      const reading = read.state.settings['brooder-temperature']?.at(-1);
      if (typeof reading?.value !== 'number') return undefined;
      if (daysBetween(reading.on, read.on) >= read.figure('brooder/behaviour-stands')) return undefined;
      read.from(reading);
      return reading.value;
    },
  }),
  defineFact({
    id: 'heat-is-off',
    unit: null,
    compute: (read) => {
      const last = heatSign(read);
      if (last !== undefined) read.from(last);
      return last?.sign === 'heat-off';
    },
  }),
  defineFact({
    id: 'behaviour',
    unit: null,
    figures: ['brooder/behaviour-stands'],
    compute: (read) => {
      const last = signsOf(read, (sign) => waysOfLying.includes(sign)).at(-1);
      if (last === undefined || daysBetween(last.on, read.on) >= read.figure('brooder/behaviour-stands'))
        return undefined;
      read.from(last);
      return last.sign;
    },
  }),
  defineFact({
    id: 'heatless-floor',
    unit: 'C',
    needs: ['age', 'feathered'],
    figures: ['pasture/lowest-night', 'brooder/target'],
    compute: (read) => heatlessAt(read, read.number('age'), read.yes('feathered')),
  }),
  defineFact({
    id: 'heat-off-on',
    unit: 'date',
    needs: ['age', 'kind', 'feathered', 'heat-is-off', 'surroundings'],
    figures: ['brooder/target', 'pasture/lowest-night', 'pasture/feathered-by'],
    compute: (read): Day | undefined => {
      const off = heatSign(read);
      if (read.yes('heat-is-off') && off !== undefined) return off.on;
      const age = read.number('age');
      const around = read.number('surroundings');
      const feathersAt = read.yes('feathered') ? age : Math.max(age, read.figure('pasture/feathered-by'));
      // Past the last row of the table nothing changes any more, so there is nothing to look for.
      const [, oldest] = read.spanOf('pasture/lowest-night');
      for (let then = age; then <= Math.max(age, oldest); then += 1) {
        const least = heatlessAt(read, then, then >= feathersAt);
        if (least === undefined || around < least) continue;
        if (then > age) read.assume('nights-as-tonight', { around: { value: around, unit: 'C' } });
        return addDays(read.on, then - age);
      }
      return undefined;
    },
  }),
];
