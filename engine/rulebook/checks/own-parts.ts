/** What holds only for files of the keeper's: a figure keeps its form, a published source its name, and what is named must be there. */
import type { Problem } from '../../problem.ts';
import type { Figure, Rulebook } from '../../types.ts';
import { unitOf } from '../../units.ts';
import type { RuleDocument } from '../document.ts';
import { nearest } from '../nearest.ts';
import type { OwnParts } from '../own.ts';

type Documents = ReadonlyMap<string, RuleDocument>;

/** Own numbers beyond this, in base units, are no measure of anything here, and would only overflow sums. */
const largest = 1e9;

const axesOf = ({ by }: Figure): string =>
  by
    .map(({ fact, unit, between }) => `${fact}${unit === null ? '' : ` in ${unit}`} (${between})`)
    .join(', ') || 'one number';

const figureFaults = (base: Rulebook, own: Figure, document: RuleDocument): Problem[] => {
  const before = base.figures[own.id];
  const unit = unitOf(base.units, own.unit);
  const huge = JSON.stringify(own.values.map(({ value }) => value))
    .match(/-?\d[\d.e+-]*/g)
    ?.find((each) => !(Math.abs(Number(each) * (unit?.factor ?? 1)) <= largest));
  return [
    ...(huge === undefined ? [] : [document.problemAt(['values'], 'too-large', { found: huge })]),
    ...(before !== undefined && axesOf(before) !== axesOf(own)
      ? [document.problemAt(['by'], 'other-axes', { figure: own.id, wants: axesOf(before) })]
      : []),
    ...(before !== undefined &&
    unit !== undefined &&
    unit.dimension !== unitOf(base.units, before.unit)?.dimension
      ? [document.problemAt(['unit'], 'other-measure', { figure: own.id, wants: before.unit })]
      : []),
  ];
};

/** Faults that only a file laid over published parts can have. */
export const ownParts = (base: Rulebook, own: OwnParts, documents: Documents): Problem[] => [
  ...Object.values(own.figures).flatMap((figure) => {
    const document = documents.get(`figure:${figure.id}`);
    return document === undefined ? [] : figureFaults(base, figure, document);
  }),
  ...Object.keys(own.sources)
    .filter((id) => Object.hasOwn(base.sources, id))
    .flatMap((id) => documents.get(`own-source:${id}`)?.problemAt([], 'source-taken', { found: id }) ?? []),
  ...Object.keys(own.phrasings)
    .filter((id) => !Object.hasOwn(base.questions, id))
    .flatMap((id) => {
      const suggestion = nearest(id, Object.keys(base.questions));
      const data = { found: id, ...(suggestion === undefined ? {} : { suggestion }) };
      return documents.get(`own-question:${id}`)?.problemAt([], 'unknown-question', data) ?? [];
    }),
  ...Object.entries(own.below).flatMap(([id, higher]) =>
    higher.flatMap((name, index): Problem[] => {
      if (Object.hasOwn(base.rules, name) || Object.hasOwn(own.rules, name)) return [];
      const question = id.split('/')[0] ?? '';
      const suggestion = nearest(
        name,
        Object.keys(base.rules).filter((each) => each.startsWith(`${question}/`)),
      );
      const data = { found: name, ...(suggestion === undefined ? {} : { suggestion }) };
      const problem = documents.get(`rule:${id}`)?.problemAt(['outranked-by', index], 'unknown-rule', data);
      return problem === undefined ? [] : [problem];
    }),
  ),
];
