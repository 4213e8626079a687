/** Shows how a line is taken, without answering it or writing anything. */

import { jsonLine } from '../say/json-line.ts';
import { plain } from '../say/plain.ts';
import { hearLine, sayHeard } from '../talk/heard-in-words.ts';
import { exits } from '../talk/reply.ts';
import type { Heard } from '../understand/types.ts';
import { type Command, wrongUse } from './command.ts';
import { linesToAnswer } from './lines.ts';
import { openFlock } from './open.ts';
import * as options from './options.ts';

export const heard: Command = {
  name: 'heard',
  says: 'show how words are understood and why, or one line after the other from standard input; nothing is answered',
  usage: 'penside heard [options] "<words>"',
  options: [options.json, options.on, options.file],
  run: async (given, around) => {
    const lines = await linesToAnswer(given, around);
    if (lines.length === 0) return wrongUse('heard wants words, as: penside heard "can they go out"');
    const opened = await openFlock(given, around, true);
    if ('exit' in opened) return opened;
    const { flock } = opened;
    let before: Heard | null = null;
    const out: string[] = [];
    let exit: number = exits.answered;
    for (const line of lines) {
      const each: Heard = hearLine(flock, line, before);
      before = each;
      if (!each.sure) exit = exits.notUnderstood;
      out.push(
        ...(given.options.json === true ? [jsonLine(each)] : plain(sayHeard(flock.book, each), around.width)),
      );
    }
    return { out, err: [], exit };
  },
};
