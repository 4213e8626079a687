/** How much the tests of faults try: little in every run, all of it with FAULTS=full; and where they tell what was lost. */
import { appendFileSync } from 'node:fs';

const { FAULTS, FAULTS_TABLE, FAULTS_SHARE } = process.env;

/** Whether everything is tried, and time is measured: a bounded run beside other tests can measure none. */
export const isFull = FAULTS === 'full';

/** How often something is tried. `FAULTS_SHARE` (of 1) makes a full run smaller, for trying the run itself out. */
export const often = (bounded: number, full: number): number =>
  isFull ? Math.max(bounded, Math.round(full * Number(FAULTS_SHARE ?? '1'))) : bounded;

/** How long one test may take, in milliseconds. */
export const patience = isFull ? 4 * 3600 * 1000 : 30_000;

/** One row of the table: what was tried, how often, and what was lost by it. */
export interface Tried {
  readonly what: string;
  readonly times: number;
  readonly lost: number;
  readonly note?: string;
}

/** Tells the table what was tried; where no table is wanted, nothing happens. */
export const tell = (row: Tried): void => {
  if (FAULTS_TABLE !== undefined) appendFileSync(FAULTS_TABLE, `${JSON.stringify(row)}\n`);
};
