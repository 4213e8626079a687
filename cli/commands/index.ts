/** The list of commands; a test reads the folder and holds it against this list. */
import { ask } from './ask.ts';
import { audit } from './audit.ts';
import { calendar } from './calendar.ts';
import { check } from './check.ts';
import type { Command } from './command.ts';
import { figures } from './figures.ts';
import { heard } from './heard.ts';
import { start } from './new.ts';
import { rules } from './rules.ts';
import { sheet } from './sheet.ts';
import { tell } from './tell.ts';
import { weather } from './weather.ts';

export const commands: readonly Command[] = [
  ask,
  tell,
  calendar,
  weather,
  check,
  audit,
  rules,
  figures,
  sheet,
  heard,
  start,
];
