/** Hearing with learned weights: from the features of a line to the chance of each topic, and what each feature did for it. */
import { addRow, placeOf, type Weights } from './pack.ts';
import { damping, toChances } from './train.ts';

/** One line as one model hears it. */
export interface Weighed {
  /** The chance of each topic, by name. */
  readonly chances: ReadonlyMap<string, number>;
  /**
   * What each feature did for a topic beyond what it did for the average one, in the logarithm of the odds; 0 for one never
   * met. Exact for the hidden units that are on: with them fixed, a net is a sum.
   */
  readonly saidFor: (topic: string) => readonly number[];
}

/** Hears the features of a line. */
export const weigh = (weights: Weights, features: readonly string[]): Weighed => {
  const { topics, hidden, out } = weights;
  const places = features.map((feature) => placeOf(weights, feature));
  const damped = damping(places.filter((place) => place >= 0).length);
  const units = Float64Array.from(weights.rest);
  for (const place of places) if (place >= 0) addRow(weights, place, damped, units);
  const sums = Float64Array.from(weights.base);
  for (let unit = 0; unit < hidden; unit += 1) {
    const value = units[unit] ?? 0;
    if (value <= 0) continue;
    for (let column = 0; column < topics.length; column += 1)
      sums[column] = (sums[column] ?? 0) + value * (out[unit * topics.length + column] ?? 0);
  }
  const chances = toChances(sums);
  return {
    chances: new Map(topics.map((topic, column) => [topic, chances[column] ?? 0])),
    saidFor: (topic) => {
      const column = topics.indexOf(topic);
      const pulls = units.map((value, unit) => {
        if (value <= 0) return 0;
        const row = out.subarray(unit * topics.length, (unit + 1) * topics.length);
        const usual = row.reduce((sum, each) => sum + each, 0) / topics.length;
        return (row[column] ?? 0) - usual;
      });
      return places.map((place) => {
        if (place < 0) return 0;
        const said = new Float64Array(hidden);
        addRow(weights, place, damped, said);
        return said.reduce((sum, each, unit) => sum + each * (pulls[unit] ?? 0), 0);
      });
    },
  };
};

/** A chance that cannot be nothing, so that it has a logarithm. */
const least = 1e-12;

/** Chances by several models, each with how much it counts, mixed as logarithms and brought back to a sum of 1. */
export const mixed = (
  names: readonly string[],
  ...views: readonly (readonly [ReadonlyMap<string, number>, number])[]
): ReadonlyMap<string, number> => {
  const sums = names.map((name) =>
    views.reduce(
      (sum, [chances, counts]) => sum + counts * Math.log(Math.max(least, chances.get(name) ?? 0)),
      0,
    ),
  );
  const chances = toChances(Float64Array.from(sums));
  return new Map(names.map((name, at) => [name, chances[at] ?? 0]));
};
