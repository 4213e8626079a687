/**
 * How much each feature of a line speaks for each topic, learned from the phrasings in the rule files.
 * Plain counting: the log of how much likelier the feature is among a topic's phrasings than among all others,
 * drawn to zero where there are few of them (naive Bayes, one topic against the rest).
 */

/** What one topic is learned from: the features of each phrasing, and of each line that must not be taken for it. */
export interface Lesson {
  readonly topic: string;
  readonly phrasings: readonly (readonly string[])[];
  readonly not: readonly (readonly string[])[];
}

/** Feature → topic → weight. */
export type Likeness = ReadonlyMap<string, ReadonlyMap<string, number>>;

/** How many imagined phrasings of average make are added to each topic, so that one line cannot decide. */
const drawn = 1.5;
/** No single feature counts for more, or less, than this. */
const most = 2.4;
const least = -0.9;

const countIn = (lines: readonly (readonly string[])[]): Map<string, number> => {
  const counts = new Map<string, number>();
  for (const features of lines) for (const id of features) counts.set(id, (counts.get(id) ?? 0) + 1);
  return counts;
};

/** Learns the weights. The order of lessons does not matter. */
export const learnLikeness = (lessons: readonly Lesson[]): Likeness => {
  const all = countIn(lessons.flatMap((lesson) => lesson.phrasings));
  const lines = lessons.reduce((sum, lesson) => sum + lesson.phrasings.length, 0);
  const weights = new Map<string, Map<string, number>>();
  for (const lesson of lessons) {
    const own = countIn(lesson.phrasings);
    const not = countIn(lesson.not);
    const here = lesson.phrasings.length;
    const elsewhere = lines - here + lesson.not.length;
    for (const [id, total] of all) {
      const share = total / lines;
      const inside = ((own.get(id) ?? 0) + drawn * share) / (here + drawn);
      const outside = (total - (own.get(id) ?? 0) + (not.get(id) ?? 0) + drawn * share) / (elsewhere + drawn);
      const weight = Math.min(most, Math.max(least, Math.log(inside / outside)));
      const row = weights.get(id) ?? new Map<string, number>();
      row.set(lesson.topic, weight);
      weights.set(id, row);
    }
  }
  return weights;
};
