/** What a line without any word of supposing changes by a bare value: `at two a week?`, `with 2 lamps then`, `now they say 38`. */
import type { Line } from './find/all.ts';
import { likeliestKind, type Placing } from './find/supposable.ts';
import { type FoundSupposing, readValues } from './find/supposing.ts';
import { nothing } from './learn/spoken.ts';
import type { Slot } from './types.ts';

/** How likely a kind of change must be: in a line by itself, and in one that supposes something or goes on with what was asked. */
const likely = { byItself: 0.5, led: 0.15 };

/**
 * What such a line supposes; nothing where the question takes what it says anyway.
 * @param isLed whether the line supposes something, or goes on with the last question, so that what it names is a change
 * @param filled the slots of the line: one that the question takes stands for its fact
 */
export const supposedAlone = (
  line: Line,
  takes: Readonly<Record<string, string>>,
  placing: Placing,
  isLed: boolean,
  filled: Readonly<Record<string, Slot>>,
): readonly FoundSupposing[] => {
  const hasValue = line.spans.some(({ kind }) => !['day', 'time', 'group', 'term', 'stretch'].includes(kind));
  const isTaken = Object.keys(takes).some((name) => typeof filled[name] === 'number');
  if (!hasValue || isTaken) return [];
  const kind = likeliestKind(placing, [nothing]) ?? nothing;
  const chance = placing.likely.chances.get(kind) ?? 0;
  if (chance < (isLed ? likely.led : likely.byItself)) return [];
  const onlyThat = { ...placing, likely: { ...placing.likely, chances: new Map([[kind, chance]]) } };
  // A day only says when.
  const dayless = { ...line, spans: line.spans.filter(({ kind }) => kind !== 'day' && kind !== 'time') };
  return readValues(dayless, { begin: 0, to: line.tokens.length }, onlyThat);
};
