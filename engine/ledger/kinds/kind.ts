/** What an entry kind is: its fields, what it does to the state, and what must hold between its fields. */
import type { Entry, Units } from '../../types.ts';
import type { StateDraft } from '../draft.ts';
import type { Field } from '../fields/field.ts';
import type { Finding } from '../finding.ts';

export interface Kind {
  readonly kind: string;
  readonly fields: readonly Field[];
  /** One full line as it stands in the file. */
  readonly example: string;
  /** True when it may be about a day still to come. */
  readonly ahead: boolean;
  /** Whether a broken entry makes only its own group doubtful, or everything of this kind as well. */
  readonly concerns: 'group' | 'flock';
  /** Adds a read entry to the state; masses, lengths and the like in base units. */
  readonly apply: (draft: StateDraft, entry: Entry, units: Units) => void;
  /** What must hold between fields that are each right by themselves. */
  readonly check: (entry: Entry, units: Units) => readonly Finding[];
}

type Given = Pick<Kind, 'kind' | 'fields' | 'example' | 'apply'> & Partial<Kind>;

/** An entry kind; unless said otherwise it is about the flock, about no day ahead, and has no checks of its own. */
export const defineKind = (given: Given): Kind => ({
  ahead: false,
  concerns: 'flock',
  check: () => [],
  ...given,
});
