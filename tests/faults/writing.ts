/** Bundles the writer once, so that a child begins in a tenth of the time, and starts it. */
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { buildSync } from 'esbuild';

export interface Desk {
  readonly folder: string;
  readonly path: string;
  /** Starts a writer of so many notes; `acknowledged` grows as it says that they stand. */
  write(name: string, first: number, count: number, circumstances?: Circumstances): Writing;
  close(): void;
}

export interface Writing {
  readonly child: ChildProcess;
  /** Numbers of the notes that it said to stand. */
  readonly acknowledged: number[];
  /** Codes and causes for which it wrote nothing and gave up. */
  readonly refused: string[];
  /** Exit code, null when killed. */
  readonly ended: Promise<number | null>;
}

/** How a writer is started other than as the one who runs the tests, with all the room there is. */
export interface Circumstances {
  /** Most bytes of any file, in steps of 1024: what a full disk does, without one. */
  readonly mostKilobytes?: number;
  /** Whether it runs as nobody: the rights of files are nothing to an administrator. */
  readonly asNobody?: boolean;
}

const nobody = 65_534;

const begin = (
  program: string,
  args: readonly string[],
  { mostKilobytes, asNobody = false }: Circumstances,
): Writing => {
  // An ignored signal stays ignored: writing beyond the limit is then an error instead of the end.
  const limit = mostKilobytes === undefined ? '' : `trap '' XFSZ; ulimit -f ${mostKilobytes}; `;
  const child = spawn('bash', ['-c', `${limit}exec "$0" "$@"`, process.execPath, program, ...args], {
    stdio: ['ignore', 'pipe', 'inherit'],
    ...(asNobody && process.getuid?.() === 0 ? { uid: nobody, gid: nobody } : {}),
  });
  const acknowledged: number[] = [];
  const refused: string[] = [];
  let rest = '';
  child.stdout?.setEncoding('utf8').on('data', (text: string) => {
    const lines = `${rest}${text}`.split('\n');
    rest = lines.pop() ?? '';
    for (const line of lines) {
      if (/^\d+$/.test(line)) acknowledged.push(Number(line));
      else refused.push(line);
    }
  });
  // `close` comes after the last of what it said.
  const ended = new Promise<number | null>((resolve) => child.on('close', resolve));
  return { child, acknowledged, refused, ended };
};

/** A folder with a state file and a writer for it. */
export const openDesk = (): Desk => {
  const folder = mkdtempSync(join(tmpdir(), 'penside-'));
  const path = join(folder, 'flock.jsonl');
  const program = join(folder, 'writer.mjs');
  buildSync({
    entryPoints: [fileURLToPath(new URL('./writer.ts', import.meta.url))],
    outfile: program,
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    logLevel: 'error',
  });
  return {
    folder,
    path,
    write: (name, first, count, circumstances = {}) =>
      begin(program, [path, name, String(first), String(count)], circumstances),
    close: () => rmSync(folder, { recursive: true, force: true }),
  };
};
