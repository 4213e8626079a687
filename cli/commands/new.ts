/** Starts the keeper's own flock file, empty or as a copy of the demo. */
import { demoLedger } from '../demo/demo.ts';
import { createFile } from '../surroundings.ts';
import { type Command, textOf } from './command.ts';
import * as options from './options.ts';
import { daysOf } from './options.ts';

export const start: Command = {
  name: 'new',
  says: 'start your own flock file, empty or with --demo as a copy of the demo',
  usage: 'penside new [options]',
  options: [{ name: 'demo', takes: null, says: 'fill it with the demo flock' }, options.on, options.file],
  run: async (given, around) => {
    const days = daysOf(given, around);
    if ('exit' in days) return days;
    const path = textOf(given, 'file') ?? around.flockFile;
    const made = createFile(path, given.options.demo === true ? demoLedger(days.on) : '');
    if (made !== null) {
      const says =
        made === 'EEXIST'
          ? `${path} is there already; nothing was touched`
          : `${path} could not be made (${made})`;
      return { out: [], err: [says], exit: 1 };
    }
    return {
      out: [
        `Your flock file is ${path}`,
        'Tell it what came, as: penside tell "50 whites hatched tuesday came this morning, 1 dead"',
      ],
      err: [],
      exit: 0,
    };
  },
};
