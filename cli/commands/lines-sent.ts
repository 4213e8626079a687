/** The lines that were sent in the chat, kept for their keeper alone from one run to the next. */
import { join } from 'node:path';
import { keepText, readKept, type Surroundings } from '../surroundings.ts';

/** Enough for a season of asking, and read in no time. */
const most = 1000;

const fileIn = ({ stateFolder }: Surroundings): string => join(stateFolder, 'history');

/** Lines sent on earlier days, oldest first; none where the file cannot be read. */
export const linesSent = (around: Surroundings): readonly string[] =>
  (readKept(fileIn(around)) ?? '').split('\n').filter((line) => line !== '');

/** Keeps a line, unless nothing is to be written. The file is read anew, since a second chat may be writing too; a line sent twice running is kept once. */
export const keepLine = (around: Surroundings, words: string): void => {
  if (around.isReadOnly) return;
  const line = words.replace(/\s+/g, ' ').trim();
  const before = linesSent(around);
  if (line === '' || before.at(-1) === line) return;
  keepText(fileIn(around), `${[...before, line].slice(-most).join('\n')}\n`);
};
