/** Help texts, from the same definitions that read the command line. */

import { exits } from '../talk/reply.ts';
import type { Command, Option } from './command.ts';
import { commands } from './index.ts';

const optionLine = ({ name, takes, says }: Option): string =>
  `  ${`--${name}${takes === null ? '' : ` ${takes}`}`.padEnd(16)}${says}`;

/** What each exit code means; of several lines answered, the highest counts. */
const exitCodes: readonly { readonly code: number; readonly says: string }[] = [
  { code: exits.answered, says: 'answered, recorded, or nothing wrong' },
  { code: exits.problems, says: 'problems: in the file or the rules, or nothing could be written' },
  { code: exits.notUnderstood, says: 'not understood, or more than one thing may be meant' },
  { code: exits.cannotSay, says: 'cannot say yet: something is missing' },
  { code: exits.wrongUse, says: 'wrong use of the command line' },
];

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
  '',
  'Exit codes',
  ...exitCodes.map(({ code, says }) => `  ${String(code).padEnd(4)}${says}`),
];
