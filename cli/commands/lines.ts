/** What is to be answered: the words of the command line, or the lines of standard input when there are none. */
import { text } from 'node:stream/consumers';
import type { Surroundings } from '../surroundings.ts';
import type { Given } from './command.ts';

export const linesToAnswer = async (given: Given, around: Surroundings): Promise<readonly string[]> => {
  if (given.words.length > 0) return [given.words.join(' ')];
  if (around.stdin.isTTY) return [];
  return (await text(around.stdin)).split(/\r?\n/).filter((line) => line.trim() !== '');
};
