/** Any list of what is on record, as comma-separated values for a spreadsheet. */
import { sayCsv } from '../say/csv.ts';
import { jsonLine } from '../say/json-line.ts';
import { lists, rowsOf } from '../talk/lists.ts';
import { exits } from '../talk/reply.ts';
import { type Command, wrongUse } from './command.ts';
import { demoNote, openFlock } from './open.ts';
import * as options from './options.ts';

const names = lists.map(({ name }) => name);

export const list: Command = {
  name: 'list',
  says: `print a list as CSV: ${names.join(', ')}`,
  usage: 'penside list [options] LIST',
  words: names,
  options: [options.json, options.on, options.file],
  run: async (given, around) => {
    const [word = '', ...others] = given.words;
    const wanted = lists.find(({ name }) => name === word);
    if (wanted === undefined || others.length > 0)
      return wrongUse(`list wants the name of one list: ${names.join(', ')}`);
    const opened = await openFlock(given, around, true);
    if ('exit' in opened) return opened;
    const { flock, isDemo } = opened;
    const rows = rowsOf(flock, wanted);
    const out = given.options.json === true ? rows.map(jsonLine) : sayCsv(wanted.columns, rows);
    return { out, err: isDemo ? [demoNote] : [], exit: exits.answered };
  },
};
