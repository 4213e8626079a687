/** Rule documents → the parts of a rulebook, each checked against its strict shape. */
import { closest, distance } from 'fastest-levenshtein';
import type { z } from 'zod';
import type { Problem } from '../problem.ts';
import type { Condition, Figure, FigureTable, Question, RecordWords, Rule, Units } from '../types.ts';
import type { RuleDocument } from './document.ts';
import type {
  ConditionShape,
  figureShape,
  questionShape,
  recordShape,
  ruleShape,
  unitsShape,
} from './shapes.ts';

const keysOf = (schema: z.ZodType): string[] =>
  'shape' in schema && typeof schema.shape === 'object' && schema.shape !== null
    ? Object.keys(schema.shape)
    : [];

/** The known word nearest to a misspelt one, or nothing when none is near. */
export const nearest = (word: string, known: readonly string[]): string | undefined => {
  if (known.length === 0) return undefined;
  const best = closest(word, known as string[]);
  return distance(word, best) <= Math.max(2, word.length / 3) ? best : undefined;
};

const problemsOf = (document: RuleDocument, schema: z.ZodType, error: z.ZodError): Problem[] =>
  error.issues.flatMap((issue): Problem[] => {
    const path = issue.path as (string | number)[];
    if (issue.code === 'unrecognized_keys') {
      const known = path.length === 0 ? keysOf(schema) : [];
      return issue.keys.map((key) => {
        const suggestion = nearest(key, known);
        return document.problemAt([...path, key], 'unknown-key', {
          found: key,
          ...(known.length > 0 ? { wants: known } : {}),
          ...(suggestion === undefined ? {} : { suggestion }),
        });
      });
    }
    const missing =
      issue.code === 'invalid_type' && issue.input === undefined && /undefined/.test(issue.message);
    return [
      document.problemAt(path, missing ? 'missing-key' : 'wrong-shape', {
        key: path.join('.'),
        wants: issue.message,
      }),
    ];
  });

/** Checks a document's data against a shape: the data, or the problems with their places. */
export const shaped = <T>(
  document: RuleDocument,
  schema: z.ZodType<T>,
): { readonly data: T | undefined; readonly problems: readonly Problem[] } => {
  if (document.data === undefined) return { data: undefined, problems: document.problems };
  const result = schema.safeParse(document.data);
  return result.success
    ? { data: result.data, problems: document.problems }
    : { data: undefined, problems: [...document.problems, ...problemsOf(document, schema, result.error)] };
};

export const unitsFrom = (data: z.infer<typeof unitsShape>): Units => {
  const list = Object.entries(data.units).map(([id, unit]) => ({
    id,
    dimension: unit.dimension,
    factor: unit.factor,
    offset: unit.offset ?? 0,
    one: unit.says[0],
    many: unit.says[1],
    words: unit.words,
    decimals: unit.decimals,
  }));
  const bases = list.filter((unit) => unit.factor === 1 && unit.offset === 0);
  return {
    shown: data.shown,
    list,
    byId: Object.fromEntries(list.map((unit) => [unit.id, unit])),
    // The first base unit of a dimension wins: written from the last to the first.
    base: Object.fromEntries(bases.reverse().map((unit) => [unit.dimension, unit])),
  };
};

export const figureFrom = (id: string, data: z.infer<typeof figureShape>): Figure => ({
  id,
  description: data.description,
  unit: data.unit,
  by: (data.by ?? []).map((axis) => ({ fact: axis.fact, unit: axis.unit ?? null, between: axis.between })),
  values: data.values.map((each) => ({
    from: each.from,
    source: each.source,
    value: (each.table as FigureTable | undefined) ?? each.value ?? 0,
    note: each.note ?? null,
  })),
});

export const questionFrom = (id: string, data: z.infer<typeof questionShape>): Question => ({
  id,
  offer: data.offer,
  example: data.example,
  kind: data.kind,
  per: data.per,
  concerns: data.concerns === undefined ? null : { fact: data.concerns.fact, oneOf: data.concerns['one-of'] },
  days: data.days ?? 0,
  phrasings: data.phrasings,
  not: data.not,
  ideas: data.ideas,
  results: data.results.map((each) => ({ id: each.id, fact: each.fact, total: each.total ?? null })),
  together: data.together ?? null,
  gathers: data.gathers ?? [],
  turns: data.turns ?? false,
});

export const recordFrom = (kind: string, data: z.infer<typeof recordShape>): RecordWords => ({
  kind,
  ...data,
});

const conditionFrom = (shape: ConditionShape): Condition => {
  if ('all' in shape) return { all: shape.all.map(conditionFrom) };
  if ('any' in shape) return { any: shape.any.map(conditionFrom) };
  if ('not' in shape) return { not: conditionFrom(shape.not) };
  return {
    fact: shape.fact,
    operator: shape.operator,
    figure: shape.figure ?? null,
    other: shape.other ?? null,
    value: shape.value ?? null,
    because: shape.because,
  };
};

/** A rule whose id is `question/name`. */
export const ruleFrom = (id: string, data: z.infer<typeof ruleShape>): Rule => {
  const question = id.split('/')[0] ?? id;
  return {
    id,
    question,
    gives: data.gives,
    when: conditionFrom(data.when),
    says: data.says,
    whyRight: data['why-right'],
    source: data.source,
    outranks: (data.outranks ?? []).map((name) => `${question}/${name}`),
    chore:
      data.chore === undefined
        ? null
        : {
            id,
            at: data.chore.at,
            order: data.chore.order,
            says: data.chore.says,
            doneBy: data.chore['done-by'] ?? null,
          },
    daily: data.daily ?? false,
    cases: data.cases.map((each) => ({
      name: each.name,
      facts: each.facts,
      figures: each.figures ?? {},
      expect: each.expect,
    })),
  };
};
