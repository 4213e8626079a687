/** The manual page, for `man` or as data. */
import { jsonLine } from '../say/json-line.ts';
import { exits } from '../talk/reply.ts';
import { type Command, wrongUse } from './command.ts';
import * as options from './options.ts';

export const man: Command = {
  name: 'man',
  says: 'print the manual page, as: penside man > penside.1 && man ./penside.1',
  usage: 'penside man [options]',
  options: [options.json],
  run: async (given) => {
    if (given.words.length > 0) return wrongUse('man wants no words, as: penside man > penside.1');
    // Loaded when it is wanted, since it needs the list of commands that this one is in.
    const { manualPage } = await import('./manual-page.ts');
    const page = manualPage();
    const out =
      given.options.json === true ? [jsonLine({ format: 'roff', text: `${page.join('\n')}\n` })] : page;
    return { out, err: [], exit: exits.answered };
  },
};
