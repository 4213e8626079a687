/** What the picture of the feed in hand is drawn from: what is left at the beginning of each day to come. */
import { addDays } from '../../day.ts';
import { defineFact } from '../define.ts';
import { mouthEach, mouthFigures, mouthsOf, mouthWants } from '../feed-stock/mouths.ts';

/** Days after which a store that is still not empty is a line that says nothing more. */
const mostDays = 60;

export const stockSeriesFacts = [
  defineFact({
    id: 'stock-series',
    unit: 'series',
    per: 'flock',
    needs: ['feed-left', 'feed-runs-out', 'bag-mass'],
    each: mouthEach,
    wants: mouthWants,
    figures: mouthFigures,
    compute: (read) => {
      const mouths = mouthsOf(read);
      if (mouths === undefined) return undefined;
      const left = [read.number('feed-left')];
      for (let day = read.asked; left.length <= mostDays && (left.at(-1) ?? 0) > 0; day = addDays(day, 1)) {
        const eaten = mouths.reduce((sum, mouth) => sum + mouth.wanted(day), 0);
        left.push(Math.max(0, (left.at(-1) ?? 0) - eaten));
      }
      return JSON.stringify({
        from: read.asked,
        out: read.text('feed-runs-out'),
        bag: read.number('bag-mass'),
        left,
      });
    },
  }),
];
