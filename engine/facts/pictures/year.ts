/** What the time line of a year's batches is drawn from: brooder, grass and processing of every group. */
import { defineFact } from '../define.ts';

export const yearSeriesFacts = [
  defineFact({
    id: 'year-series',
    unit: 'series',
    per: 'flock',
    each: ['alive', 'process-date'],
    compute: (read) => {
      const alive = read.each('alive');
      const batches = read.each('process-date').map(({ group, value }, at) => {
        const isGone = Number(alive[at]?.value ?? 0) <= 0;
        const out = group.whereabouts.find(({ place, daysOnly }) => place === 'pen' && !daysOnly);
        const last = [...group.losses, ...group.processed]
          .map(({ on }) => on)
          .sort()
          .at(-1);
        const end = isGone ? (last ?? group.arrived) : (value ?? null);
        return { group: group.name, hatched: group.hatched, out: out?.on ?? null, end, isGone };
      });
      return batches.length === 0 ? undefined : JSON.stringify({ today: read.on, batches });
    },
  }),
];
