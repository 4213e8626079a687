/** Help texts, from the same definitions that read the command line. */

import type { Command, Option } from './command.ts';
import { commands } from './index.ts';

const optionLine = ({ name, takes, says }: Option): string =>
  `  ${`--${name}${takes === null ? '' : ` ${takes}`}`.padEnd(16)}${says}`;

const help: Option = { name: 'help', takes: null, says: 'this text' };

/** The help of one command. */
export const usageOf = (command: Command): readonly string[] => [
  command.usage,
  '',
  `  ${command.says}`,
  '',
  ...[...command.options, help].map(optionLine),
];

/** The help of the whole program. */
export const usage = (): readonly string[] => [
  "penside                          chat, or without a terminal today's round",
  'penside "<question or record>"   answer a question; write a record once it is complete',
  ...commands.map((command) => `${command.usage.padEnd(33)}${command.says}`),
  '',
  '  penside COMMAND --help shows the options of a command.',
  '  Exit codes: 0 answered or recorded, 1 problems, 2 not understood, 3 cannot say yet, 64 wrong use.',
];
