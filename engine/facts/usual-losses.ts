/** How many birds are usually lost by now, what the keeper's own past flocks say of it, and the odds of losing this many. */
import { type Day, daysBetween } from '../day.ts';
import { defineFact, type Reader } from './define.ts';
import { betaBinomialTail, binomialTail } from './sums/count-tails.ts';

/** Share of the eight weeks' losses that is usually behind a bird that has lived so many days. */
const patternAt = (read: Reader, days: number): number =>
  read.figure('losses/pattern', [read.text('kind'), Math.max(0, days)]);

/** How much of the eight weeks' losses is usually behind birds of the group that left on a day, counted from their arrival. Needs `kind` and `losses/pattern`. */
const behind = (read: Reader): ((day: Day) => number) => {
  const { group } = read;
  const before = patternAt(read, daysBetween(group.hatched, group.arrived));
  // A day counts whole: a bird found in the morning and one found at night are lost on the same day.
  return (day) => Math.max(0, patternAt(read, daysBetween(group.hatched, day) + 1) - before);
};

/** The same for all birds of the group on a day, those processed before it counted up to the day they went. */
export const exposureOn = (read: Reader, day: Day, birds: number): number => {
  const until = behind(read);
  const gone = read.group.processed.filter((each) => each.on <= day);
  const left = gone.reduce((sum, each) => sum + each.count, 0);
  const processed = gone.reduce((sum, each) => sum + each.count * until(each.on), 0);
  return (processed + Math.max(0, birds - left) * until(day)) / birds;
};

export const usualLossFacts = [
  defineFact({
    id: 'loss-exposure',
    unit: 'ratio',
    needs: ['kind', 'arrived-alive'],
    figures: ['losses/pattern'],
    compute: (read) => {
      const { group } = read;
      const birds = read.number('arrived-alive');
      if (birds <= 0) return undefined;
      read.from(...group.processed);
      return exposureOn(read, read.on, birds);
    },
  }),
  defineFact({
    id: 'birds-that-tell',
    unit: 'bird',
    needs: ['kind', 'alive', 'lost'],
    figures: ['losses/pattern'],
    compute: (read) => {
      if (read.number('alive') > 0) return 0;
      read.from(...read.group.processed);
      const until = behind(read);
      // A lost bird tells as much as one that lived its eight weeks, so that one early disaster is not taken for a rate.
      return read.group.processed.reduce(
        (sum, each) => sum + each.count * until(each.on),
        read.number('lost'),
      );
    },
  }),
  defineFact({
    id: 'past-exposure',
    unit: 'bird',
    per: 'flock',
    each: ['birds-that-tell'],
    compute: (read) => read.each('birds-that-tell').reduce((sum, each) => sum + Number(each.value ?? 0), 0),
  }),
  defineFact({
    id: 'past-losses',
    unit: 'bird',
    per: 'flock',
    each: ['alive', 'lost'],
    compute: (read) => {
      const lost = read.each('lost');
      return read
        .each('alive')
        .reduce(
          (sum, each, index) => (Number(each.value ?? 0) > 0 ? sum : sum + Number(lost[index]?.value ?? 0)),
          0,
        );
    },
  }),
  defineFact({
    id: 'loss-rate',
    unit: 'ratio',
    per: 'flock',
    needs: ['past-exposure', 'past-losses'],
    figures: ['losses/total-share', 'losses/table-counts-as', 'losses/most-usual'],
    compute: (read) => {
      const weight = read.figure('losses/table-counts-as');
      const lost = weight * read.figure('losses/total-share') + read.number('past-losses');
      const rate = lost / (weight + read.number('past-exposure'));
      // A keeper's own figure may lie above it; past disasters may not.
      return Math.min(rate, Math.max(read.figure('losses/most-usual'), read.figure('losses/total-share')));
    },
  }),
  defineFact({
    id: 'expected-share',
    unit: 'ratio',
    needs: ['loss-rate', 'loss-exposure'],
    compute: (read) => Math.min(1, read.number('loss-rate') * read.number('loss-exposure')),
  }),
  defineFact({
    id: 'expected-losses',
    unit: 'bird',
    needs: ['arrived-alive', 'expected-share'],
    compute: (read) => read.number('arrived-alive') * read.number('expected-share'),
  }),
  defineFact({
    id: 'loss-per-day',
    unit: 'ratio',
    needs: ['kind', 'age', 'loss-rate'],
    figures: ['losses/pattern'],
    compute: (read) => {
      const rate = read.number('loss-rate');
      const now = rate * patternAt(read, read.number('age'));
      const next = rate * patternAt(read, read.number('age') + 1);
      return now >= 1 ? 1 : Math.min(1, (next - now) / (1 - now));
    },
  }),
  defineFact({
    id: 'loss-odds',
    unit: 'odds',
    needs: ['loss-chance'],
    compute: (read) => read.number('loss-chance'),
  }),
  defineFact({
    id: 'loss-chance',
    unit: 'ratio',
    needs: ['arrived-alive', 'lost', 'expected-share', 'past-exposure'],
    figures: ['losses/table-counts-as'],
    compute: (read) => {
      const birds = read.number('arrived-alive');
      const share = read.number('expected-share');
      const past = read.number('past-exposure');
      if (past <= 0 || share <= 0 || share >= 1) return binomialTail(birds, share, read.number('lost'));
      // Own flocks make the share an estimate: it is as sure as the birds that it rests on are many.
      const sure = read.figure('losses/table-counts-as') + past;
      return betaBinomialTail(birds, share * sure, (1 - share) * sure, read.number('lost'));
    },
  }),
];
