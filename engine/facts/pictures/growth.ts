/** What the picture of a group's growth is drawn from: the line it is on with its range, and its weighings. */
import { addDays, daysBetween } from '../../day.ts';
import { defineFact } from '../define.ts';
import { flockPace, paceFigures, paceNeeds } from '../growth/live.ts';
import { weighingDays } from '../growth/weighings.ts';

/** Enough for every column of a wide drawing. */
const points = 49;

export const growthSeriesFacts = [
  defineFact({
    id: 'growth-series',
    unit: 'series',
    needs: [...paceNeeds, 'window-closes'],
    wants: ['ready-on'],
    figures: paceFigures,
    compute: (read) => {
      const { hatched } = read.group;
      const pace = flockPace(read);
      const last = [read.on, read.text('window-closes'), String(read.maybe('ready-on') ?? '')].sort().at(-1);
      const days = Math.min(pace.ends, daysBetween(hatched, last ?? read.on));
      const ages = Array.from({ length: points }, (_, at) => (days * at) / (points - 1));
      return JSON.stringify({
        from: hatched,
        to: addDays(hatched, Math.round(days)),
        today: read.on,
        ready: read.maybe('ready-on') ?? null,
        line: ages.map((age) => [age, pace.low(age), pace.middle(age), pace.high(age)]),
        weighings: weighingDays(read.group).map(({ age, mean }) => [age, mean]),
      });
    },
  }),
];
