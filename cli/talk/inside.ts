/** Staying inside a what-if: what later questions go on supposing, how that is marked, and how it is left. */
import type { Token } from '../say/tokens.ts';
import type { Heard, Reading, Supposing } from '../understand/types.ts';
import type { Memory, Reply } from './reply.ts';
import { joinSupposing, type Named } from './supposed.ts';

/** A reading with all that the conversation supposes already. */
export const readInside = (reading: Reading, inside: readonly Supposing[]): Reading =>
  inside.length === 0 ? reading : { ...reading, supposing: joinSupposing(inside, reading.supposing) };

/** What is supposed from here on: what was before, and a what-if's own when it is one to stay in. */
export const insideAfter = (
  reading: Reading,
  before: readonly Supposing[],
  taken: readonly Supposing[],
): readonly Supposing[] => (reading.stays === true ? joinSupposing(before, taken) : before);

const wayOut = 'Say "back to real" to leave it.';

/** The mark at the head of an answer that supposes something. */
export const markSupposed = (named: readonly Named[], isInside: boolean): readonly Token[] =>
  named.length === 0
    ? []
    : [
        {
          t: 'heading',
          text: `Supposing ${named.map(({ says }) => says).join(', and ')}; nothing is written`,
        },
        ...(isInside ? [{ t: 'detail', text: `This stays supposed. ${wayOut}` } as const] : []),
      ];

const withoutSupposing = (heard: Heard | null): Heard | null =>
  heard === null
    ? null
    : { ...heard, readings: heard.readings.map((reading) => ({ ...reading, supposing: [] })) };

/** The memory with nothing supposed any more. */
export const leaveInside = (memory: Memory): Memory => ({
  ...memory,
  inside: [],
  heard: withoutSupposing(memory.heard),
  asked: withoutSupposing(memory.asked),
});

/** A record tells how things are: whoever tells one has left the what-if, and is told so. */
export const leaveByRecord = (reply: Reply, inside: readonly Supposing[]): Reply =>
  inside.length === 0 || reply.record === null
    ? reply
    : {
        ...reply,
        tokens: [
          ...reply.tokens,
          { t: 'detail', text: 'Nothing is supposed any more: a record tells how things are.' },
        ],
        memory: leaveInside(reply.memory),
      };
