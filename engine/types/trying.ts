/** How a question answers for groups that are not there, as types. */

/** Facts of the flock that say which groups to try, and how groups and plans are named. */
export interface Tries {
  /** Hatch days to try, and all that may be tried instead; days with spaces between. */
  readonly days: string;
  readonly beyond: string;
  /** Kinds to try in turn. */
  readonly kinds: string;
  /** Chicks of each group, how many groups, and days on the way. */
  readonly birds: string;
  readonly groups: string;
  readonly travel: string;
  /** `early` or `late`: which of two equally good days comes first. */
  readonly aim: string;
  /** What the search came to, supposed of the groups it answers for: `refused`, or `instead`. */
  readonly outcome: string;
  /** Days that one group lasts, and days by which plans must lie apart. */
  readonly lasts: string;
  readonly apart: string;
  /** How many plans are told. */
  readonly most: string;
  readonly names: readonly string[];
  /** Names of plans, best first. */
  readonly plans: readonly string[];
  readonly instead: string;
}

/** Facts of the flock that a group of birds which are only thought of is made of, and what it is called. */
export interface Imagines {
  readonly name: string;
  readonly birds: string;
  readonly kind: string;
  /** The day they would have hatched on to be ready on the day asked about. */
  readonly hatched: string;
}
