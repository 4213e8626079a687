/** Answers questions from the command line or from standard input; writes nothing. */
import { toAscii } from '../say/ascii.ts';
import { jsonLine } from '../say/json-line.ts';
import { plain } from '../say/plain.ts';
import type { Surroundings } from '../surroundings.ts';
import { nothingYet, type Reply } from '../talk/reply.ts';
import { turn } from '../talk/turn.ts';
import { type Command, type Given, type Outcome, textOf, wrongUse } from './command.ts';
import { linesToAnswer } from './lines.ts';
import { demoNote, openFlock } from './open.ts';
import * as options from './options.ts';

/** Answers each line in order, each knowing what was said before it. */
export const converse = async (
  given: Given,
  around: Surroundings,
  lines: readonly string[],
  write: boolean,
  show: (reply: Reply) => readonly string[],
): Promise<Outcome> => {
  const opened = await openFlock(given, around, true);
  if ('exit' in opened) return opened;
  const { flock, isDemo } = opened;
  const group = textOf(given, 'group') ?? null;
  const names = flock
    .engine()
    .state({ on: flock.today, asOf: flock.asOf, lines: null })
    .groups.map((each) => each.name);
  if (group !== null && !names.includes(group)) {
    return wrongUse(
      `there is no group called ${group}${names.length > 0 ? `; there are ${names.join(', ')}` : ''}`,
    );
  }
  // A script has the reference in its output, and `ask` promises to write nothing.
  const notes = write && given.options.json !== true;
  let memory = nothingYet;
  const out: string[] = [];
  let exit = 0;
  for (const line of lines) {
    const reply = await turn(flock, line, memory, { on: flock.today, group, write, notes });
    memory = reply.memory;
    out.push(...show(reply));
    exit = Math.max(exit, reply.exit);
  }
  return { out, err: isDemo ? [demoNote] : [], exit };
};

/** Tokens as rows of plain text, in ASCII where the locale has nothing else. */
export const showTokens = (tokens: Reply['tokens'], { width, isAscii }: Surroundings): readonly string[] =>
  isAscii ? plain(tokens, width).map(toAscii) : plain(tokens, width);

/** A reply as JSON on one line, or as plain text. */
export const showReply =
  (given: Given, around: Surroundings) =>
  (reply: Reply): readonly string[] =>
    given.options.json === true ? [jsonLine(reply.json)] : showTokens(reply.tokens, around);

export const ask: Command = {
  name: 'ask',
  says: 'answer a question, or one a line from standard input; a record is read back and not written',
  usage: 'penside ask [options] "<question>"',
  options: [options.json, options.group, options.on, options.asOf, options.file],
  run: async (given, around) => {
    const lines = await linesToAnswer(given, around);
    if (lines.length === 0) return wrongUse('ask wants a question, as: penside ask "can they go out"');
    return converse(given, around, lines, false, showReply(given, around));
  },
};
