/** How long the feed in hand of each ration lasts, and what to buy of each. */
import { type Day, daysBetween } from '../../day.ts';
import { defineFact, type Fact, type Reader } from '../define.ts';
import { bagsFor, isAfter, isFeed, massBought } from '../feed/bags.ts';
import { daysFromTo } from '../feed/days.ts';
import { type Ration, rationByAge, rationFigures, rations } from '../feed/ration.ts';
import { asNamed } from '../named-list.ts';
import { settingOf } from '../setting.ts';
import { sumMoney, timesMoney } from '../sums/exact-money.ts';
import { binNeeds, feedFrom, stockLeft } from './bins.ts';
import { isThere, type Mouth, mouthEach, mouthFigures, mouthsOf, mouthWants } from './mouths.ts';

/** What is lacking of a ration, and from which day. */
interface Lack {
  readonly mass: number;
  readonly from: Day | undefined;
}

const youngestFirst = (mouths: readonly Mouth[]): readonly Mouth[] =>
  [...mouths].sort((one, other) => (one.eater.group.hatched < other.eater.group.hatched ? 1 : -1));

/** Feeds all groups day by day from the bags that suit them, and tells what is lacking of one ration until a day. */
const lackOf = (read: Reader, ration: Ration, until: Day): Lack | undefined => {
  const mouths = mouthsOf(read);
  if (mouths === undefined) return undefined;
  const stock = stockLeft(read);
  const rationFor = rationByAge(read);
  let lack: Lack = { mass: 0, from: undefined };
  // The youngest cannot have what is for older ones, so theirs is taken first.
  for (const day of daysFromTo(read.asked, until))
    for (const mouth of youngestFirst(mouths).filter((each) => isThere(read, each, day))) {
      const wanted = rationFor(daysBetween(mouth.eater.group.hatched, day));
      const short = feedFrom(stock, wanted, mouth.wanted(day));
      // A hair of a gram is rounding, not hunger.
      if (wanted === ration && short > 1e-9) lack = { mass: lack.mass + short, from: lack.from ?? day };
    }
  return lack;
};

const lackNeeds = ['feed-needed-until', ...binNeeds];
const lackFigures = [...mouthFigures, ...rationFigures];

const rationFacts = (ration: Ration): readonly Fact[] => [
  defineFact({
    id: `${ration}-lacking`,
    unit: 'kg',
    per: 'flock',
    needs: lackNeeds,
    each: mouthEach,
    wants: mouthWants,
    figures: lackFigures,
    compute: (read) => lackOf(read, ration, read.text('feed-needed-until'))?.mass,
  }),
  defineFact({
    id: `${ration}-runs-out`,
    unit: 'date',
    per: 'flock',
    needs: lackNeeds,
    each: mouthEach,
    wants: mouthWants,
    figures: lackFigures,
    compute: (read) => lackOf(read, ration, read.text('feed-needed-until'))?.from,
  }),
  defineFact({
    id: `${ration}-bags`,
    unit: 'bag',
    per: 'flock',
    needs: [`${ration}-lacking`, 'bag-mass'],
    compute: (read) => bagsFor(read.number(`${ration}-lacking`), read.number('bag-mass')),
  }),
];

/** Whether the keeper has named a ration on any bag. */
const namesRations = (read: Reader): boolean => {
  const named = read.state.purchases.filter(
    (each) => each.on <= read.asked && rations.some((ration) => ration === (each.ration ?? each.what)),
  );
  read.from(...named);
  return named.length > 0;
};

/** What a bag of a ration costs: as last paid for it, unless a price was set since; else what any bag costs. */
const priceOf = (read: Reader, ration: Ration): number => {
  const set = settingOf(read, 'feed-price');
  const bought = read.state.purchases
    .filter((each) => isFeed(each) && each.price !== null && (each.ration ?? each.what) === ration)
    .sort((one, other) => (isAfter(one, other) ? -1 : 1))[0];
  const mass = bought === undefined ? 0 : (massBought(bought, read.number('bag-mass')) ?? 0);
  if (bought === undefined || mass <= 0 || (set !== undefined && isAfter(set, bought)))
    return read.number('bag-price');
  read.from(bought);
  return timesMoney(bought.price ?? 0, read.number('bag-mass') / mass);
};

export const rationNeedFacts = [
  ...rations.flatMap(rationFacts),
  defineFact({
    id: 'rations-apart',
    unit: null,
    per: 'flock',
    needs: rations.map((ration) => `${ration}-needed`),
    wants: rations.map((ration) => `${ration}-left`),
    compute: (read) => {
      const counted = rations.filter(
        (ration) => Number(read.maybe(`${ration}-left`) ?? 0) > 0 || read.number(`${ration}-needed`) > 0,
      );
      return counted.length > 1 && namesRations(read) ? 'yes' : 'no';
    },
  }),
  defineFact({
    id: 'first-ration-out',
    unit: 'date',
    per: 'flock',
    wants: rations.map((ration) => `${ration}-runs-out`),
    compute: (read) =>
      rations
        .flatMap((ration) => read.maybe(`${ration}-runs-out`) ?? [])
        .map(String)
        .sort()[0],
  }),
  defineFact({
    id: 'days-to-ration-out',
    unit: 'day',
    per: 'flock',
    needs: ['first-ration-out'],
    compute: (read) => daysBetween(read.asked, read.text('first-ration-out')),
  }),
  defineFact({
    id: 'bags-by-ration',
    unit: 'named',
    per: 'flock',
    needs: rations.map((ration) => `${ration}-bags`),
    compute: (read) =>
      asNamed(
        rations
          .filter((ration) => read.number(`${ration}-bags`) > 0)
          .map((ration) => `${ration}=${read.number(`${ration}-bags`)}`),
      ),
  }),
  defineFact({
    id: 'ration-to-use-up',
    unit: 'named',
    per: 'flock',
    needs: [...binNeeds, ...rations.map((ration) => `${ration}-needed`)],
    compute: (read) => {
      const isWantedLater = (place: number): boolean =>
        rations.some((ration, at) => at > place && read.number(`${ration}-needed`) > 0);
      return asNamed(
        rations.filter(
          (ration, place) =>
            read.number(`${ration}-left`) > read.number(`${ration}-needed`) && isWantedLater(place),
        ),
      );
    },
  }),
  defineFact({
    id: 'ration-bags-cost',
    unit: 'money',
    per: 'flock',
    needs: ['bag-mass', 'bag-price', ...rations.map((ration) => `${ration}-bags`)],
    compute: (read) =>
      sumMoney(rations.map((ration) => timesMoney(priceOf(read, ration), read.number(`${ration}-bags`)))),
  }),
];
