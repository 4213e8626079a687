/** Heat in the brooder as a balance: what the birds give off themselves, what box and draught take away, what lamps must add. */
import { defineFact, type Reader } from './define.ts';
import { settingFlag, settingNumber } from './setting.ts';
import { type HeatedSpot, ownWarming, powerFor } from './sums/heat-balance.ts';

const spotNeeds = ['alive', 'live-weight', 'surroundings', 'brooder-target', 'brooder-air', 'brooder-share'];
/** What a fact must declare to use `heatedSpot`. */
export const spotFigures = [
  'brooder/bird-heat',
  'brooder/bird-heat-power',
  'brooder/air-warming-share',
  'brooder/box-loss',
  'brooder/spot-loss',
  'brooder/lying-area',
  'brooder/lying-area-power',
  'brooder/lamp-on-chicks',
  'brooder/lamp-spot',
];

const heatOf = (read: Reader, weight: number): number =>
  read.figure('brooder/bird-heat') * weight ** read.figure('brooder/bird-heat-power');

const lyingArea = (read: Reader, weight: number): number =>
  read.figure('brooder/lying-area') * weight ** read.figure('brooder/lying-area-power');

/** The warm spot of so many birds of one weight, kg, on a floor of so many m². */
export const heatedSpot = (
  read: Reader,
  birds: number,
  weight: number,
  floor: number,
  gap: number,
): HeatedSpot => ({
  gap,
  ownHeat: birds * heatOf(read, weight) * read.figure('brooder/air-warming-share'),
  boxLoss: floor * read.figure('brooder/box-loss'),
  onSpot: read.figure('brooder/lamp-on-chicks'),
  // A few chicks cover less than a lamp lights, and what falls beside them is lost to them.
  spotLoss:
    Math.max(birds * lyingArea(read, weight), read.figure('brooder/lamp-spot')) *
    read.figure('brooder/spot-loss'),
});

const spotOf = (read: Reader): HeatedSpot | undefined =>
  read.number('alive') <= 0
    ? undefined
    : heatedSpot(
        read,
        read.number('alive'),
        read.number('live-weight'),
        read.number('brooder-share'),
        read.number('brooder-target') - read.number('surroundings'),
      );

export const brooderBalanceFacts = [
  defineFact({
    id: 'lamp-watts',
    unit: 'W',
    per: 'flock',
    figures: ['brooder/lamp-watts'],
    compute: (read) => {
      const set = settingNumber(read, 'lamp-watts');
      if (set !== undefined && set > 0) return set;
      const usual = read.figure('brooder/lamp-watts');
      read.assume('usual-lamps', { watts: { value: usual, unit: 'W' } });
      return usual;
    },
  }),
  defineFact({
    id: 'lamps-there',
    unit: 'lamp',
    per: 'flock',
    compute: (read) => settingNumber(read, 'lamps'),
  }),
  defineFact({
    id: 'heat-plate',
    unit: null,
    per: 'flock',
    compute: (read) => (settingNumber(read, 'heat-plates') ?? 0) > 0,
  }),
  defineFact({
    id: 'brooder-air',
    unit: null,
    per: 'flock',
    compute: (read) => {
      const draughty = settingFlag(read, 'brooder-draught');
      if (draughty === undefined) read.assume('brooder-free-of-draught');
      return draughty === true ? 'draughty' : 'still';
    },
  }),
  defineFact({
    id: 'brooder-share',
    unit: 'm2',
    needs: ['floor-needed', 'floor-needed-in-all'],
    wants: ['brooder-floor'],
    compute: (read) => {
      const needed = read.number('floor-needed');
      const floor = read.maybe('brooder-floor');
      if (needed <= 0) return undefined;
      // Before anybody has arrived there is nobody to share the floor with.
      const inAll = Math.max(needed, read.number('floor-needed-in-all'));
      if (typeof floor === 'number') return (floor * needed) / inAll;
      read.assume('brooder-as-large-as-needed', { floor: { value: needed, unit: 'm2' } });
      return needed;
    },
  }),
  defineFact({
    id: 'own-warming',
    unit: 'C-degree',
    needs: spotNeeds,
    figures: spotFigures,
    compute: (read) => {
      const spot = spotOf(read);
      return spot === undefined ? undefined : ownWarming(spot);
    },
  }),
  defineFact({
    id: 'heat-watts',
    unit: 'W',
    needs: spotNeeds,
    figures: spotFigures,
    compute: (read) => {
      const spot = spotOf(read);
      return spot === undefined ? undefined : powerFor(spot);
    },
  }),
  defineFact({
    id: 'lamp-strength',
    unit: 'ratio',
    needs: ['heat-watts', 'lamp-watts'],
    compute: (read) => read.number('heat-watts') / read.number('lamp-watts'),
  }),
  defineFact({
    id: 'lamps-by-balance',
    unit: 'lamp',
    needs: ['lamp-strength'],
    compute: (read) => Math.ceil(read.number('lamp-strength') - 1e-9),
  }),
];
