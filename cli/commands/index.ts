/** The list of commands; a test reads the folder and holds it against this list. */
import { ask } from './ask.ts';
import { calendar } from './calendar.ts';
import { check } from './check.ts';
import type { Command } from './command.ts';
import { start } from './new.ts';
import { tell } from './tell.ts';

export const commands: readonly Command[] = [ask, tell, calendar, check, start];
