/** How many birds are usually lost by now, what the keeper's own past flocks say of it, and the odds of losing this many. */
import { type Day, daysBetween } from '../day.ts';
import { defineFact, type Reader } from './define.ts';
import { betaBinomialTail, binomialTail } from './sums/count-tails.ts';

/** Share of the eight weeks' losses that is usually behind a bird that has lived so many days. */
const patternAt = (read: Reader, days: number): number =>
  read.figure('losses/pattern', [read.text('kind'), Math.max(0, days)]);

/** The day on which the last bird of a finished group left. */
const lastExit = (read: Reader): Day => {
  const { group } = read;
  const exits = [...group.losses, ...group.processed].map((each) => each.on);
  return exits.sort().at(-1) ?? group.arrived;
};

export const usualLossFacts = [
  defineFact({
    id: 'loss-exposure',
    unit: 'ratio',
    needs: ['kind', 'alive', 'arrived-alive'],
    figures: ['losses/pattern'],
    compute: (read) => {
      const { group } = read;
      const ageOn = (day: Day): number => daysBetween(group.hatched, day);
      const before = patternAt(read, ageOn(group.arrived));
      // A day counts whole: a bird found in the morning and one found at night are lost on the same day.
      const through = (day: Day): number => patternAt(read, ageOn(day) + 1) - before;
      const birds = read.number('arrived-alive');
      if (birds <= 0) return undefined;
      read.from(...group.processed);
      const left = group.processed.reduce((sum, each) => sum + each.count, 0);
      const stayed = Math.max(0, birds - left) * through(read.number('alive') > 0 ? read.on : lastExit(read));
      return (group.processed.reduce((sum, each) => sum + each.count * through(each.on), 0) + stayed) / birds;
    },
  }),
  defineFact({
    id: 'past-exposure',
    unit: 'bird',
    per: 'flock',
    each: ['alive', 'arrived-alive', 'loss-exposure'],
    compute: (read) => {
      const birds = read.each('arrived-alive');
      const exposure = read.each('loss-exposure');
      return read.each('alive').reduce((sum, each, index) => {
        const worth = Number(birds[index]?.value ?? 0) * Number(exposure[index]?.value ?? 0);
        return Number(each.value ?? 0) > 0 ? sum : sum + worth;
      }, 0);
    },
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
    figures: ['losses/total-share', 'losses/table-counts-as'],
    compute: (read) => {
      const weight = read.figure('losses/table-counts-as');
      const lost = weight * read.figure('losses/total-share') + read.number('past-losses');
      return lost / (weight + read.number('past-exposure'));
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
