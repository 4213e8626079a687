/** Twenty-five red chicks hatched on 2 May 2026, and what a keeper may have told of them by 30 May. */
import type { Line } from '../../helpers/flock-of.ts';

export const today = '2026-05-30';

export const arrive: Line = {
  kind: 'arrive',
  on: '2026-05-04',
  group: 'reds',
  count: 25,
  bird: 'slow',
  hatched: '2026-05-02',
};
export const pen: Line = { kind: 'setting', on: '2026-05-04', what: 'pen', value: '10 ft x 12 ft' };
export const cover = (value: 'yes' | 'no'): Line => ({
  kind: 'setting',
  on: '2026-05-04',
  what: 'pen-cover',
  value,
});
export const heatDown = (on: string): Line => ({
  kind: 'sign',
  on,
  sign: 'heat-down',
  words: 'less heat',
  group: 'reds',
});
export const sign = (name: string, on: string): Line => ({
  kind: 'sign',
  on,
  sign: name,
  words: name,
  group: 'reds',
});
export const hawk: Line = { kind: 'loss', on: '2026-05-29', group: 'reds', count: 2, cause: 'hawk' };

/** The lows of today and the two nights after, and what else is told of today. */
export const nights = (low: string, more: Line = {}): Line[] => [
  { kind: 'weather', on: today, low, ...more },
  { kind: 'weather', on: '2026-05-31', low },
  { kind: 'weather', on: '2026-06-01', low },
];

/** Nothing stands in their way: four weeks old, ten days without full heat, nights of 55 °F, a covered pen. */
export const ready: readonly Line[] = [arrive, pen, cover('yes'), heatDown('2026-05-20'), ...nights('55 F')];
