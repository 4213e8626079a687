/** Plays the commands of a written shell transcript with the built program, and writes down what came back. */
import { spawnSync } from 'node:child_process';
import { chmodSync, existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { programPath } from './program.ts';

const typed = '$ ';

/** Whether a transcript is one of a shell: its head says `shell: sh`. */
export const isShell = (text: string): boolean => /^shell: sh$/m.test(text.slice(0, text.indexOf('\n\n')));

/**
 * Plays the lines that begin with `$ ` by `sh`, each in the same folder, with `penside` on the path and the clock set by
 * `today:` in the head. What goes to standard error stands behind `! `; an exit code other than 0 is written last.
 */
export const playShell = (text: string): string => {
  // Renewed without it, a transcript would come to say that the program is missing.
  if (!existsSync(programPath)) throw new Error(`there is no ${programPath}; build it first`);
  const lines = text.split('\n');
  const head = lines.slice(0, lines.indexOf(''));
  const today = head.find((line) => line.startsWith('today: '))?.slice('today: '.length) ?? '';
  const folder = mkdtempSync(join(tmpdir(), 'penside-'));
  try {
    const bin = join(folder, 'bin');
    const program = join(bin, 'penside');
    mkdirSync(bin);
    writeFileSync(program, `#!/bin/sh\nexec "${process.execPath}" "${programPath}" "$@"\n`);
    chmodSync(program, 0o755);
    const env = {
      PATH: `${bin}:${process.env.PATH ?? ''}`,
      HOME: folder,
      XDG_DATA_HOME: join(folder, 'data'),
      PENSIDE_LOG: 'no',
      PENSIDE_BY: 'Nell',
      PENSIDE_NOW: `${today}T07:00:00+00:00`,
    };
    const played = lines
      .filter((line) => line.startsWith(typed))
      .flatMap((line) => {
        const { stdout, stderr, status } = spawnSync('sh', ['-c', line.slice(typed.length)], {
          encoding: 'utf8',
          cwd: folder,
          env,
        });
        const rows = (out: string): readonly string[] => out.replaceAll(folder, '~').split('\n').slice(0, -1);
        const exit = status === 0 ? [] : [`exit ${status}`];
        return ['', line, ...rows(stdout), ...rows(stderr).map((row) => `! ${row}`), ...exit];
      });
    return `${[...head, ...played].join('\n')}\n`;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};
