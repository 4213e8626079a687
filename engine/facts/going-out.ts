/** What decides whether birds may leave the brooder for the pen: feathers, nights they can stand, hardening off, room and cover. */
import { addDays, daysBetween } from '../day.ts';
import type { FromEntry } from '../types.ts';
import { defineFact, type Reader } from './define.ts';
import { nightFigures, nightFloorFor, signsOf } from './night-floor.ts';
import { settingFlag, settingNumber } from './setting.ts';

/** The first sign of the unbroken run of less heat that still lasts; undefined when the heat is as it was. */
const coolingSince = (read: Reader): FromEntry | undefined => {
  const daysOut = read.group.whereabouts.filter((each) => each.daysOnly && each.on <= read.on);
  const heated = signsOf(read, 'heat-on').at(-1);
  const cooler = [...signsOf(read, 'heat-down', 'heat-off'), ...daysOut].filter(
    (each) => heated === undefined || each.line > heated.line,
  );
  return cooler.sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : a.line - b.line))[0];
};

export const goingOutFacts = [
  defineFact({
    id: 'feathered',
    unit: null,
    needs: ['kind', 'age'],
    figures: ['pasture/feathered-by'],
    compute: (read) => {
      const seen = signsOf(read, 'feathered', 'bald', 'downy').at(-1);
      if (seen !== undefined) {
        read.from(seen);
        return seen.sign === 'feathered';
      }
      read.assume('feathered-by-age');
      return read.number('age') >= read.figure('pasture/feathered-by');
    },
  }),
  defineFact({
    id: 'night-floor',
    unit: 'C',
    needs: ['age', 'feathered', 'rain-soon', 'wind-soon'],
    figures: [...nightFigures, 'pasture/rain-that-wets', 'pasture/wind-that-chills'],
    compute: (read) => {
      const wet = read.number('rain-soon') >= read.figure('pasture/rain-that-wets');
      const windy = read.number('wind-soon') >= read.figure('pasture/wind-that-chills');
      return nightFloorFor(read, { harsh: wet || windy, feathered: read.yes('feathered') });
    },
  }),
  defineFact({
    id: 'days-of-hardening',
    unit: 'day',
    compute: (read) => {
      const since = coolingSince(read);
      if (since !== undefined) {
        read.from(since);
        return daysBetween(since.on, read.on);
      }
      // Looking ahead, the keeper is taken to begin today: otherwise no first day could ever be named.
      if (read.on <= read.asked) return undefined;
      read.assume('hardening-begins', { from: { value: read.asked, unit: 'date' } });
      return daysBetween(read.asked, read.on);
    },
  }),
  defineFact({
    id: 'pen-area',
    unit: 'm2',
    per: 'flock',
    compute: (read) => settingNumber(read, 'pen'),
  }),
  defineFact({
    id: 'pens',
    unit: null,
    per: 'flock',
    compute: (read) => {
      const pens = settingNumber(read, 'pens');
      if (pens === undefined) read.assume('one-pen');
      return pens ?? 1;
    },
  }),
  defineFact({
    id: 'birds-in-pens',
    unit: 'bird',
    per: 'flock',
    each: ['alive', 'place'],
    compute: (read) => {
      const places = read.each('place');
      return read
        .each('alive')
        .filter((_, index) => places[index]?.value === 'pen')
        .reduce((sum, each) => sum + Number(each.value ?? 0), 0);
    },
  }),
  defineFact({
    id: 'pen-room',
    unit: 'm2',
    needs: ['pen-area', 'pens', 'birds-in-pens', 'alive', 'place'],
    compute: (read) => {
      const others = read.number('birds-in-pens');
      const all = read.text('place') === 'pen' ? others : others + read.number('alive');
      return all === 0 ? undefined : (read.number('pen-area') * read.number('pens')) / all;
    },
  }),
  defineFact({
    id: 'pen-covered',
    unit: null,
    per: 'flock',
    compute: (read) => settingFlag(read, 'pen-cover'),
  }),
  defineFact({
    id: 'hunters-lately',
    unit: 'bird',
    per: 'flock',
    figures: ['pasture/hunters-remembered'],
    compute: (read) => {
      const since = addDays(read.on, -read.figure('pasture/hunters-remembered'));
      const taken = read.state.groups
        .flatMap((group) => group.losses)
        .filter((loss) => loss.on > since && loss.on <= read.on && read.causeClass(loss.cause) === 'hunter');
      read.from(...taken);
      return taken.reduce((sum, loss) => sum + loss.count, 0);
    },
  }),
];
