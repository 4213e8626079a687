/** The strict shapes of the rule files: what each kind of file may hold. An unknown key is a problem. */
import { z } from 'zod';
import { isDay } from '../day.ts';
import { kebab } from './kebab.ts';
import { imaginesShape, triesShape } from './trying-shapes.ts';

const path = z.string().regex(/^[a-z0-9-]+(\/[a-z0-9-]+)*$/, 'wants an id such as heat/lowest-night');
const day = z
  .union([z.string(), z.number()])
  .transform(String)
  .pipe(z.string().refine(isDay, 'wants a day of the calendar as YYYY-MM-DD'));
const texts = z.array(z.string());

export interface TableShape {
  [key: string]: number | TableShape;
}
const table: z.ZodType<TableShape> = z.lazy(() => z.record(z.string(), z.union([z.number(), table])));

/** rules/figures/<area>/<name>.yaml */
export const figureShape = z.strictObject({
  description: z.string(),
  unit: z.string(),
  shown: z.strictObject({ us: z.string(), metric: z.string() }).optional(),
  by: z
    .array(
      z.strictObject({
        fact: kebab,
        unit: z.string().optional(),
        between: z.enum(['step', 'line', 'name']),
      }),
    )
    .optional(),
  values: z
    .array(
      z
        .strictObject({
          from: day,
          source: path,
          value: z.number().optional(),
          table: table.optional(),
          note: z.string().optional(),
        })
        .refine(
          (each) => (each.value === undefined) !== (each.table === undefined),
          'wants a value or a table',
        ),
    )
    .min(1),
});

/** rules/sources/<id>.yaml */
export const sourceShape = z.strictObject({
  author: z.string(),
  title: z.string(),
  year: z.union([z.string(), z.number()]).transform(String),
  where: z.string(),
  standing: z.enum(['published', 'relayed', 'memory', 'practice', 'judgement', 'derived']),
});

const shown = z.strictObject({ us: z.string(), metric: z.string() });

/** rules/questions/<id>.yaml */
export const questionShape = z.strictObject({
  offer: z.string(),
  example: z.string(),
  kind: z.enum(['yes-no', 'amount', 'list', 'about']),
  per: z.enum(['group', 'flock']),
  concerns: z.strictObject({ fact: kebab, 'one-of': texts.min(1) }).optional(),
  days: z.number().int().optional(),
  turns: z.boolean().optional(),
  ahead: z.number().int().min(1).optional(),
  'looks-back': z.boolean().optional(),
  results: z.array(
    z.strictObject({
      id: kebab,
      fact: kebab,
      total: z.enum(['sum']).optional(),
      unit: z.string().optional(),
    }),
  ),
  takes: z.record(kebab, kebab).optional(),
  together: z.string().optional(),
  gathers: z.array(kebab).optional(),
  tries: triesShape.optional(),
  imagines: imaginesShape.optional(),
  foretells: z.record(kebab, kebab).optional(),
  picture: z.enum(['growth', 'stock', 'ground', 'year']).optional(),
  phrasings: texts,
});

/** rules/records/<kind>.yaml */
export const recordShape = z.strictObject({
  offer: z.string(),
  example: z.string(),
  says: z.string(),
  asks: z.record(z.string(), z.string()),
  phrasings: texts,
});

const leaf = z.strictObject({
  fact: kebab,
  operator: z.string(),
  figure: path.optional(),
  other: kebab.optional(),
  value: z.union([z.string(), z.number(), z.boolean(), texts]).optional(),
  because: z.string(),
});
export type LeafShape = z.infer<typeof leaf>;
export type ConditionShape =
  | LeafShape
  | { all: ConditionShape[] }
  | { any: ConditionShape[] }
  | { not: ConditionShape };
const condition: z.ZodType<ConditionShape> = z.lazy(() =>
  z.union([
    leaf,
    z.strictObject({ all: z.array(condition) }),
    z.strictObject({ any: z.array(condition) }),
    z.strictObject({ not: condition }),
  ]),
);

const given = z.record(z.string(), z.union([z.string(), z.number(), z.boolean()]));

/** rules/decisions/<question>/<name>.yaml */
export const ruleShape = z.strictObject({
  gives: z.enum(['yes', 'no', 'cannot-say', 'amount', 'list', 'caution', 'step', 'remark']),
  when: condition,
  says: z.string(),
  'why-right': z.string(),
  source: path,
  outranks: z.array(kebab).optional(),
  daily: z.boolean().optional(),
  chore: z
    .strictObject({
      at: z.enum(['now', 'morning', 'midday', 'evening', 'soon', 'dated']),
      order: z.number(),
      says: z.string(),
      'done-by': z.string().optional(),
      'gives-way-to': z.array(path).optional(),
      by: kebab.optional(),
      remind: path.optional(),
      'right-when': z.string().optional(),
      'ring-when': z.string().optional(),
    })
    .optional(),
  cases: z.array(
    z.strictObject({
      name: z.string(),
      facts: given,
      figures: z.record(z.string(), z.union([z.string(), z.number()])).optional(),
      expect: z.enum(['held', 'failed', 'unknown']),
    }),
  ),
});

/** A rule of the keeper's own may also say which published rules of its question go before it. */
export const ownRuleShape = ruleShape.extend({ 'outranked-by': z.array(kebab).optional() });

/** A keeper adds ways of asking to a question; the rest of it stays as it is. */
export const ownQuestionShape = z.strictObject({
  phrasings: z.array(z.string().min(1).max(200)).min(1).max(50),
});

/** rules/facts/<topic>.yaml: fact id → its words */
export const factWordsShape = z.record(
  kebab,
  z.strictObject({
    name: z.string(),
    how: z.string(),
    ask: z.string().optional(),
    tell: z.string().optional(),
    shown: shown.optional(),
    fixed: z.boolean().optional(),
    'supposed-by': z
      .array(
        z.strictObject({
          kind: kebab,
          as: z.string(),
          takes: texts.min(1),
          'takes-away': z.boolean().optional(),
          tells: kebab.optional(),
          'share-of': kebab.optional(),
          from: kebab.optional(),
          narrow: z.boolean().optional(),
          unsaid: z.string().optional(),
        }),
      )
      .optional(),
  }),
);

/** rules/assumptions.yaml: id → wording */
export const assumptionsShape = z.record(kebab, z.string());

/** rules/sheet.yaml */
export const sheetShape = z.strictObject({
  where: z.record(kebab, z.string()),
  before: z.string(),
  mind: texts.min(1),
  ring: texts.min(1),
});

/** rules/units.yaml */
export const unitsShape = z.strictObject({
  shown: z.record(kebab, shown),
  units: z.record(
    z.string(),
    z.strictObject({
      dimension: kebab,
      factor: z.number().positive(),
      offset: z.number().optional(),
      says: z.tuple([z.string(), z.string()]),
      words: texts,
      decimals: z.number().int().min(0),
    }),
  ),
});

const classed = z.record(kebab, z.strictObject({ class: kebab, name: z.string().optional(), words: texts }));

/** rules/words.yaml */
export const wordsShape = z.strictObject({
  ideas: z.record(kebab, texts),
  causes: classed,
  signs: classed,
  kinds: z.record(kebab, texts),
  settings: z.record(
    kebab,
    z.strictObject({
      name: z.string(),
      dimension: z.string(),
      choices: texts.optional(),
      words: texts,
      example: z.string(),
    }),
  ),
  hazards: z.record(kebab, z.string()),
});
