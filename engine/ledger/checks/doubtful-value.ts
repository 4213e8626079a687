/** A value that is possible but far from anything likely, most often a slip in number or unit; which is likely, figures say. */
import type { Problem } from '../../problem.ts';
import type { FieldValue, Quantity, Units } from '../../types.ts';
import { toBase } from '../../units.ts';
import { findingAt } from '../finding.ts';
import type { Standing } from '../settle.ts';
import { type Check, problemOf, type Scene } from './check.ts';

interface Bound {
  readonly kind: string;
  readonly field: string;
  /** Ids of figures, in base units. */
  readonly least?: string;
  readonly most?: string;
}

const HEAVIEST = 'doubt/heaviest-bird';
const LIGHTEST = 'doubt/lightest-bird';

const bounds: readonly Bound[] = [
  { kind: 'arrive', field: 'count', most: 'doubt/most-birds' },
  { kind: 'weigh', field: 'weights', least: LIGHTEST, most: HEAVIEST },
  { kind: 'weigh', field: 'mean', least: LIGHTEST, most: HEAVIEST },
  { kind: 'process', field: 'weights', most: HEAVIEST },
  { kind: 'feed', field: 'amount', most: 'doubt/most-feed-at-once' },
  { kind: 'weather', field: 'low', least: 'doubt/coldest-air', most: 'doubt/hottest-air' },
  { kind: 'weather', field: 'high', least: 'doubt/coldest-air', most: 'doubt/hottest-air' },
  { kind: 'weather', field: 'rain', most: 'doubt/most-rain' },
  { kind: 'weather', field: 'wind', most: 'doubt/strongest-wind' },
];

/** The figures that this check asks for, so that a rulebook can be held against it. */
export const limitIds: readonly string[] = [
  ...new Set(bounds.flatMap(({ least, most }) => [least, most].filter((id) => id !== undefined))),
];

const numbersOf = (
  value: FieldValue | undefined,
  units: Units,
): readonly (readonly [suffix: string, base: number])[] => {
  if (typeof value === 'number') return [['', value]];
  if (typeof value !== 'object') return [];
  if ('unit' in value) return [['', toBase(units, value)]];
  return (value as readonly Quantity[]).map((each, index) => [`.${index}`, toBase(units, each)]);
};

const findBeyond = (scene: Scene, standing: Standing, { field, least, most }: Bound): readonly Problem[] => {
  const { limits } = scene.measure;
  const min = (least === undefined ? undefined : limits[least]) ?? Number.NEGATIVE_INFINITY;
  const max = (most === undefined ? undefined : limits[most]) ?? Number.POSITIVE_INFINITY;
  return numbersOf(standing.entry.fields[field], scene.book.units).flatMap(([suffix, found]) => {
    if (found >= min && found <= max) return [];
    const limit = (found < min ? least : most) ?? '';
    const data = { found, limit, [found < min ? 'min' : 'max']: found < min ? min : max };
    return [problemOf(scene, standing, findingAt('doubtful-value', `${field}${suffix}`, data))];
  });
};

export const doubtfulValue: Check = {
  name: 'doubtful-value',
  find: (scene) =>
    scene.standing.flatMap((standing) =>
      bounds
        .filter(({ kind }) => kind === standing.entry.kind)
        .flatMap((bound) => findBeyond(scene, standing, bound)),
    ),
};
