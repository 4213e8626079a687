/** Ice and gear for the birds of the day: a heat balance, and more for what melts in the air. */
import { defineFact } from '../define.ts';
import { meltFor } from '../sums/melt.ts';

export const iceFacts = [
  defineFact({
    id: 'tub-water',
    unit: 'l',
    needs: ['birds-on-the-day'],
    figures: ['process/water-a-bird'],
    compute: (read) => read.number('birds-on-the-day') * read.figure('process/water-a-bird'),
  }),
  defineFact({
    id: 'ice-by-balance',
    unit: 'kg',
    needs: ['birds-on-the-day', 'carcass-on-the-day', 'tub-water'],
    figures: [
      'process/body-heat',
      'process/chilled',
      'process/carcass-heat',
      'process/water-from',
      'process/water-to',
      'process/ice-melts-like',
    ],
    compute: (read) =>
      meltFor(
        [
          {
            mass: read.number('birds-on-the-day') * read.number('carcass-on-the-day'),
            heat: read.figure('process/carcass-heat'),
            from: read.figure('process/body-heat'),
            to: read.figure('process/chilled'),
          },
          {
            // A litre of water weighs a kilogram.
            mass: read.number('tub-water'),
            heat: 1,
            from: read.figure('process/water-from'),
            to: read.figure('process/water-to'),
          },
        ],
        read.figure('process/ice-melts-like'),
      ),
  }),
  defineFact({
    id: 'ice-share',
    unit: 'ratio',
    needs: ['process-high'],
    figures: ['process/ice-losses', 'process/ice-losses-hot', 'process/ice-hot-day'],
    compute: (read) => {
      const isHot = read.number('process-high') > read.figure('process/ice-hot-day');
      return read.figure(isHot ? 'process/ice-losses-hot' : 'process/ice-losses');
    },
  }),
  defineFact({
    id: 'ice',
    unit: 'kg',
    needs: ['ice-by-balance', 'ice-share'],
    compute: (read) => read.number('ice-by-balance') * read.number('ice-share'),
  }),
  defineFact({
    id: 'ice-a-bird',
    unit: 'kg',
    needs: ['ice', 'birds-on-the-day'],
    compute: (read) =>
      read.number('birds-on-the-day') <= 0 ? undefined : read.number('ice') / read.number('birds-on-the-day'),
  }),
  defineFact({
    id: 'tub-room',
    unit: 'l',
    needs: ['birds-on-the-day', 'carcass-on-the-day', 'tub-water', 'ice'],
    // Birds, water and ice take about a litre for each kilogram.
    compute: (read) =>
      read.number('birds-on-the-day') * read.number('carcass-on-the-day') +
      read.number('tub-water') +
      read.number('ice'),
  }),
];
