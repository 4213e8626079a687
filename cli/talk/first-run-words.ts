/** The words of the first run: a question of it, the same once more, and what is said at its end. */
import type { FirstStep } from '../../engine/types.ts';
import { askField } from '../say/record.ts';
import type { Token } from '../say/tokens.ts';
import type { Asking } from '../understand/types.ts';
import { type Flock, speechFor } from './flock.ts';
import type { Reply } from './reply.ts';

/** An answer to a step as this keeper may type it. */
export const exampleFor = (flock: Flock, { example, metric }: FirstStep): string =>
  speechFor(flock).system === 'metric' ? (metric ?? example) : example;

/** A question and an answer to it. */
export const sayStep = (flock: Flock, step: FirstStep): readonly Token[] => [
  { t: 'claim', text: step.ask },
  { t: 'detail', text: `Such as "${exampleFor(flock, step)}".` },
];

/** Said once, before the first question: at each of them it would only be in the way. */
export const waysThrough: Token = {
  t: 'detail',
  text: 'A few questions first. An empty line skips one, "back" goes back, "stop" leaves off.',
};

/** What is said when all has been asked. */
export const sayEnd = (flock: Flock): readonly Token[] => {
  const ends = flock.book.firstRun?.ends;
  const hasBirds = flock
    .engine()
    .standing()
    .some(({ kind }) => kind === 'arrive');
  return ends === undefined ? [] : [{ t: 'next', text: hasBirds ? ends.birds : ends.none }];
};

/** The field of a step's own record that is being asked; null where the step itself is. */
const fieldOf = (step: FirstStep, asking: Asking | null): string | null =>
  asking !== null && 'record' in step && Object.keys(asking.draft.fields).length > 0 ? asking.field : null;

/** The step once more, after a line that was no answer to it; inside a record, the field that was being asked. */
export const askAgain = (flock: Flock, step: FirstStep, asking: Asking | null): readonly Token[] => {
  const field = fieldOf(step, asking);
  const ask =
    field === null || asking === null ? step.ask : askField(speechFor(flock), asking.draft.kind, field);
  return [{ t: 'detail', text: `Still to say: ${ask}` }];
};

/** How to go on without an answer; said again to one whose line was none. */
const waysOn = 'An empty line skips it.';

/** A line that was no answer is named, and an answer shown; a danger that was spoken of is minded first. */
export const sayLost = (
  flock: Flock,
  step: FirstStep,
  words: string,
  { tokens }: Reply,
  asking: Asking | null,
): readonly Token[] => [
  ...tokens.filter(({ t }) => t === 'caution'),
  { t: 'claim', text: `"${words.trim()}" is no answer to that.` },
  ...askAgain(flock, step, asking),
  ...(fieldOf(step, asking) === null
    ? [{ t: 'detail', text: `Such as "${exampleFor(flock, step)}". ${waysOn}` } as const]
    : []),
];
