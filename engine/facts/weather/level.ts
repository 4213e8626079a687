/** How bad weather is for birds, in four levels. */

export const levels = ['calm', 'watch', 'act', 'danger'] as const;
export type Level = (typeof levels)[number];

/** The worse of two levels. */
export const worse = (one: Level, other: Level): Level =>
  levels.indexOf(one) >= levels.indexOf(other) ? one : other;
