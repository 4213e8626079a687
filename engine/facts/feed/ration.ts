/** Which ration suits the age, when it changes, and how much of each a span takes. */
import { addDays, type Day, daysBetween } from '../../day.ts';
import { defineFact, type Fact, type Reader } from '../define.ts';
import { daysFromTo } from './days.ts';
import { eaterFigures, eaterNeeds, eaterOf, eaterWants } from './eater.ts';

/** Rations in the order in which they are fed. */
export const rations = ['starter', 'grower', 'finisher'] as const;
export type Ration = (typeof rations)[number];

export const rationFigures = ['feed/starter-until', 'feed/grower-until'];

/** The ration for any age in days; for walks over many days, since the figures are looked up once. */
export const rationByAge = (read: Reader): ((age: number) => Ration) => {
  const [starter, grower] = [read.figure('feed/starter-until'), read.figure('feed/grower-until')];
  return (age) => {
    if (age < starter) return 'starter';
    return age < grower ? 'grower' : 'finisher';
  };
};

/** The ration for an age in days. */
export const rationAt = (read: Reader, age: number): Ration => rationByAge(read)(age);

/** Feed of one ration that a group takes from this day to another, that day included, kg. */
const feedOf = (read: Reader, ration: Ration, until: Day): number => {
  const eater = eaterOf(read);
  const rationFor = rationByAge(read);
  return daysFromTo(read.on, until)
    .filter((day) => rationFor(daysBetween(read.group.hatched, day)) === ration)
    .reduce((total, day) => total + eater.all(day), 0);
};

const figures = [...eaterFigures, ...rationFigures];

const overSpan = (ration: Ration): Fact =>
  defineFact({
    id: `${ration}-over-span`,
    unit: 'kg',
    needs: eaterNeeds,
    wants: eaterWants,
    figures,
    compute: (read) => feedOf(read, ration, read.until ?? read.on),
  });

/** What they still take of it until they are processed, as set or when they are ready. */
const toCome = (ration: Ration): Fact =>
  defineFact({
    id: `${ration}-to-come`,
    unit: 'kg',
    needs: [...eaterNeeds, 'table-day'],
    wants: eaterWants,
    figures,
    compute: (read) => feedOf(read, ration, addDays(read.text('table-day'), -1)),
  });

export const rationFacts = [
  defineFact({
    id: 'ration',
    unit: null,
    needs: ['age'],
    figures: rationFigures,
    compute: (read) => rationAt(read, read.number('age')),
  }),
  defineFact({
    id: 'protein',
    unit: 'ratio',
    needs: ['ration'],
    figures: ['feed/protein'],
    compute: (read) => read.figure('feed/protein'),
  }),
  defineFact({
    id: 'ration-switch',
    unit: 'date',
    needs: ['age'],
    figures: rationFigures,
    compute: (read) => {
      const next = [read.figure('feed/starter-until'), read.figure('feed/grower-until')].find(
        (age) => age > read.number('age'),
      );
      return next === undefined ? undefined : addDays(read.group.hatched, next);
    },
  }),
  defineFact({
    id: 'next-ration',
    unit: null,
    needs: ['ration-switch'],
    figures: rationFigures,
    compute: (read) => rationAt(read, daysBetween(read.group.hatched, read.text('ration-switch'))),
  }),
  defineFact({
    id: 'days-to-switch',
    unit: 'day',
    needs: ['ration-switch'],
    compute: (read) => daysBetween(read.on, read.text('ration-switch')),
  }),
  ...rations.map(overSpan),
  ...rations.map(toCome),
];
