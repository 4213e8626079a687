/** The shapes of what a question says of groups that are not there: those it tries, and the one it imagines. */
import { z } from 'zod';
import { kebab } from './kebab.ts';

const names = z.array(z.string()).min(1);

export const triesShape = z.strictObject({
  days: kebab,
  beyond: kebab,
  kinds: kebab,
  birds: kebab,
  groups: kebab,
  travel: kebab,
  aim: kebab,
  lasts: kebab,
  apart: kebab,
  outcome: kebab,
  most: kebab,
  names,
  plans: names,
  instead: z.string(),
});

export const imaginesShape = z.strictObject({
  name: z.string(),
  birds: kebab,
  kind: kebab,
  hatched: kebab,
});
