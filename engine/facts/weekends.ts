/** How likely a group has the wanted carcass by the weekends around the day it should be ready. */
import { addDays, type Day, daysBetween, weekdayOf } from '../day.ts';
import { defineFact, type Fact } from './define.ts';
import { flockPace, paceFigures, paceNeeds } from './growth/live.ts';
import { normalChance } from './sums/normal.ts';

const [saturday, daysInWeek] = [6, 7];

/** The first Saturday from a day on, that day included. */
const saturdayFrom = (day: Day): Day => addDays(day, (saturday - weekdayOf(day) + daysInWeek) % daysInWeek);

/** The Saturdays around a day that are not gone by: the last before it where there is one, and two more. */
const saturdaysAround = (ready: Day, from: Day): readonly [Day, Day, Day] => {
  const after = saturdayFrom(ready > from ? ready : from);
  const before = addDays(after, -daysInWeek);
  const first = before >= from ? before : after;
  return [first, addDays(first, daysInWeek), addDays(first, 2 * daysInWeek)];
};

const weekend = (id: string, index: 0 | 1 | 2): readonly Fact[] => [
  defineFact({
    id,
    unit: 'date',
    needs: ['ready-on'],
    compute: (read) => saturdaysAround(read.text('ready-on'), read.asked)[index],
  }),
  defineFact({
    id: `${id}-chance`,
    unit: 'ratio',
    needs: [...paceNeeds, 'live-for-wanted', id],
    figures: paceFigures,
    compute: (read) => {
      const pace = flockPace(read);
      const age = daysBetween(read.group.hatched, read.text(id));
      const lead = Math.log(pace.middle(age) / read.number('live-for-wanted'));
      const spread = pace.spread(age);
      return spread > 0 ? normalChance(lead / spread) : Number(lead >= 0);
    },
  }),
];

export const weekendFacts = [
  ...weekend('first-weekend', 0),
  ...weekend('second-weekend', 1),
  ...weekend('third-weekend', 2),
];
