/** What must stand ready for chicks to come: floor, bedding, warmth, drinkers, feeders and the first starter. */
import { heatedSpot, spotFigures } from './brooder-balance.ts';
import { newcomersIn } from './chicks-to-come.ts';
import { defineFact, type Fact, type Reader } from './define.ts';
import { bagsFor } from './feed/bags.ts';
import { intakeFigures, intakeLine } from './feed/intake.ts';
import { planCurveFor, planFigures } from './growth/plan.ts';
import { powerFor } from './sums/heat-balance.ts';

const daysInWeek = 7;
const litresInCubicMetre = 1000;

/** Kind and sexes that chicks are taken to be until they are here. */
const usualLine = 'fast';
const usualSexes = 'mixed';

/** Floor that the chicks need from an age in weeks on. */
const floorFrom = (id: string, week: number): Fact =>
  defineFact({
    id,
    unit: 'm2',
    per: 'flock',
    needs: ['chicks-coming'],
    figures: ['brooder/floor-space'],
    compute: (read) => read.number('chicks-coming') * read.figure('brooder/floor-space', [week]),
  });

/** Whole lamps for chicks on the day they come, by the table and by the heat balance, whichever is more. */
const lampsFor = (read: Reader): number => {
  const birds = read.number('chicks-coming');
  const around = read.number('setup-surroundings');
  if (birds <= 0 || around >= read.number('setup-target')) return 0;
  const watts = read.number('lamp-watts');
  const table =
    (birds / read.figure('brooder/chicks-per-lamp', [around])) * (read.figure('brooder/lamp-watts') / watts);
  const weight = planCurveFor(read, usualLine, usualSexes)(0);
  const spot = heatedSpot(
    read,
    birds,
    weight,
    read.number('setup-floor'),
    read.number('setup-target') - around,
  );
  return Math.max(
    Math.ceil(table - 1e-9),
    Math.ceil(powerFor(spot) / watts - 1e-9),
    read.figure('brooder/least-lamps', [birds]),
  );
};

/** Feed of one chick from its first day to the end of its first week, kg. */
const firstWeek = (read: Reader): number => {
  const eaten = intakeLine(read, usualLine, usualSexes, daysInWeek);
  return eaten(daysInWeek) - eaten(0);
};

export const brooderSetupFacts = [
  floorFrom('setup-floor', 0),
  floorFrom('setup-floor-second-week', 1),
  floorFrom('setup-floor-fourth-week', 3),
  defineFact({
    id: 'brooder-floor-free',
    unit: 'm2',
    per: 'flock',
    needs: ['brooder-floor'],
    each: ['floor-needed'],
    figures: ['arrival/settling-days'],
    compute: (read) => {
      const come = newcomersIn(read).map((each) => each.name);
      const others = read.each('floor-needed').filter(({ group }) => !come.includes(group.name));
      return Math.max(
        0,
        read.number('brooder-floor') - others.reduce((sum, { value }) => sum + Number(value ?? 0), 0),
      );
    },
  }),
  defineFact({
    id: 'setup-bedding',
    unit: 'l',
    per: 'flock',
    needs: ['setup-floor'],
    figures: ['brooder/bedding-depth'],
    compute: (read) => read.number('setup-floor') * read.figure('brooder/bedding-depth') * litresInCubicMetre,
  }),
  defineFact({
    id: 'setup-target',
    unit: 'C',
    per: 'flock',
    figures: ['brooder/target'],
    compute: (read) => read.figure('brooder/target', [0]),
  }),
  defineFact({
    id: 'setup-surroundings',
    unit: 'C',
    per: 'flock',
    wants: ['surroundings'],
    figures: ['brooder/cold-surroundings'],
    compute: (read) => {
      const known = read.maybe('surroundings');
      if (typeof known === 'number') return known;
      const cold = read.figure('brooder/cold-surroundings');
      read.assume('cold-where-they-come', { cold: { value: cold, unit: 'C' } });
      return cold;
    },
  }),
  defineFact({
    id: 'setup-lamps',
    unit: 'lamp',
    per: 'flock',
    needs: [
      'chicks-coming',
      'setup-surroundings',
      'setup-target',
      'setup-floor',
      'lamp-watts',
      'brooder-air',
    ],
    figures: [
      'brooder/chicks-per-lamp',
      'brooder/lamp-watts',
      'brooder/least-lamps',
      ...spotFigures,
      ...planFigures,
    ],
    compute: lampsFor,
  }),
  defineFact({
    id: 'setup-drinkers',
    unit: 'drinker',
    per: 'flock',
    needs: ['chicks-coming'],
    figures: ['brooder/birds-per-drinker', 'water/least-drinkers'],
    compute: (read) =>
      Math.max(
        read.figure('water/least-drinkers'),
        Math.ceil(read.number('chicks-coming') / read.figure('brooder/birds-per-drinker')),
      ),
  }),
  defineFact({
    id: 'setup-drinker-size',
    unit: 'l',
    per: 'flock',
    figures: ['brooder/drinker-size'],
    compute: (read) => read.figure('brooder/drinker-size', [0]),
  }),
  defineFact({
    id: 'setup-feeder',
    unit: 'm',
    per: 'flock',
    needs: ['chicks-coming'],
    figures: ['brooder/feeder-space'],
    compute: (read) => read.number('chicks-coming') * read.figure('brooder/feeder-space', [0]),
  }),
  defineFact({
    id: 'setup-starter',
    unit: 'kg',
    per: 'flock',
    needs: ['chicks-coming'],
    figures: intakeFigures,
    compute: (read) => {
      read.assume('chicks-of-the-fast-kind');
      return read.number('chicks-coming') * firstWeek(read);
    },
  }),
  defineFact({
    id: 'setup-starter-bags',
    unit: 'bag',
    per: 'flock',
    needs: ['setup-starter', 'bag-mass'],
    compute: (read) => bagsFor(read.number('setup-starter'), read.number('bag-mass')),
  }),
  defineFact({
    id: 'first-water',
    unit: 'l',
    per: 'flock',
    needs: ['setup-drinkers', 'setup-drinker-size'],
    compute: (read) => read.number('setup-drinkers') * read.number('setup-drinker-size'),
  }),
  defineFact({
    id: 'first-sugar',
    unit: 'kg',
    per: 'flock',
    needs: ['first-water'],
    figures: ['arrival/sugar'],
    // A litre of water weighs a kilogram.
    compute: (read) => read.number('first-water') * read.figure('arrival/sugar'),
  }),
  defineFact({
    id: 'crops-to-feel',
    unit: 'bird',
    per: 'flock',
    needs: ['chicks-coming'],
    figures: ['arrival/crops-to-feel'],
    compute: (read) => Math.min(read.number('chicks-coming'), read.figure('arrival/crops-to-feel')),
  }),
];
