/** Data of the right shape → the parts of a rulebook. */
import type { z } from 'zod';
import type { Condition, Figure, FigureTable, Question, RecordWords, Rule, Units } from '../types.ts';
import type {
  ConditionShape,
  figureShape,
  questionShape,
  recordShape,
  ruleShape,
  unitsShape,
} from './shapes.ts';

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
  shown: data.shown ?? null,
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
  results: data.results.map((each) => ({
    id: each.id,
    fact: each.fact,
    total: each.total ?? null,
    unit: each.unit ?? null,
  })),
  looksBack: data['looks-back'] ?? false,
  takes: data.takes ?? {},
  together: data.together ?? null,
  gathers: data.gathers ?? [],
  tries: data.tries ?? null,
  imagines: data.imagines ?? null,
  turns: data.turns ?? false,
  ahead: data.ahead ?? null,
  foretells: data.foretells ?? {},
  picture: data.picture ?? null,
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
            givesWayTo: data.chore['gives-way-to'] ?? [],
            by: data.chore.by ?? null,
            remind: data.chore.remind ?? null,
            rightWhen: data.chore['right-when'] ?? null,
            ringWhen: data.chore['ring-when'] ?? null,
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
