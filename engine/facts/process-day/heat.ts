/** How warm the processing day gets, and how hot the scalding water is. */
import { defineFact } from '../define.ts';
import { forecastFigures, restOn } from '../weather/forecast-age.ts';

/** A temperature that a question names without saying of what: hot enough to scald in, it is the water, else the air. */
const told = defineFact({ id: 'temperature-told', unit: 'C', per: 'flock', compute: () => undefined });

export const heatFacts = [
  told,
  defineFact({
    id: 'process-high',
    unit: 'C',
    needs: ['process-date', 'process-is-dated'],
    wants: ['temperature-told'],
    figures: ['process/scald-from', 'process/ice-hot-day', ...forecastFigures],
    compute: (read) => {
      const said = read.maybe('temperature-told');
      if (typeof said === 'number' && said < read.figure('process/scald-from')) return said;
      const isDated = read.text('process-is-dated') === 'yes';
      const high = isDated ? (read.state.weather[read.text('process-date')]?.high ?? null) : null;
      if (high !== null) {
        restOn(read, high);
        return high.value;
      }
      const mild = read.figure('process/ice-hot-day');
      read.assume('no-hot-process-day', { high: { value: mild, unit: 'C' } });
      return mild;
    },
  }),
  defineFact({
    id: 'scald-temperature',
    unit: 'C',
    per: 'flock',
    wants: ['temperature-told'],
    figures: ['process/scald-from', 'process/scald-temperature'],
    compute: (read) => {
      const said = read.maybe('temperature-told');
      return typeof said === 'number' && said >= read.figure('process/scald-from')
        ? said
        : read.figure('process/scald-temperature');
    },
  }),
];
