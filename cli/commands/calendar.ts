/** The key dates of all groups as an iCalendar file. */
import { calendarBegins } from '../say/icalendar.ts';
import { jsonLine } from '../say/json-line.ts';
import { renewFile } from '../surroundings.ts';
import { calendarOf } from '../talk/calendar.ts';
import { momentOn } from '../talk/flock.ts';
import { exits } from '../talk/reply.ts';
import { type Command, textOf, wrongUse } from './command.ts';
import { demoNote, openFlock } from './open.ts';
import * as options from './options.ts';

export const calendar: Command = {
  name: 'calendar',
  says: 'write the key dates of all groups as an iCalendar file',
  usage: 'penside calendar [options]',
  options: [
    { name: 'out', takes: 'FILE', says: 'the file to write, else standard output' },
    options.json,
    options.group,
    options.on,
    options.asOf,
    options.file,
  ],
  run: async (given, around) => {
    const opened = await openFlock(given, around, true);
    if ('exit' in opened) return opened;
    const { flock, isDemo } = opened;
    const group = textOf(given, 'group');
    const { groups } = flock.engine().state(momentOn(flock, flock.today));
    if (group !== undefined && !groups.some(({ name }) => name === group))
      return wrongUse(`there is no group called ${group}`);
    const made = new Date(around.now).toISOString();
    const { text, events, dates } = await calendarOf(flock, group === undefined ? [] : [group], made);
    const err = isDemo ? [demoNote] : [];
    const out = textOf(given, 'out');
    if (out === undefined && given.options.json === true)
      return { out: events.map((event) => jsonLine(event)), err, exit: exits.answered };
    // What is written out gets its last line end there.
    if (out === undefined) return { out: [text.replace(/\n$/, '')], err, exit: exits.answered };
    const failed = renewFile(out, text, calendarBegins);
    const done =
      given.options.json === true ? jsonLine({ file: out, dates }) : `${dates} dates are in ${out}`;
    if (failed === null) return { out: [done], err, exit: exits.answered };
    const why =
      failed === 'EEXIST'
        ? `${out} is there already and is no calendar; nothing was touched. Name another: --out FILE`
        : `${out} could not be written (${failed}). Name a file in a folder that may be written to: --out FILE`;
    return { out: [], err: [...err, why], exit: exits.problems };
  },
};
