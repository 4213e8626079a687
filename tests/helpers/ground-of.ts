/** Plain states of birds on grass for tests: a pen of 3 by 4 m and what happened to it. */
import type { Group, PenMove, Setting, State } from '../../engine/types.ts';
import { group, stateOf } from './state-of.ts';

export const setting = (
  what: string,
  value: Setting['value'],
  size: Setting['size'] = null,
): readonly Setting[] => [{ on: '2026-05-02', line: 3, what, value, size, said: String(value) }];

export const pen = setting('pen', 12, [3, 4]);

export const move = (on: string, line: number, given: Partial<PenMove> = {}): PenMove => ({
  on,
  line,
  group: null,
  distance: null,
  strip: null,
  ...given,
});

/** Living out from a day on. */
export const out = (on: string, line = 12, daysOnly = false): Group['whereabouts'][number] => ({
  on,
  line,
  place: 'pen',
  daysOnly,
});

/** On 10 June fifty white birds, forty days old, that went out on 3 June; ground of 240 m² of no known shape. */
export const onGrass = (given: Partial<State> = {}, birds: Partial<Group> = {}): State =>
  stateOf({
    on: '2026-06-10',
    settings: { pen, ground: setting('ground', 240) },
    groups: [group({ whereabouts: [out('2026-06-03')], ...birds })],
    ...given,
  });
