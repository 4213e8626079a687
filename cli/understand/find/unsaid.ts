/** What is supposed without a value: `if it rains all day`, `if we had no rain`. */
import type { Token } from '../tokens.ts';
import type { Supposing } from '../types.ts';
import { likeliestKind, type Placing } from './supposable.ts';

const denials = new Set([
  'no',
  'not',
  'without',
  'stops',
  'stopped',
  'dry',
  'stays',
  'never',
  'nothing',
  'lays',
  'drops',
]);

/** The published value that stands for what nobody put a number to, or none of it where the words deny it; null where there is none. */
export const supposedUnsaid = (tokens: readonly Token[], placing: Placing): Supposing | null => {
  const kind = likeliestKind(placing);
  const meant = Object.values(placing.facts).flatMap(({ id, supposedBy }) =>
    supposedBy.flatMap((by): Supposing[] => {
      const figure = by.kind === kind && by.unsaid !== null ? placing.figures[by.unsaid] : undefined;
      const value = figure?.values.at(-1)?.value;
      if (figure === undefined || typeof value !== 'number') return [];
      const isDenied = tokens.some(({ word }) => denials.has(word));
      return [{ what: by.as, fact: id, value: isDenied ? 0 : value, unit: figure.unit, adds: false }];
    }),
  );
  const [first, ...orElse] = meant.sort(
    (one, other) => Number(placing.taken.has(other.fact ?? '')) - Number(placing.taken.has(one.fact ?? '')),
  );
  return first === undefined ? null : { ...first, ...(orElse.length === 0 ? {} : { orElse }) };
};
