/** What birds that are kept past the table come to: how many stay for processing, how many would live, and cocks to hens. */
import { defineFact } from '../define.ts';
import { wholeUp } from '../sums/whole.ts';

export const keepingFacts = [
  defineFact({
    id: 'keep-asked',
    unit: 'bird',
    per: 'flock',
    // Only a question says how many: "can I keep 3 of the reds".
    compute: () => 0,
  }),
  defineFact({
    id: 'to-process',
    unit: 'bird',
    needs: ['alive', 'kept-back', 'keep-asked'],
    compute: (read) =>
      Math.max(0, read.number('alive') - read.number('kept-back') - read.number('keep-asked')),
  }),
  defineFact({
    id: 'kept-in-all',
    unit: 'bird',
    needs: ['kept-back', 'keep-asked'],
    compute: (read) => read.number('kept-back') + read.number('keep-asked'),
  }),
  defineFact({
    id: 'kept-age',
    unit: 'day',
    per: 'flock',
    figures: ['kept/long-life'],
    compute: (read) => read.figure('kept/long-life'),
  }),
  defineFact({
    id: 'kept-loss',
    unit: 'ratio',
    needs: ['kind', 'kept-age', 'loss-rate'],
    figures: ['losses/pattern'],
    compute: (read) => {
      const behind = read.figure('losses/pattern', [read.text('kind'), read.number('kept-age')]);
      return Math.min(1, read.number('loss-rate') * behind);
    },
  }),
  defineFact({
    id: 'cocks-for-hatching',
    unit: 'cock',
    needs: ['kept-in-all'],
    figures: ['kept/hens-to-a-cock'],
    compute: (read) => wholeUp(read.number('kept-in-all') / (1 + read.figure('kept/hens-to-a-cock'))),
  }),
  defineFact({
    id: 'hens-for-hatching',
    unit: 'hen',
    needs: ['kept-in-all', 'cocks-for-hatching'],
    compute: (read) => read.number('kept-in-all') - read.number('cocks-for-hatching'),
  }),
  defineFact({
    id: 'room-for-kept',
    unit: 'm2',
    needs: ['kept-in-all'],
    figures: ['kept/house-room'],
    compute: (read) => read.number('kept-in-all') * read.figure('kept/house-room'),
  }),
];
