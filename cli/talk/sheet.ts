/** The last answer, or today's round, as a sheet for a helper. */
import type { Answer } from '../../engine/types.ts';
import { type Birds, saySheet } from '../say/sheet.ts';
import type { Reading } from '../understand/types.ts';
import { type Flock, momentOn, speechFor } from './flock.ts';
import { exits, type Memory, type Reply } from './reply.ts';
import { sayOnly } from './say-only.ts';

/** The question whose answer is the day's round. */
const round = 'today';

/** The groups that an answer speaks of, as they are on its day; all that are alive for an answer about the flock. */
export const birdsIn = (flock: Flock, answer: Answer): readonly Birds[] => {
  const { moment } = answer.request;
  const engine = flock.engine();
  const named = answer.parts.flatMap(({ group, steps }) => [group, ...steps.map((step) => step.group)]);
  const groups = named.filter((each) => each !== null);
  return engine
    .state(moment)
    .groups.filter(
      ({ name, arrived }) => arrived <= moment.on && (groups.length === 0 || groups.includes(name)),
    )
    .map(({ name }) => ({
      name,
      alive: Number(engine.fact('alive', name, moment) ?? 0),
      age: Number(engine.fact('age', name, moment) ?? 0),
      place: String(engine.fact('place', name, moment) ?? ''),
    }))
    .filter(({ alive }) => alive > 0);
};

/** Whether the last question was a what-if, or was asked inside one. */
export const isSupposed = ({ heard, inside }: Memory): boolean =>
  inside.length > 0 || (heard?.readings[0]?.supposing.length ?? 0) > 0;

/** The sheet for a reading: of another day's round where it names a day, else of the answer before, else of today's round. */
export const answerSheet = async (
  flock: Flock,
  words: string,
  reading: Reading,
  memory: Memory,
  on: string,
): Promise<Reply> => {
  const isLast = memory.answer !== null && reading.on === null;
  const answer =
    isLast && memory.answer !== null
      ? memory.answer
      : await flock.engine().ask({
          question: round,
          groups: reading.groups,
          moment: momentOn(flock, reading.on ?? on),
          until: null,
          supposing: [],
        });
  const speech = speechFor(flock);
  const tokens = saySheet(speech, answer, birdsIn(flock, answer), isLast && isSupposed(memory));
  return sayOnly({ words, reading, memory: { ...memory, answer } }, tokens, exits.answered);
};
