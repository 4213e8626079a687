/** An answer under suppositions beside the one without them, as types. */
import type { Difference } from './audit.ts';
import type { Answer, Reason } from './reasoning.ts';

/** Why another rule decides under the suppositions than without them, for one group or the flock. */
export interface Turned {
  readonly group: string | null;
  /** The rule that decides without the suppositions, and the one that decides under them. */
  readonly from: string | null;
  readonly to: string | null;
  /** Conditions of the rule that now decides which stopped it before, as they are now. */
  readonly now: readonly Omit<Reason, 'n'>[];
  /** Conditions that now stop the rule that decided before. */
  readonly noLonger: readonly Omit<Reason, 'n'>[];
}

/** The same question without suppositions and with them. */
export interface WhatIf {
  readonly before: Answer;
  readonly after: Answer;
  /** What the two answers do not have in common; empty when the suppositions make no difference. */
  readonly differences: readonly Difference[];
  readonly turned: readonly Turned[];
}
