/** The dates of one batch, planned or here: ordered, hatched, out, processed. */
import { addDays, daysBetween } from '../../day.ts';
import { defineFact } from '../define.ts';
import { readyFigures, readyNeeds } from '../planning/kind-ready.ts';
import { kindOf, outDay, outFigures, processDay } from './stay.ts';

export const batchDateFacts = [
  defineFact({ id: 'batch-hatch', unit: 'date', compute: (read) => read.group.hatched }),
  defineFact({ id: 'batch-arrives', unit: 'date', compute: (read) => read.group.arrived }),
  defineFact({ id: 'batch-kind', unit: null, compute: (read) => read.group.kind }),
  defineFact({
    id: 'batch-order-by',
    unit: 'date',
    needs: ['batch-hatch'],
    figures: ['season/order-lead'],
    compute: (read) => addDays(read.text('batch-hatch'), -read.figure('season/order-lead')),
  }),
  defineFact({
    id: 'batch-out',
    unit: 'date',
    needs: ['usual-nights'],
    figures: outFigures,
    compute: (read) => outDay(read, read.group, kindOf(read, read.group)),
  }),
  defineFact({
    id: 'batch-out-age',
    unit: 'day',
    needs: ['batch-hatch', 'batch-out'],
    compute: (read) => daysBetween(read.text('batch-hatch'), read.text('batch-out')),
  }),
  defineFact({
    id: 'batch-process',
    unit: 'date',
    needs: readyNeeds,
    figures: readyFigures,
    compute: (read) => processDay(read, read.group, kindOf(read, read.group)),
  }),
  defineFact({
    id: 'batch-process-age',
    unit: 'day',
    needs: ['batch-hatch', 'batch-process'],
    compute: (read) => daysBetween(read.text('batch-hatch'), read.text('batch-process')),
  }),
  defineFact({
    id: 'batch-late',
    unit: 'day',
    needs: ['batch-process', 'season-day', 'season-aim', 'plan-outcome'],
    compute: (read) => {
      const day = read.text('season-day');
      // A batch offered instead is offered because none can be ready by then.
      const isBound = read.text('season-aim') === 'late' && read.text('plan-outcome') !== 'instead';
      if (day === '' || !isBound) return 0;
      return Math.max(0, daysBetween(day, read.text('batch-process')));
    },
  }),
];
