/** By what hour of a hot day things are to be done. */
import { defineFact, type Fact } from '../define.ts';

const minutesInDay = 24 * 60;

/** The time of day at a part of it: `11:00`. */
const clockAt = (partOfDay: number): string => {
  const minutes = Math.round(partOfDay * minutesInDay);
  const two = (number: number): string => String(number).padStart(2, '0');
  return `${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
};

/** The hour by itself, to be said on the day, and with its day, for whoever keeps a calendar. */
const hour = (name: string, figure: string): readonly Fact[] => [
  defineFact({
    id: `${name}-hour`,
    unit: null,
    per: 'flock',
    figures: [figure],
    compute: (read) => clockAt(read.figure(figure)),
  }),
  defineFact({
    id: `${name}-time`,
    unit: 'date-time',
    per: 'flock',
    figures: [figure],
    compute: (read) => `${read.on}T${clockAt(read.figure(figure))}`,
  }),
];

export const hourFacts = [
  ...hour('handling', 'weather/handle-by'),
  ...hour('shade', 'weather/shade-by'),
  ...hour('feed-off', 'weather/feed-off-at'),
  ...hour('feed-back', 'weather/feed-back-at'),
];
