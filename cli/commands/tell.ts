/** Writes records told in plain words. */
import { jsonLine } from '../say/json-line.ts';
import { nothingYet } from '../talk/reply.ts';
import { turn } from '../talk/turn.ts';
import { showTokens } from './ask.ts';
import { type Command, textOf, wrongUse } from './command.ts';
import { linesToAnswer } from './lines.ts';
import { openFlock } from './open.ts';
import * as options from './options.ts';

/** Not a record at all: said so, with nothing written. */
const notARecord = { recorded: null, says: 'That is no record that I know.', asks: null, problems: [] };

export const tell: Command = {
  name: 'tell',
  says: 'write a record told in plain words, or one a line from standard input',
  usage: 'penside tell [options] "<record>"',
  options: [options.json, options.group, options.on, options.file],
  run: async (given, around) => {
    const lines = await linesToAnswer(given, around);
    if (lines.length === 0) return wrongUse('tell wants a record, as: penside tell "fed 25 lb"');
    const opened = await openFlock(given, around, false);
    if ('exit' in opened) return opened;
    const { flock } = opened;
    let memory = nothingYet;
    let exit = 0;
    const out: string[] = [];
    for (const line of lines) {
      const reply = await turn(flock, line, memory, {
        on: flock.today,
        group: textOf(given, 'group') ?? null,
        write: true,
      });
      memory = reply.memory;
      exit = Math.max(exit, reply.exit);
      out.push(
        ...(given.options.json === true
          ? [jsonLine(reply.record ?? notARecord)]
          : showTokens(reply.tokens, around)),
      );
    }
    return { out, err: [], exit };
  },
};
