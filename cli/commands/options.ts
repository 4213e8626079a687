/** Options that several commands share, and how they are read. */
import { type Day, isDay } from '../../engine/day.ts';
import type { Surroundings } from '../surroundings.ts';
import { type Given, type Option, type Outcome, textOf, wrongUse } from './command.ts';

export const json: Option = {
  name: 'json',
  takes: null,
  says: 'one JSON object on one line for each line asked',
};
export const file: Option = {
  name: 'file',
  takes: 'PATH',
  says: 'the flock file (else PENSIDE_FILE, else the user data folder)',
};
export const on: Option = { name: 'on', takes: 'DATE', says: 'the day to take as today, as 2026-05-14' };
export const asOf: Option = {
  name: 'as-of',
  takes: 'DATE',
  says: 'believe only what had been written by that day',
};
export const group: Option = {
  name: 'group',
  takes: 'NAME',
  says: 'the group meant when the words name none',
};

export const own: Option = { name: 'own', takes: null, says: 'only those that you have set yourself' };

export interface Days {
  readonly on: Day;
  readonly asOf: Day | null;
}

/** The day to take as today and the day up to which the ledger is believed, or what is wrong with them. */
export const daysOf = (given: Given, around: Surroundings): Days | Outcome => {
  const today = textOf(given, 'on') ?? around.today;
  const believed = textOf(given, 'as-of') ?? null;
  for (const [name, day] of [
    ['--on', today],
    ['--as-of', believed],
  ] as const) {
    if (day !== null && !isDay(day)) return wrongUse(`${name} wants a day as 2026-05-14, not ${day}`);
  }
  return { on: today, asOf: believed };
};
