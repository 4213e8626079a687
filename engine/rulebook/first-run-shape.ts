/** The shape of the questions of the first run. */
import { z } from 'zod';
import { kebab } from './kebab.ts';

const firstStep = {
  id: kebab,
  ask: z.string(),
  example: z.string(),
  metric: z.string().optional(),
  skipped: z.string(),
  unless: kebab.optional(),
  after: kebab.optional(),
};

/** rules/first-run.yaml */
export const firstRunShape = z.strictObject({
  steps: z
    .array(
      z.union([
        z.strictObject({ ...firstStep, setting: kebab }),
        z.strictObject({ ...firstStep, record: kebab, field: kebab }),
      ]),
    )
    .min(1),
  ends: z.strictObject({ birds: z.string(), none: z.string() }),
  planning: z.string(),
});
