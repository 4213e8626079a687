/** What the birds of a group dress to on some day, a bird and in all, with its range and its parts. */
import { daysBetween } from '../day.ts';
import { defineFact, type Fact, type Reader } from './define.ts';
import { survivalFigures, survivalLine } from './feed/survival.ts';
import { flockPace, paceFigures, paceNeeds } from './growth/live.ts';

/** How far a range reaches when two things vary apart from one another: their shares added as squares. */
const apart = (one: number, other: number): number => Math.hypot(Math.log(one), Math.log(other));

/** The carcass in all at one end of its range; the live weight varies, and what is left of it. */
const total = (id: string, end: 'low' | 'high'): Fact =>
  defineFact({
    id,
    unit: 'kg',
    needs: [...paceNeeds, 'yield-age', 'dressing-share', 'meat-total'],
    wants: ['weight-told'],
    figures: [...paceFigures, `process/dressing-${end}`],
    compute: (read) => {
      const pace = flockPace(read);
      const age = read.number('yield-age');
      const isTold = read.maybe('weight-told') !== undefined;
      const weight = isTold ? 1 : pace[end](age) / pace.middle(age);
      const dressing = read.figure(`process/dressing-${end}`) / read.number('dressing-share');
      const reach = apart(weight, dressing);
      return read.number('meat-total') * Math.exp(end === 'low' ? -reach : reach);
    },
  });

/** Some share of all the meat. */
const shareOf = (id: string, figure: string): Fact =>
  defineFact({
    id,
    unit: 'kg',
    needs: ['meat-total'],
    figures: [figure],
    compute: (read) => read.number('meat-total') * read.figure(figure),
  });

const survivors = (read: Reader): number => {
  const rate = read.maybe('loss-rate');
  const survive = survivalLine(read, read.text('kind'), rate === undefined ? undefined : Number(rate));
  const left = survive(read.number('age'), read.number('yield-age'));
  if (left < 1) read.assume('losses-as-usual');
  return read.number('birds-on-the-day') * left;
};

export const meatYieldFacts = [
  // A weight and a number of birds that only the question can name.
  defineFact({ id: 'weight-told', unit: 'kg', per: 'flock', compute: () => undefined }),
  defineFact({
    id: 'weight-is-told',
    unit: null,
    per: 'flock',
    wants: ['weight-told'],
    compute: (read) => read.maybe('weight-told') !== undefined,
  }),
  defineFact({ id: 'birds-told', unit: 'bird', per: 'flock', compute: () => undefined }),
  defineFact({
    id: 'yield-on',
    unit: 'date',
    wants: ['process-date'],
    compute: (read) => read.maybe('process-date') ?? read.on,
  }),
  defineFact({
    id: 'yield-age',
    unit: 'day',
    needs: ['age', 'yield-on', 'only-thought-of'],
    wants: ['weight-told'],
    compute: (read) =>
      read.maybe('weight-told') === undefined && read.text('only-thought-of') === 'no'
        ? daysBetween(read.group.hatched, read.text('yield-on'))
        : read.number('age'),
  }),
  defineFact({
    id: 'yield-live',
    unit: 'kg',
    needs: [...paceNeeds, 'yield-age'],
    wants: ['weight-told'],
    figures: paceFigures,
    compute: (read) => read.maybe('weight-told') ?? flockPace(read).middle(read.number('yield-age')),
  }),
  defineFact({
    id: 'meat-a-bird',
    unit: 'kg',
    needs: ['yield-live', 'dressing-share'],
    compute: (read) => read.number('yield-live') * read.number('dressing-share'),
  }),
  defineFact({
    id: 'meat-birds',
    unit: 'bird',
    needs: ['kind', 'age', 'birds-on-the-day', 'yield-age'],
    wants: ['birds-told', 'weight-told', 'loss-rate'],
    figures: survivalFigures,
    // A weight named is that of one bird, unless a number was named with it.
    compute: (read) =>
      read.maybe('birds-told') ?? (read.maybe('weight-told') === undefined ? survivors(read) : 1),
  }),
  defineFact({
    id: 'meat-total',
    unit: 'kg',
    needs: ['meat-a-bird', 'meat-birds'],
    compute: (read) => read.number('meat-a-bird') * read.number('meat-birds'),
  }),
  defineFact({
    id: 'meat-in-all',
    unit: 'kg',
    needs: ['meat-total'],
    wants: ['birds-told', 'weight-told'],
    // What a question names for itself is not of one flock, and does not add up with that of another.
    compute: (read) =>
      ['birds-told', 'weight-told'].every((fact) => read.maybe(fact) === undefined)
        ? read.number('meat-total')
        : undefined,
  }),
  total('meat-total-low', 'low'),
  total('meat-total-high', 'high'),
  shareOf('meat-breast', 'process/breast-share'),
  shareOf('meat-cooked', 'process/cooked-share'),
  defineFact({
    id: 'live-for-wanted',
    unit: 'kg',
    needs: ['wanted-carcass', 'dressing-share'],
    compute: (read) => read.number('wanted-carcass') / read.number('dressing-share'),
  }),
];
