/** The demo: an invented keeper with two groups in the middle of their season, dated back from the day it is run. */
import { addDays, type Day } from '../../engine/day.ts';
import { demoEntries } from './entries.ts';

/** The demo's ledger as text. The same day always gives the same text. */
export const demoLedger = (today: Day): string =>
  demoEntries
    .map(({ ago, kind, ...fields }) => {
      const on = addDays(today, -ago);
      // What lies ahead was written today; the rest on its own evening.
      const written = `${ago < 0 ? today : on}T${ago <= 0 ? '06' : '19'}:30:00+00:00`;
      const dated = Object.fromEntries(
        Object.entries(fields).map(([name, value]) => [
          name,
          name === 'hatched' ? addDays(today, -Number(value)) : value,
        ]),
      );
      return `${JSON.stringify({ kind, on, ...dated, by: 'Nell', written })}\n`;
    })
    .join('');
