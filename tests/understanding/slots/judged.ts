/** What comes of one slot: taken right, asked for, lost without a word, or taken wrong. */

/** Worst last. `asked` is asked for before anything is written; `lost` is neither taken nor asked for. */
export const outcomes = ['right', 'asked', 'lost', 'wrong'] as const;
export type SlotOutcome = (typeof outcomes)[number];

export interface Fault {
  readonly slot: string;
  readonly outcome: SlotOutcome;
  readonly wanted: string;
  readonly found: string;
}

const rank = (outcome: SlotOutcome): number => outcomes.indexOf(outcome);

/** The worst of some faults; right where there are none. */
export const worstOf = (faults: readonly Fault[]): SlotOutcome =>
  faults.reduce<SlotOutcome>(
    (worst, { outcome }) => (rank(outcome) > rank(worst) ? outcome : worst),
    'right',
  );

const shown = (value: unknown): string =>
  typeof value === 'string' ? value : (JSON.stringify(value) ?? '-');

/** Holds a field against what is wanted; `isSame` says whether a value that is there is the one. */
export const judge = (
  slot: string,
  wanted: unknown,
  found: unknown,
  missing: readonly string[],
  isSame: (found: unknown) => boolean,
): readonly Fault[] => {
  const fault = (outcome: SlotOutcome): readonly Fault[] => [
    { slot, outcome, wanted: shown(wanted), found: shown(found) },
  ];
  if (found === undefined || found === null) return fault(missing.includes(slot) ? 'asked' : 'lost');
  return isSame(found) ? [] : fault('wrong');
};

/** A value that nobody said. */
export const invented = (slot: string, found: unknown): readonly Fault[] => [
  { slot, outcome: 'wrong', wanted: 'nothing', found: shown(found) },
];
