/** One dated copy of the flock's files in a folder, and how to go back to it. */
import { dirname, resolve } from 'node:path';
import { jsonLine } from '../say/json-line.ts';
import { type NoCopy, takeCopy } from '../take-copy.ts';
import { exits } from '../talk/reply.ts';
import { type Command, type Outcome, textOf, wrongUse } from './command.ts';
import * as options from './options.ts';

const noCopy = ({ failed, path }: NoCopy): Outcome => {
  const says =
    failed === 'no-flock'
      ? `There is no flock file at ${path}, so there is nothing to copy. To start one: penside new`
      : failed === 'not-the-same'
        ? `Nothing was copied: what was written of ${path} does not read back as it was. Try another folder or disk.`
        : `Nothing was copied (${failed} at ${path}). Name a folder that may be written to and has room: penside backup FOLDER`;
  return { out: [], err: [says], exit: exits.problems };
};

export const backup: Command = {
  name: 'backup',
  says: 'put one dated copy of the flock file, your own rules and the log of advice into a folder',
  usage: 'penside backup [options] [FOLDER]',
  options: [options.json, options.file],
  run: async (given, around) => {
    const [named, ...others] = given.words;
    if (others.length > 0) return wrongUse('backup wants one folder, as: penside backup /media/stick');
    if (named === undefined && around.isReadOnly)
      return {
        out: [],
        err: [
          'Nothing is copied, as PENSIDE_READ_ONLY is set here. Name the folder that it may go to: penside backup FOLDER',
        ],
        exit: exits.problems,
      };
    const flockFile = resolve(textOf(given, 'file') ?? around.flockFile);
    const copy = takeCopy(flockFile, resolve(named ?? around.copiesFolder), around.today);
    if ('failed' in copy) return noCopy(copy);
    const { folder, files, leftOut } = copy;
    const err = leftOut.map((each) => `${each} is no plain file and was left out.`);
    const out =
      given.options.json === true
        ? [jsonLine({ folder, files, 'left-out': leftOut, 'goes-back-to': dirname(flockFile) })]
        : [
            `Copied and read back: ${files.join(', ')}, in ${folder}`,
            `To go back to it, copy everything in that folder to ${dirname(flockFile)}`,
          ];
    return { out, err, exit: exits.answered };
  },
};
