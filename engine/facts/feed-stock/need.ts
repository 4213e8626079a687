/** How much feed is wanted until the birds are gone, and how many bags that takes beyond what is in hand. */
import { addDays, type Day, daysBetween } from '../../day.ts';
import { defineFact, type Fact, type Reader } from '../define.ts';
import { bagsFor } from '../feed/bags.ts';
import { daysFromTo, earliestOf } from '../feed/days.ts';
import { type Ration, rationAt, rationFigures, rations } from '../feed/ration.ts';
import { timesMoney } from '../sums/exact-money.ts';
import { isThere, lastGone, type Mouth, mouthEach, mouthFigures, mouthsOf, mouthWants } from './mouths.ts';

type Counts = (read: Reader, mouth: Mouth, day: Day) => boolean;

/** Feed wanted from today to `feed-needed-until`, that day included, on the days that count. */
const wantedOn = (id: string, figures: readonly string[], counts: Counts): Fact =>
  defineFact({
    id,
    unit: 'kg',
    per: 'flock',
    needs: ['feed-needed-until'],
    each: mouthEach,
    wants: mouthWants,
    figures: [...mouthFigures, ...figures],
    compute: (read) =>
      mouthsOf(read)
        ?.flatMap((mouth) =>
          daysFromTo(read.asked, read.text('feed-needed-until'))
            .filter((day) => isThere(read, mouth, day) && counts(read, mouth, day))
            .map((day) => mouth.wanted(day)),
        )
        .reduce((sum, each) => sum + each, 0),
  });

const isOn =
  (ration: Ration): Counts =>
  (read, { eater }, day) =>
    rationAt(read, daysBetween(eater.group.hatched, day)) === ration;

export const needFacts = [
  defineFact({
    id: 'feed-wanted-until',
    unit: 'date',
    per: 'flock',
    each: mouthEach,
    wants: mouthWants,
    figures: [...mouthFigures, 'feed/store'],
    compute: (read) => {
      if (read.until !== null) return read.until;
      const mouths = mouthsOf(read);
      if (mouths === undefined) return undefined;
      const gone = lastGone(mouths);
      if (gone !== undefined) return addDays(gone, -1);
      const days = read.figure('feed/store');
      if (mouths.length > 0) read.assume('end-not-known', { days: { value: days, unit: 'day' } });
      return addDays(read.asked, days);
    },
  }),
  defineFact({
    id: 'feed-needed-until',
    unit: 'date',
    per: 'flock',
    needs: ['feed-wanted-until'],
    figures: ['feed/store'],
    compute: (read) =>
      earliestOf(read.text('feed-wanted-until'), addDays(read.asked, read.figure('feed/store'))),
  }),
  wantedOn('feed-needed', [], () => true),
  ...rations.map((ration) => wantedOn(`${ration}-needed`, rationFigures, isOn(ration))),
  defineFact({
    id: 'bags-needed',
    unit: 'bag',
    per: 'flock',
    needs: ['feed-needed', 'bag-mass'],
    compute: (read) => bagsFor(read.number('feed-needed'), read.number('bag-mass')),
  }),
  defineFact({
    id: 'bags-to-buy',
    unit: 'bag',
    per: 'flock',
    needs: ['feed-needed', 'feed-left', 'bag-mass', 'rations-apart'],
    wants: rations.map((ration) => `${ration}-bags`),
    compute: (read) =>
      read.text('rations-apart') === 'yes'
        ? rations.reduce((sum, ration) => sum + Number(read.maybe(`${ration}-bags`) ?? 0), 0)
        : bagsFor(read.number('feed-needed') - read.number('feed-left'), read.number('bag-mass')),
  }),
  defineFact({
    id: 'bags-cost',
    unit: 'money',
    per: 'flock',
    needs: ['bags-to-buy', 'bag-price', 'rations-apart'],
    wants: ['ration-bags-cost'],
    compute: (read) =>
      read.text('rations-apart') === 'yes'
        ? read.maybe('ration-bags-cost')
        : timesMoney(read.number('bag-price'), read.number('bags-to-buy')),
  }),
];
