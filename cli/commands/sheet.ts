/** A sheet for a helper, to be printed: today's round, or the answer to a question. */
import { jsonLine } from '../say/json-line.ts';
import { plain } from '../say/plain.ts';
import { saySheet } from '../say/sheet.ts';
import { speechFor } from '../talk/flock.ts';
import { exits, nothingYet } from '../talk/reply.ts';
import { birdsIn, isSupposed } from '../talk/sheet.ts';
import { turn } from '../talk/turn.ts';
import { type Command, textOf, wrongUse } from './command.ts';
import { openFlock } from './open.ts';
import * as options from './options.ts';

/** What fits on a printed page in a letter that can be read at arm's length. */
const printed = 72;

export const sheet: Command = {
  name: 'sheet',
  says: "print today's round, or the answer to a question, for a helper who knows nothing",
  usage: 'penside sheet [options] [today | "<question>"]',
  words: ['today'],
  options: [options.json, options.group, options.on, options.asOf, options.file],
  run: async (given, around) => {
    const opened = await openFlock(given, around, true);
    if ('exit' in opened) return opened;
    const { flock } = opened;
    const words = given.words.join(' ');
    const asked = words === '' || words === 'today' ? 'what needs doing today' : words;
    const manner = { on: flock.today, group: textOf(given, 'group') ?? null, write: false };
    const { memory, tokens, exit, json } = await turn(flock, asked, nothingYet, manner);
    const { answer } = memory;
    if (answer === null)
      return exit === exits.answered
        ? wrongUse('sheet wants a question that has an answer, as: penside sheet "how much feed"')
        : { out: [], err: plain(tokens, around.width), exit };
    // For scripts it is the answer that the sheet is made from.
    if (given.options.json === true) return { out: [jsonLine(json)], err: [], exit };
    const out = plain(
      saySheet(speechFor(flock), answer, birdsIn(flock, answer), isSupposed(memory)),
      printed,
    );
    return { out, err: [], exit: exits.answered };
  },
};
