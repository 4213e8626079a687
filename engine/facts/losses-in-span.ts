/** Losses over the days asked about: a run of days that looks back where one was named, else all since arrival. */
import { addDays, type Day } from '../day.ts';
import { defineFact, type Reader } from './define.ts';
import { binomialTail } from './sums/count-tails.ts';
import { exposureOn } from './usual-losses.ts';

/** First day of the run asked about; undefined when the whole time here is. */
const firstDay = (read: Reader): Day | undefined => {
  const from = read.maybe('span-from');
  return typeof from === 'string' ? from : undefined;
};

export const lossSpanFacts = [
  defineFact({
    id: 'span-from',
    unit: 'date',
    per: 'flock',
    // Only a question that looks back over some days can set it.
    compute: () => undefined,
  }),
  defineFact({
    id: 'asks-span',
    unit: null,
    per: 'flock',
    wants: ['span-from'],
    compute: (read) => (firstDay(read) === undefined ? 'no' : 'yes'),
  }),
  defineFact({
    id: 'lost-asked',
    unit: 'bird',
    wants: ['span-from'],
    needs: ['lost'],
    compute: (read) => {
      const from = firstDay(read);
      if (from === undefined) return read.number('lost');
      const losses = read.group.losses.filter((each) => each.on >= from && each.on <= read.on);
      read.from(...losses);
      return losses.reduce((sum, each) => sum + each.count, 0);
    },
  }),
  defineFact({
    id: 'birds-asked',
    unit: 'bird',
    wants: ['span-from'],
    needs: ['arrived-alive'],
    compute: (read) => {
      const from = firstDay(read);
      const before = from === undefined ? [] : read.group.losses.filter((each) => each.on < from);
      const gone = from === undefined ? [] : read.group.processed.filter((each) => each.on < from);
      read.from(...before, ...gone);
      return [...before, ...gone].reduce((left, each) => left - each.count, read.number('arrived-alive'));
    },
  }),
  defineFact({
    id: 'expected-asked',
    unit: 'bird',
    wants: ['span-from'],
    needs: ['kind', 'arrived-alive', 'loss-rate', 'expected-losses'],
    figures: ['losses/pattern'],
    compute: (read) => {
      const from = firstDay(read);
      const birds = read.number('arrived-alive');
      if (from === undefined || birds <= 0) return read.number('expected-losses');
      const before = from <= read.group.arrived ? 0 : exposureOn(read, addDays(from, -1), birds);
      return birds * read.number('loss-rate') * Math.max(0, exposureOn(read, read.on, birds) - before);
    },
  }),
  defineFact({
    id: 'share-asked',
    unit: 'ratio',
    needs: ['lost-asked', 'birds-asked'],
    compute: (read) => {
      const birds = read.number('birds-asked');
      return birds > 0 ? read.number('lost-asked') / birds : undefined;
    },
  }),
  defineFact({
    id: 'chance-asked',
    unit: 'ratio',
    wants: ['span-from'],
    needs: ['lost-asked', 'birds-asked', 'expected-asked', 'loss-chance'],
    compute: (read) => {
      if (firstDay(read) === undefined) return read.number('loss-chance');
      const birds = read.number('birds-asked');
      if (birds <= 0) return undefined;
      return binomialTail(
        birds,
        Math.min(1, read.number('expected-asked') / birds),
        read.number('lost-asked'),
      );
    },
  }),
];
