/** Settings for plain states of facts' tests, each told once. */
import type { Setting, Value } from '../../engine/types.ts';

/** Settings by name, in base units, told on a day. */
export const setTo = (
  values: Readonly<Record<string, Value>>,
  on = '2026-05-02',
): Record<string, readonly Setting[]> =>
  Object.fromEntries(
    Object.entries(values).map(([what, value]) => [
      what,
      [{ on, line: 2, what, value, size: null, said: String(value) }],
    ]),
  );
