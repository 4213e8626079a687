/** What a question about the season asks for: which day or month, how many batches, of which kinds, and which hatch days to try. */
import { addDays, type Day, daysBetween } from '../../day.ts';
import { defineFact, type Reader } from '../define.ts';
import { smallestOrder } from '../planning/chances.ts';
import { readyAge, readyFigures, readyNeeds, usualKind } from '../planning/kind-ready.ts';
import { prospectFigures, prospectNeeds, prospectOf } from '../planning/order-size.ts';
import { wholeUp } from '../sums/whole.ts';

/** A fact of the flock that only a question can set. */
const asked = (id: string, otherwise: string) =>
  defineFact({ id, unit: null, per: 'flock', compute: () => otherwise });

/** Every so many days from one day up to another, both included. */
const daysFrom = (first: Day, last: Day, step: number): readonly Day[] =>
  Array.from({ length: Math.max(0, Math.floor(daysBetween(first, last) / step) + 1) }, (_, index) =>
    addDays(first, index * step),
  );

/** The first of the next such month and its last day; this month counts from today on. */
const nextMonth = (read: Reader, name: string): readonly [Day, Day] => {
  const month = String(read.figure('season/month-number', [name])).padStart(2, '0');
  const year = Number(read.asked.slice(0, 4)) + (month < read.asked.slice(5, 7) ? 1 : 0);
  const first = `${year}-${month}-01`;
  // The 28th is in every month, and four days on is in the next.
  const next = addDays(`${year}-${month}-28`, 4);
  return [first < read.asked ? read.asked : first, addDays(next, -Number(next.slice(8)))];
};

/** Hatch days whose birds are ready by a day, the latest last. */
const readyBy = (read: Reader, day: Day, first: Day, step: number): readonly Day[] => {
  const latest = addDays(day, -readyAge(read, read.text('season-kinds').split(' ')[0] ?? usualKind));
  if (latest < first) return [latest];
  const back = Math.floor(daysBetween(first, latest) / step) * step;
  return daysFrom(addDays(latest, -back), latest, step);
};

export const seasonAskedFacts = [
  asked('season-day', ''),
  asked('season-month', ''),
  asked('season-begins', 'no'),
  // Set by the search itself: `refused` where no day asked for is accepted, `instead` for the nearest that is.
  asked('plan-outcome', 'found'),
  defineFact({
    id: 'month',
    unit: 'month-number',
    per: 'flock',
    compute: (read) => Number(read.on.slice(5, 7)),
  }),
  defineFact({ id: 'today-is', unit: 'date', per: 'flock', compute: (read) => read.asked }),
  defineFact({
    id: 'batch-travel',
    unit: 'day',
    per: 'flock',
    figures: ['season/travel'],
    compute: (read) => read.figure('season/travel'),
  }),
  defineFact({
    id: 'plans-apart',
    unit: 'day',
    per: 'flock',
    figures: ['season/plans-apart'],
    compute: (read) => read.figure('season/plans-apart'),
  }),
  defineFact({
    id: 'batch-lasts',
    unit: 'day',
    per: 'flock',
    needs: ['batch-birds', 'birds-a-week'],
    compute: (read) =>
      read.number('birds-a-week') > 0 ? (read.number('batch-birds') / read.number('birds-a-week')) * 7 : 0,
  }),
  defineFact({ id: 'batches-asked', unit: 'lot', per: 'flock', compute: () => 0 }),
  defineFact({
    id: 'season-kinds',
    unit: null,
    per: 'flock',
    compute: (read) => {
      const named = read.state.groups.filter((group) => read.named.includes(group.name));
      if (named.length > 0) return [...new Set(named.map((group) => group.kind))].join(' ');
      read.assume('chicks-of-the-fast-kind');
      return usualKind;
    },
  }),
  defineFact({
    id: 'season-batches',
    unit: 'lot',
    per: 'flock',
    needs: ['batches-asked', 'season-kinds'],
    wants: ['lots'],
    figures: ['season/most-batches'],
    compute: (read) => {
      const kinds = read.text('season-kinds').split(' ').length;
      const told = read.number('batches-asked');
      const needed = told > 0 ? told : Number(read.maybe('lots') ?? 1);
      return Math.min(read.figure('season/most-batches'), Math.max(kinds, needed));
    },
  }),
  defineFact({
    id: 'batches-to-try',
    unit: 'lot',
    per: 'flock',
    needs: ['season-batches', 'batches-asked', 'season-day', 'season-month', 'season-kinds'],
    compute: (read) => {
      const isDated = read.text('season-day') !== '' || read.text('season-month') !== '';
      const kinds = read.text('season-kinds').split(' ').length;
      return isDated && read.number('batches-asked') === 0 ? kinds : read.number('season-batches');
    },
  }),
  defineFact({
    id: 'plans-to-tell',
    unit: null,
    per: 'flock',
    needs: ['season-day', 'season-month'],
    figures: ['season/plans-told'],
    compute: (read) =>
      read.text('season-day') === '' && read.text('season-month') === ''
        ? read.figure('season/plans-told')
        : 1,
  }),
  defineFact({
    id: 'batch-birds',
    unit: 'bird',
    per: 'flock',
    needs: ['birds-wanted', 'season-batches'],
    compute: (read) => wholeUp(read.number('birds-wanted') / read.number('season-batches')),
  }),
  defineFact({
    id: 'batch-order',
    unit: 'bird',
    per: 'flock',
    needs: ['batch-birds', 'certainty', ...prospectNeeds],
    figures: prospectFigures,
    compute: (read) =>
      smallestOrder(read.number('batch-birds'), read.number('certainty'), prospectOf(read)) ??
      read.number('batch-birds'),
  }),
  defineFact({
    id: 'season-aim',
    unit: null,
    per: 'flock',
    needs: ['season-day', 'season-begins'],
    compute: (read) =>
      read.text('season-day') !== '' && read.text('season-begins') === 'no' ? 'late' : 'early',
  }),
  defineFact({
    id: 'season-days',
    unit: null,
    per: 'flock',
    needs: ['season-day', 'season-month', 'season-begins', 'season-kinds', ...readyNeeds],
    figures: [...readyFigures, 'season/every', 'season/ahead', 'season/order-lead', 'season/month-number'],
    compute: (read) => {
      const step = read.figure('season/every');
      const day = read.text('season-day');
      const first = addDays(read.asked, read.figure('season/order-lead'));
      if (day !== '' && read.text('season-begins') === 'yes') return day;
      if (day !== '') return readyBy(read, day, first, step).join(' ');
      const month = read.text('season-month');
      const [from, to] =
        month === '' ? [first, addDays(read.asked, read.figure('season/ahead'))] : nextMonth(read, month);
      return daysFrom(from, to, step).join(' ');
    },
  }),
  defineFact({
    id: 'season-days-beyond',
    unit: null,
    per: 'flock',
    figures: ['season/every', 'season/ahead', 'season/order-lead'],
    compute: (read) => {
      const first = addDays(read.asked, read.figure('season/order-lead'));
      const last = addDays(read.asked, read.figure('season/ahead'));
      return daysFrom(first, last, read.figure('season/every')).join(' ');
    },
  }),
];
