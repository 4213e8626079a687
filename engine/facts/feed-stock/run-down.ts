/** How long the feed in hand lasts. */
import { addDays, type Day, daysBetween } from '../../day.ts';
import { defineFact, type Fact, type Reader } from '../define.ts';
import { daysFromTo } from '../feed/days.ts';
import { lastGone, type Mouth, mouthEach, mouthFigures, mouthsOf, mouthWants } from './mouths.ts';

type Need = (mouth: Mouth, day: Day) => number;

/** The first day that the stock does not see through. The last group is taken to stay, so that there is such a day. */
const firstShort = (read: Reader, mouths: readonly Mouth[], stock: number, need: Need): Day | undefined => {
  const last = lastGone(mouths);
  let left = stock;
  for (const day of daysFromTo(read.asked, addDays(read.asked, read.figure('feed/furthest-day')))) {
    for (const mouth of mouths) {
      if (mouth.gone === undefined || day < mouth.gone || mouth.gone === last) left -= need(mouth, day);
    }
    // A hair of a gram is rounding, not hunger.
    if (left < -1e-9) return day;
  }
  return undefined;
};

const runsOut = (id: string, need: Need): Fact =>
  defineFact({
    id,
    unit: 'date',
    per: 'flock',
    needs: ['feed-left'],
    each: mouthEach,
    wants: mouthWants,
    figures: [...mouthFigures, 'feed/furthest-day'],
    compute: (read) => {
      const mouths = mouthsOf(read);
      return mouths === undefined ? undefined : firstShort(read, mouths, read.number('feed-left'), need);
    },
  });

export const runDownFacts = [
  defineFact({
    id: 'birds-on-feed',
    unit: 'bird',
    per: 'flock',
    each: ['alive'],
    compute: (read) =>
      read.each('alive').reduce((sum, { value }) => sum + Math.max(0, Number(value ?? 0)), 0),
  }),
  runsOut('feed-runs-out', (mouth, day) => mouth.wanted(day)),
  runsOut('feed-runs-out-early', (mouth, day) => mouth.wanted(day) * (1 + mouth.over)),
  defineFact({
    id: 'feed-days-left',
    unit: 'day',
    per: 'flock',
    needs: ['feed-runs-out'],
    compute: (read) => daysBetween(read.asked, read.text('feed-runs-out')),
  }),
];
