/** Runs the built program as a shell would, with its own flock file and clock. */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

export const programPath = fileURLToPath(new URL('../../dist/penside.cjs', import.meta.url));

export interface Run {
  readonly out: string;
  readonly err: string;
  readonly exit: number | null;
}

export interface Setting {
  readonly file?: string;
  /** The day that the program takes as today. */
  readonly today?: string;
  /** The time of that day; seven in the morning unless said. */
  readonly hour?: string;
  readonly input?: string;
  readonly env?: Readonly<Record<string, string>>;
}

/** Runs `penside` with these arguments; without `input` its standard input is empty. */
export const penside = (
  args: readonly string[],
  { file, today, hour = '07:00', input, env }: Setting = {},
): Run => {
  const { stdout, stderr, status } = spawnSync(process.execPath, [programPath, ...args], {
    encoding: 'utf8',
    input: input ?? '',
    env: {
      PATH: process.env.PATH ?? '',
      HOME: '/nonexistent',
      PENSIDE_BY: 'Nell',
      // A test that wants the advice log sets this and a data folder of its own.
      PENSIDE_LOG: 'no',
      ...(file === undefined ? {} : { PENSIDE_FILE: file }),
      ...(today === undefined ? {} : { PENSIDE_NOW: `${today}T${hour}:00+00:00` }),
      ...env,
    },
  });
  return { out: stdout, err: stderr, exit: status };
};

/** The lines of a run's output as JSON, one object a line. */
export const jsonLines = (run: Run): readonly Record<string, unknown>[] =>
  run.out
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => JSON.parse(line));
