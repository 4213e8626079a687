/** The losses still to come before birds are processed. */
import { daysBetween } from '../../day.ts';
import { defineFact } from '../define.ts';
import { survivalFigures, survivalLine } from '../feed/survival.ts';

export const toComeFacts = [
  defineFact({
    id: 'loss-to-come',
    unit: 'ratio',
    needs: ['kind', 'age', 'alive'],
    wants: ['loss-rate', 'table-until'],
    figures: survivalFigures,
    compute: (read) => {
      const until = read.maybe('table-until');
      if (read.number('alive') <= 0 || until === undefined) return 0;
      const rate = read.maybe('loss-rate');
      read.assume(rate === undefined ? 'no-losses-counted' : 'losses-as-usual');
      const survive = survivalLine(read, read.text('kind'), rate === undefined ? undefined : Number(rate));
      return 1 - survive(read.number('age'), daysBetween(read.group.hatched, String(until)));
    },
  }),
];
