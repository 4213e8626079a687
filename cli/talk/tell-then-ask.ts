/** One breath that tells how the place is and asks something of it: the records first, then the answer over them. */
import type { Token } from '../say/tokens.ts';
import type { Heard } from '../understand/types.ts';
import type { Flock } from './flock.ts';
import { leaveByRecord } from './inside.ts';
import { exits, type Memory, type Reply } from './reply.ts';
import { tellReading } from './tell.ts';

const withoutTold = ({ told: _told, ...asked }: Heard): Heard => asked;

/** Where nothing can be written, what was told is supposed for this one answer. */
export const supposeTold = (heard: Heard): Heard => {
  const said = heard.told?.words;
  const told = said === undefined ? [] : [{ what: said, value: said, unit: null, adds: false }];
  const leftOut = heard.told?.reading.leftOut;
  const readings = heard.readings.map((each) => ({
    ...each,
    ...(leftOut === undefined ? {} : { leftOut }),
    supposing: [...told, ...each.supposing],
  }));
  return { ...withoutTold(heard), readings };
};

/** Writes what was told, then answers. What is refused is shown, and the question waits until it has been put right. */
export const tellThenAsk = async (
  flock: Flock,
  heard: Heard,
  memory: Memory,
  ask: (asked: Heard, memory: Memory) => Promise<Reply>,
): Promise<Reply> => {
  const asked = withoutTold(heard);
  if (heard.told === undefined) return ask(asked, memory);
  const { words, reading } = heard.told;
  const written = leaveByRecord(await tellReading(flock, words, heard, reading, memory, true), memory.inside);
  if (written.exit !== exits.answered) {
    const again: Token = { t: 'next', text: 'Put that right, then ask again.' };
    return { ...written, tokens: [...written.tokens, again] };
  }
  const answered = await ask(asked, written.memory);
  const { leftOut } = reading;
  const json =
    leftOut === undefined ? answered.json : { ...answered.json, heard: { ...answered.json.heard, leftOut } };
  return { ...answered, json, tokens: [...written.tokens, ...answered.tokens], record: written.record };
};
