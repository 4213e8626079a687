/** One line of the flock file with those around it, what it moved, and which answers rest on it. */
import { type Context, contextAsJson, sayContext } from '../say/context.ts';
import { jsonLine } from '../say/json-line.ts';
import { plain } from '../say/plain.ts';
import { momentOn, speechFor } from '../talk/flock.ts';
import { exits } from '../talk/reply.ts';
import { type Command, wrongUse } from './command.ts';
import { demoNote, openFlock } from './open.ts';
import * as options from './options.ts';

/** So many lines are shown on either side. */
const reach = 2;

/** The lines beside one, as far as there are any. */
const linesAround = (line: number, count: number): readonly number[] =>
  Array.from({ length: 2 * reach + 1 }, (_, at) => line - reach + at).filter(
    (each) => each !== line && each >= 1 && each <= count,
  );

export const context: Command = {
  name: 'context',
  says: 'show a line of the flock file, those around it, what it moved, and which answers rest on it',
  usage: 'penside context [options] LINE',
  options: [options.json, options.on, options.file],
  run: async (given, around) => {
    const [word = '', ...others] = given.words;
    if (!/^\d{1,9}$/.test(word) || others.length > 0)
      return wrongUse('context wants the number of a line, as: penside context 12');
    const line = Number(word);
    const opened = await openFlock(given, around, true);
    if ('exit' in opened) return opened;
    const { flock, isDemo, path } = opened;
    const engine = flock.engine();
    const { lines } = engine;
    if (line < 1 || line > lines.length)
      return wrongUse(
        `there is no line ${line} in ${isDemo ? 'the demo' : path}; it has ${lines.length}. To find one: penside list entries`,
      );
    const questions = Object.values(flock.book.questions).filter(({ kind }) => kind !== 'about');
    const shown: Context = {
      line,
      lines,
      around: linesAround(line, lines.length),
      entries: new Map(engine.believed().map((entry) => [entry.line, entry])),
      stands: engine.standing().some((entry) => entry.line === line),
      bearing: await engine.audit(null).bearing(
        line,
        questions.map(({ id }) => id),
        momentOn(flock, flock.today),
      ),
    };
    const speech = speechFor(flock);
    const out =
      given.options.json === true
        ? [jsonLine(contextAsJson(speech, shown))]
        : plain(sayContext(speech, shown), around.width);
    return { out, err: isDemo ? [demoNote] : [], exit: exits.answered };
  },
};
