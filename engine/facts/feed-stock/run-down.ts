/** How long the feed in hand lasts, and how much more is wanted until the birds are gone. */
import { addDays, type Day, daysBetween } from '../../day.ts';
import { defineFact, type Fact, type Reader } from '../define.ts';
import { bagsFor } from '../feed/bags.ts';
import { daysFromTo } from '../feed/days.ts';
import { type Eater, eaterEach, eaterFigures, eatersOf } from '../feed/eater.ts';
import { givenOn } from '../feed/given.ts';
import { type Ration, rationAt, rationFigures, rations } from '../feed/ration.ts';

const each = [...eaterEach, 'ready-on', 'feed-records', 'feed-days-recorded'];
const wants = ['loss-rate'];

interface Mouth {
  readonly eater: Eater;
  /** First day on which they are not fed any more; undefined where it cannot be told. */
  readonly gone: Day | undefined;
  /** Share by which one flock in ten eats more than this one is expected to. */
  readonly over: number;
  /** Feed they still want on a day, kg: nothing today once today's is on record. */
  wanted(day: Day): number;
}

const highIntake = (read: Reader, records: unknown, days: unknown): number => {
  const trust = read.figure('feed/records-trust');
  const counted = records === 'used' ? Number(days) : 0;
  return read.figure('feed/high-intake') * Math.sqrt(trust / (trust + counted));
};
const mouthFigures = [...eaterFigures, 'feed/high-intake', 'feed/records-trust'];

/** Every group that has birds to feed; undefined when one of them is of a kind whose eating is not known. */
const mouthsOf = (read: Reader): readonly Mouth[] | undefined => {
  const eaters = eatersOf(read, eaterEach);
  const given = givenOn(read, eaters);
  const alive = read.each('alive');
  const ready = read.each('ready-on');
  const records = read.each('feed-records');
  const days = read.each('feed-days-recorded');
  const mouths = eaters.flatMap((eater, index): (Mouth | undefined)[] => {
    if (Number(alive[index]?.value ?? 0) <= 0) return [];
    if (eater === undefined) return [undefined];
    const end = ready[index]?.value;
    const tomorrow = addDays(read.asked, 1);
    return [
      {
        eater,
        gone: end === undefined ? undefined : String(end) > tomorrow ? String(end) : tomorrow,
        over: highIntake(read, records[index]?.value, days[index]?.value),
        wanted: (day) => (day === read.asked && given(eater, day) !== undefined ? 0 : eater.all(day)),
      },
    ];
  });
  return mouths.every((mouth) => mouth !== undefined) ? mouths : undefined;
};

/** The day by which all are gone; undefined where that cannot be told of one of them. */
const lastGone = (mouths: readonly Mouth[]): Day | undefined => {
  const days = mouths.map((mouth) => mouth.gone ?? '');
  return days.length === 0 || days.includes('') ? undefined : days.reduce((last, day) => (day > last ? day : last));
};

/** The first day that a stock does not see through; the last group is taken to stay, so that there is such a day. */
const firstShort = (read: Reader, mouths: readonly Mouth[], stock: number, need: (mouth: Mouth, day: Day) => number): Day | undefined => {
  const last = lastGone(mouths);
  let left = stock;
  for (const day of daysFromTo(read.asked, addDays(read.asked, read.figure('feed/furthest-day')))) {
    for (const mouth of mouths) {
      if (mouth.gone === undefined || day < mouth.gone || mouth.gone === last) left -= need(mouth, day);
    }
    if (left < -1e-9) return day;
  }
  return undefined;
};

/** Feed wanted from today to a day, that day included, kg; a named day counts birds that are past their own. */
const wantedUntil = (read: Reader, mouths: readonly Mouth[], until: Day, counts: (mouth: Mouth, day: Day) => boolean): number => {
  const isThere = ({ gone }: Mouth, day: Day): boolean =>
    gone === undefined || day < gone || (read.until !== null && gone === addDays(read.asked, 1));
  return daysFromTo(read.asked, until).reduce(
    (total, day) =>
      total + mouths.reduce((sum, mouth) => sum + (isThere(mouth, day) && counts(mouth, day) ? mouth.wanted(day) : 0), 0),
    0,
  );
};

const runsOut = (id: string, need: (mouth: Mouth, day: Day) => number): Fact =>
  defineFact({
    id,
    unit: 'date',
    per: 'flock',
    needs: ['feed-left'],
    each,
    wants,
    figures: [...mouthFigures, 'feed/furthest-day'],
    compute: (read) => {
      const mouths = mouthsOf(read);
      return mouths === undefined ? undefined : firstShort(read, mouths, read.number('feed-left'), need);
    },
  });

const needOf = (id: string, figures: readonly string[], counts: (read: Reader, mouth: Mouth, day: Day) => boolean): Fact =>
  defineFact({
    id,
    unit: 'kg',
    per: 'flock',
    needs: ['feed-needed-until'],
    each,
    wants,
    figures: [...mouthFigures, ...figures],
    compute: (read) => {
      const mouths = mouthsOf(read);
      if (mouths === undefined) return undefined;
      return wantedUntil(read, mouths, read.text('feed-needed-until'), (mouth, day) => counts(read, mouth, day));
    },
  });

const isOn = (ration: Ration) => (read: Reader, { eater }: Mouth, day: Day): boolean =>
  rationAt(read, daysBetween(eater.group.hatched, day)) === ration;

export const runDownFacts = [
  defineFact({
    id: 'birds-on-feed',
    unit: 'bird',
    per: 'flock',
    each: ['alive'],
    compute: (read) => read.each('alive').reduce((sum, { value }) => sum + Math.max(0, Number(value ?? 0)), 0),
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
  defineFact({
    id: 'feed-wanted-until',
    unit: 'date',
    per: 'flock',
    each,
    wants,
    figures: [...mouthFigures, 'feed/store'],
    compute: (read) => {
      if (read.until !== null) return read.until;
      const mouths = mouthsOf(read);
      if (mouths === undefined) return undefined;
      const gone = lastGone(mouths);
      if (gone !== undefined) return addDays(gone, -1);
      if (mouths.length > 0) read.assume('end-not-known', { days: { value: read.figure('feed/store'), unit: 'day' } });
      return addDays(read.asked, read.figure('feed/store'));
    },
  }),
  defineFact({
    id: 'feed-needed-until',
    unit: 'date',
    per: 'flock',
    needs: ['feed-wanted-until'],
    figures: ['feed/store'],
    compute: (read) => {
      const wanted = read.text('feed-wanted-until');
      const keeps = addDays(read.asked, read.figure('feed/store'));
      return wanted < keeps ? wanted : keeps;
    },
  }),
  needOf('feed-needed', [], () => true),
  ...rations.map((ration) => needOf(`${ration}-needed`, rationFigures, isOn(ration))),
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
    needs: ['feed-needed', 'feed-left', 'bag-mass'],
    compute: (read) => bagsFor(read.number('feed-needed') - read.number('feed-left'), read.number('bag-mass')),
  }),
  defineFact({
    id: 'bags-cost',
    unit: 'money',
    per: 'flock',
    needs: ['bags-to-buy', 'bag-mass', 'feed-price'],
    compute: (read) => read.number('bags-to-buy') * read.number('bag-mass') * read.number('feed-price'),
  }),
];
