/** How much floor the birds in the brooder need by now, and how much there is. */
import { defineFact } from './define.ts';
import { settingNumber } from './setting.ts';

export const brooderFloorFacts = [
  defineFact({
    id: 'floor-needed',
    unit: 'm2',
    needs: ['alive', 'age', 'place'],
    figures: ['brooder/floor-space'],
    compute: (read) => {
      if (read.text('place') !== 'brooder') return 0;
      const each = read.maybeFigure('brooder/floor-space');
      return each === undefined ? undefined : Math.max(0, read.number('alive')) * each;
    },
  }),
  defineFact({
    id: 'floor-needed-in-all',
    unit: 'm2',
    per: 'flock',
    each: ['floor-needed'],
    compute: (read) => read.each('floor-needed').reduce((sum, each) => sum + Number(each.value ?? 0), 0),
  }),
  defineFact({
    id: 'brooder-floor',
    unit: 'm2',
    per: 'flock',
    compute: (read) => settingNumber(read, 'brooder'),
  }),
];
