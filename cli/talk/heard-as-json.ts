/** What was heard, as data for scripts. */
import type { Heard as JsonHeard } from '../say/as-json.ts';
import type { Reading } from '../understand/types.ts';

export const nothingHeard: JsonHeard = {
  question: null,
  group: null,
  on: null,
  until: null,
  slots: {},
  supposing: [],
  assumed: [],
};

/** A reading under the fixed keys; for a record the slots are joined by the fields of its entry. */
export const heardAsJson = (reading: Reading, until: string | null = reading.until): JsonHeard => ({
  question: reading.topic,
  group: reading.groups[0] ?? null,
  on: reading.on,
  until,
  slots: { ...reading.slots, ...(reading.entries.length === 1 ? reading.entries[0]?.fields : {}) },
  supposing: reading.supposing.map(({ what, value, unit }) => ({ what, value, unit })),
  assumed: reading.assumed,
  ...(reading.leftOut === undefined ? {} : { leftOut: reading.leftOut }),
});
