/** Birds in the freezer: what went in, what was eaten and handed over, how long the rest lasts, and how old it is. */
import { addDays, type Day, daysBetween } from '../day.ts';
import { defineFact, type Reader } from './define.ts';

const daysInWeek = 7;

/** How long whole birds keep in the freezer, in whole days. */
const keepDays = (read: Reader): number => Math.round(read.figure('keep/months', ['whole']));

/** Birds of one processing that are still there. */
interface Layer {
  readonly on: Day;
  readonly count: number;
}

/** What is left of each processing, oldest first; the oldest are taken to be used first. */
const layersLeft = (read: Reader): readonly Layer[] => {
  let used = read.number('frozen-eaten') + read.number('handed');
  return read.state.groups
    .flatMap((group) => group.processed)
    .filter((each) => each.on <= read.on)
    .sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : a.line - b.line))
    .map(({ on, count }) => {
      const gone = Math.min(used, count);
      used -= gone;
      return { on, count: count - gone };
    })
    .filter(({ count }) => count > 0);
};

/** Birds eaten in a week by the entries since the first, once they cover long enough a time; undefined before. */
const rateOnRecord = (read: Reader): number | undefined => {
  const since = addDays(read.asked, -read.figure('freezer/rate-window'));
  const first = read.state.eaten.map(({ on }) => on).sort()[0];
  const from = first === undefined || first < since ? since : first;
  const days = daysBetween(from, read.asked) + 1;
  const recent = read.state.eaten.filter(({ on }) => on >= from && on <= read.asked);
  if (first === undefined || recent.length === 0 || days < read.figure('freezer/rate-least-days'))
    return undefined;
  read.from(...recent);
  return (recent.reduce((sum, each) => sum + each.count, 0) / days) * daysInWeek;
};

/** Birds of one processing as they went in, with the mean of their batch, kg. */
interface Lot {
  count: number;
  readonly each: number;
}

/** Every processing, oldest first. */
const lotsIn = (read: Reader): Lot[] => {
  const weights = read.each('carcass-so-far');
  return read
    .each('processed')
    .flatMap(({ group, value }, index) => {
      const each = Number(weights[index]?.value ?? 0) / Math.max(1, Number(value ?? 0));
      return group.processed.map(({ on, line, count }) => ({ on, line, count, each }));
    })
    .sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : a.line - b.line));
};

/** Birds that left the freezer at one time; `mass` where what they weighed was told. */
const takings = ({ state, on }: Reader) =>
  [
    ...state.eaten,
    ...state.shares.filter(({ step }) => step === 'handed').map((each) => ({ ...each, mass: null })),
  ]
    .filter((each) => each.on <= on)
    .sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : a.line - b.line));

/** What was taken out weighed, kg: as told, else what the oldest that were left then weigh, so that a later batch changes nothing. */
const weightTaken = (read: Reader): number => {
  const birds = read.number('frozen-in');
  const usual = birds === 0 ? 0 : read.number('frozen-weight-in') / birds;
  const lots = lotsIn(read);
  const taken = takings(read);
  read.from(...taken);
  return taken.reduce((sum, { count, mass }) => {
    let wanted = count;
    let weight = 0;
    for (const lot of lots) {
      const gone = Math.min(wanted, lot.count);
      lot.count -= gone;
      wanted -= gone;
      weight += gone * lot.each;
    }
    return sum + (mass ?? weight + wanted * usual);
  }, 0);
};

export const freezerStockFacts = [
  defineFact({
    id: 'frozen-in',
    unit: 'bird',
    per: 'flock',
    each: ['processed'],
    compute: (read) => read.each('processed').reduce((sum, { value }) => sum + Number(value ?? 0), 0),
  }),
  defineFact({
    id: 'frozen-eaten',
    unit: 'bird',
    per: 'flock',
    compute: (read) => {
      const eaten = read.state.eaten.filter((each) => each.on <= read.on);
      read.from(...eaten);
      return eaten.reduce((sum, each) => sum + each.count, 0);
    },
  }),
  defineFact({
    id: 'freezer-left',
    unit: 'bird',
    per: 'flock',
    needs: ['frozen-in', 'frozen-eaten', 'handed'],
    compute: (read) => {
      const left = read.number('frozen-in') - read.number('frozen-eaten') - read.number('handed');
      if (left < 0) read.assume('more-eaten-than-frozen', { over: { value: -left, unit: 'bird' } });
      return Math.max(0, left);
    },
  }),
  defineFact({
    id: 'frozen-weight-in',
    unit: 'kg',
    per: 'flock',
    each: ['processed', 'carcass-so-far'],
    compute: (read) => {
      const weights = read.each('carcass-so-far').map(({ value }) => value);
      return weights.some((each) => each === undefined)
        ? undefined
        : weights.reduce<number>((sum, each) => sum + Number(each), 0);
    },
  }),
  defineFact({
    id: 'frozen-weight-out',
    unit: 'kg',
    per: 'flock',
    needs: ['frozen-in', 'frozen-weight-in', 'frozen-eaten', 'handed'],
    each: ['processed', 'carcass-so-far'],
    compute: weightTaken,
  }),
  defineFact({
    id: 'freezer-left-weight',
    unit: 'kg',
    per: 'flock',
    needs: ['freezer-left', 'frozen-weight-in', 'frozen-weight-out'],
    compute: (read) =>
      read.number('freezer-left') === 0
        ? 0
        : Math.max(0, read.number('frozen-weight-in') - read.number('frozen-weight-out')),
  }),
  defineFact({
    id: 'eating-rate',
    unit: 'a-week',
    per: 'flock',
    wants: ['birds-a-week'],
    figures: ['freezer/rate-window', 'freezer/rate-least-days'],
    compute: (read) => rateOnRecord(read) ?? read.maybe('birds-a-week'),
  }),
  defineFact({
    id: 'freezer-empty-on',
    unit: 'date',
    per: 'flock',
    needs: ['freezer-left'],
    wants: ['eating-rate'],
    compute: (read) => {
      if (read.number('freezer-left') === 0) return undefined;
      const rate = Number(read.maybe('eating-rate') ?? 0);
      if (rate <= 0) return undefined;
      return addDays(read.asked, Math.ceil((read.number('freezer-left') / rate) * daysInWeek - 1e-9));
    },
  }),
  defineFact({
    id: 'oldest-frozen',
    unit: 'date',
    per: 'flock',
    needs: ['frozen-eaten', 'handed'],
    compute: (read) => layersLeft(read)[0]?.on,
  }),
  defineFact({
    id: 'oldest-best-before',
    unit: 'date',
    per: 'flock',
    needs: ['oldest-frozen'],
    figures: ['keep/months'],
    compute: (read) => addDays(read.text('oldest-frozen'), keepDays(read)),
  }),
  defineFact({
    id: 'past-keeping',
    unit: 'bird',
    per: 'flock',
    needs: ['frozen-eaten', 'handed'],
    figures: ['keep/months'],
    compute: (read) =>
      layersLeft(read)
        .filter(({ on }) => daysBetween(on, read.asked) > keepDays(read))
        .reduce((sum, { count }) => sum + count, 0),
  }),
  defineFact({
    id: 'newest-best-before',
    unit: 'date',
    per: 'flock',
    needs: ['frozen-eaten', 'handed'],
    figures: ['keep/months'],
    compute: (read) => {
      const last = layersLeft(read).at(-1);
      return last === undefined ? undefined : addDays(last.on, keepDays(read));
    },
  }),
];
