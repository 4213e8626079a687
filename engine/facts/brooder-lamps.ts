/** How many lamps for the night, by the table and by the heat balance, and which of the two the number rests on. */
import { defineFact } from './define.ts';

export const brooderLampFacts = [
  defineFact({
    id: 'lamps-by-table',
    unit: 'lamp',
    needs: ['alive', 'surroundings', 'lamp-watts'],
    figures: ['brooder/chicks-per-lamp', 'brooder/lamp-watts'],
    // The table is for the usual lamp; weaker ones warm fewer in proportion.
    compute: (read) =>
      Math.ceil(
        ((read.number('alive') / read.figure('brooder/chicks-per-lamp')) *
          read.figure('brooder/lamp-watts')) /
          read.number('lamp-watts') -
          1e-9,
      ),
  }),
  defineFact({
    id: 'lamps-rest-on',
    unit: null,
    needs: ['alive', 'age', 'surroundings', 'brooder-target', 'lamps-by-table'],
    wants: ['lamps-by-balance'],
    figures: ['brooder/strict-days', 'brooder/least-lamps'],
    compute: (read) => {
      if (read.number('alive') <= 0 || read.number('surroundings') >= read.number('brooder-target'))
        return 'none';
      const table = read.number('lamps-by-table');
      const balance = read.maybe('lamps-by-balance');
      const isStrict = read.number('age') < read.figure('brooder/strict-days');
      const byTable = typeof balance !== 'number' || (isStrict && table >= balance);
      if (read.figure('brooder/least-lamps') > (byTable ? table : balance)) return 'spare';
      return byTable ? 'table' : 'balance';
    },
  }),
  defineFact({
    id: 'lamps-for-night',
    unit: 'lamp',
    needs: ['lamps-rest-on', 'lamps-by-table'],
    wants: ['lamps-by-balance', 'alive'],
    figures: ['brooder/least-lamps'],
    compute: (read) => {
      switch (read.text('lamps-rest-on')) {
        case 'none':
          return 0;
        case 'spare':
          return read.figure('brooder/least-lamps');
        case 'balance':
          return read.maybe('lamps-by-balance');
        default:
          return read.number('lamps-by-table');
      }
    },
  }),
  defineFact({
    id: 'lamps-needed',
    unit: 'lamp',
    needs: ['place', 'heat-is-off'],
    wants: ['lamps-for-night'],
    // With the heat off no night has to be known.
    compute: (read) =>
      read.text('place') !== 'brooder' || read.yes('heat-is-off') ? 0 : read.maybe('lamps-for-night'),
  }),
];
