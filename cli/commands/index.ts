/** The list of commands; a test reads the folder and holds it against this list. */
import { ask } from './ask.ts';
import { audit } from './audit.ts';
import { backup } from './backup.ts';
import { calendar } from './calendar.ts';
import { check } from './check.ts';
import type { Command } from './command.ts';
import { completions } from './completions.ts';
import { context } from './context.ts';
import { figures } from './figures.ts';
import { heard } from './heard.ts';
import { list } from './list.ts';
import { man } from './man.ts';
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
  context,
  rules,
  figures,
  sheet,
  list,
  backup,
  heard,
  start,
  man,
  completions,
];
