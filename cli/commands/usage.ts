/** Help texts, from the same definitions that read the command line. */
import type { Command, Option } from './command.ts';
import { commands } from './index.ts';
import { environment, exitCodes, forms, freeOptions, help } from './program.ts';

/** Names in a column of their own, what they mean behind them. */
const column = (name: string, width: number, says: string): string =>
  name.length < width ? `${name.padEnd(width)}${says}` : `${name}\n${' '.repeat(width)}${says}`;

const optionLine = ({ name, takes, says }: Option): string =>
  column(`  --${name}${takes === null ? '' : ` ${takes}`}`, 20, says);

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
  ...[...forms, ...commands].map(({ usage: way, says }) => column(way, 33, says)),
  '',
  ...freeOptions.map(optionLine),
  '',
  '  penside COMMAND --help shows the options of a command; penside man is the whole manual.',
  '',
  'Exit codes',
  ...exitCodes.map(({ code, says }) => column(`  ${code}`, 6, says)),
  '',
  'Environment',
  ...environment.map(({ name, says }) => column(`  ${name}`, 22, says)),
];
