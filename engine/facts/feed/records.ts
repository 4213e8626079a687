/** Own feed records beside the table: whether they say something, and how far they pull the expected intake. */
import { addDays } from '../../day.ts';
import { defineFact, type Reader } from '../define.ts';
import { aliveOn } from '../past.ts';
import { latestOf } from './days.ts';
import { eaterEach, eaterFigures, eatersOf } from './eater.ts';
import { givenOn, type Tally, tallyOf } from './given.ts';

/** An eater as the table has it: its own records are what is being worked out here. */
const each = eaterEach.filter((fact) => fact !== 'feed-ratio');
const wants = ['loss-rate'];
const figures = [...eaterFigures, 'feed/records-window'];

const nothing: Tally = { days: 0, span: 0, recorded: 0, expected: 0 };

const tally = (read: Reader): Tally | undefined => {
  const back = read.figure('feed/records-window');
  // A batch that was gone before the days that count has no record among them, whoever else ate then.
  if (aliveOn(read.group, latestOf(read.group.arrived, addDays(read.asked, -back))) <= 0) return nothing;
  const eaters = eatersOf(read, each);
  const own = eaters.find((eater) => eater?.group.name === read.group.name);
  if (own === undefined) return undefined;
  return tallyOf(read, own, givenOn(read, eaters), back);
};

export const recordFacts = [
  defineFact({
    id: 'feed-days-recorded',
    unit: 'day',
    needs: ['growth-line'],
    each,
    wants,
    figures,
    compute: (read) => tally(read)?.days,
  }),
  defineFact({
    id: 'feed-days-covered',
    unit: 'ratio',
    needs: ['growth-line'],
    each,
    wants,
    figures,
    compute: (read) => {
      const found = tally(read);
      return found === undefined || found.span === 0 ? undefined : found.days / found.span;
    },
  }),
  defineFact({
    id: 'feed-recorded-ratio',
    unit: 'ratio',
    needs: ['growth-line'],
    each,
    wants,
    figures,
    compute: (read) => {
      const found = tally(read);
      return found === undefined || found.expected === 0 ? undefined : found.recorded / found.expected;
    },
  }),
  defineFact({
    id: 'feed-records',
    unit: null,
    needs: ['feed-days-recorded'],
    wants: ['feed-days-covered', 'feed-recorded-ratio'],
    figures: [
      'feed/records-least-days',
      'feed/records-coverage',
      'feed/records-doubt-low',
      'feed/records-doubt-high',
    ],
    compute: (read) => {
      if (read.number('feed-days-recorded') === 0) return 'none';
      if (read.number('feed-days-recorded') < read.figure('feed/records-least-days')) return 'few';
      if (Number(read.maybe('feed-days-covered') ?? 0) < read.figure('feed/records-coverage')) return 'gaps';
      const ratio = Number(read.maybe('feed-recorded-ratio') ?? 0);
      const isLikely =
        ratio >= read.figure('feed/records-doubt-low') && ratio <= read.figure('feed/records-doubt-high');
      return isLikely ? 'used' : 'doubtful';
    },
  }),
  defineFact({
    id: 'feed-ratio',
    unit: 'ratio',
    needs: ['feed-records', 'feed-days-recorded'],
    wants: ['feed-recorded-ratio'],
    figures: ['feed/records-trust'],
    compute: (read) => {
      if (read.text('feed-records') !== 'used') return 1;
      const days = read.number('feed-days-recorded');
      const trust = read.figure('feed/records-trust');
      return (days * Number(read.maybe('feed-recorded-ratio') ?? 1) + trust) / (days + trust);
    },
  }),
];
