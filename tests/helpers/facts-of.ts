/** Facts of a ledger on a day, through the engine's own door, each worked out once. */
import { allFacts } from '../../engine/facts/index.ts';
import { openWorkings } from '../../engine/facts/workings.ts';
import { openText } from '../../engine/index.ts';
import type { Value } from '../../engine/types.ts';
import { shipped } from './flock-of.ts';

/** Reads facts in base units; null when unknown. */
export const factsOf = (ledger: {
  readonly text: string;
  readonly on: string;
}): ((id: string, group?: string | null) => Value | null) => {
  const { on, text } = ledger;
  const state = openText(shipped, 'flock.jsonl', text).state({ on, asOf: null, lines: null });
  const workings = openWorkings({ state, book: shipped, facts: allFacts, on, until: null, supposing: [] });
  return (id, group = null) => workings.step(id, group).value;
};
