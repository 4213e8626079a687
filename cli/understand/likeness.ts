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

type Counts = Readonly<Record<string, Readonly<Record<string, number>>>>;

/** How often each feature stands among each topic's phrasings and among those that must not be taken for it. Plain JSON. */
export interface Likeness {
  readonly lines: number;
  /** Topic → how many lines it was learned from. */
  readonly phrasings: Readonly<Record<string, number>>;
  /** Topic → the features of each line that must not be taken for it. */
  readonly nots: Readonly<Record<string, readonly (readonly string[])[]>>;
  /** Feature → topic → count. */
  readonly counts: Counts;
  readonly notCounts: Counts;
}

/** How many imagined phrasings of average make are added to each topic, so that one line cannot decide. */
const drawn = 1.5;
/** No single feature counts for more, or less, than this. */
const most = 2.4;
const least = -0.9;

const countAll = (
  lessons: readonly Lesson[],
  linesOf: (lesson: Lesson) => readonly (readonly string[])[],
): Counts => {
  const counts = new Map<string, Map<string, number>>();
  for (const lesson of lessons) {
    for (const id of linesOf(lesson).flat()) {
      const row = counts.get(id) ?? new Map<string, number>();
      counts.set(id, row.set(lesson.topic, (row.get(lesson.topic) ?? 0) + 1));
    }
  }
  return Object.fromEntries([...counts].map(([id, row]) => [id, Object.fromEntries(row)]));
};

/** Counts once; the weights follow from the counts when they are asked for. The order of lessons does not matter. */
export const learnLikeness = (lessons: readonly Lesson[]): Likeness => ({
  lines: lessons.reduce((sum, lesson) => sum + lesson.phrasings.length, 0),
  phrasings: Object.fromEntries(lessons.map((lesson) => [lesson.topic, lesson.phrasings.length])),
  nots: Object.fromEntries(lessons.map((lesson) => [lesson.topic, lesson.not])),
  counts: countAll(lessons, (lesson) => lesson.phrasings),
  notCounts: countAll(lessons, (lesson) => lesson.not),
});

const rowOf = (counts: Counts, id: string): Readonly<Record<string, number>> | undefined =>
  Object.hasOwn(counts, id) ? counts[id] : undefined;

/** What a feature weighs for each topic, above 0 for it, below against it; undefined for a feature never seen. */
export const weighFeature = (likeness: Likeness, id: string): ReadonlyMap<string, number> | undefined => {
  const row = rowOf(likeness.counts, id);
  if (row === undefined) return undefined;
  const nots = rowOf(likeness.notCounts, id);
  const total = Object.values(row).reduce((sum, count) => sum + count, 0);
  const share = total / likeness.lines;
  return new Map(
    Object.entries(likeness.phrasings).map(([topic, here]) => {
      const own = row[topic] ?? 0;
      const elsewhere = likeness.lines - here + (likeness.nots[topic]?.length ?? 0);
      const inside = (own + drawn * share) / (here + drawn);
      const outside = (total - own + (nots?.[topic] ?? 0) + drawn * share) / (elsewhere + drawn);
      return [topic, Math.min(most, Math.max(least, Math.log(inside / outside)))] as const;
    }),
  );
};

/** Shared features as a part of all features of both. */
const overlap = (one: ReadonlySet<string>, other: readonly string[]): number => {
  const shared = other.filter((id) => one.has(id)).length;
  return shared / Math.max(1, one.size + other.length - shared);
};

/** How near a line comes to one that must not be taken for the topic: 1 for the same line, 0 for nothing shared. */
export const nearnessToNot = (likeness: Likeness, topic: string, features: readonly string[]): number => {
  const own = new Set(features);
  return Math.max(0, ...(likeness.nots[topic] ?? []).map((not) => overlap(own, not)));
};
