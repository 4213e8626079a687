/** A terminal without a window: what the program writes is drawn by xterm, and what a person sees can be asked for. */
import { PassThrough, Writable } from 'node:stream';
import { Terminal } from '@xterm/headless';

/** Everything ever drawn, scrolled-off rows first, without trailing spaces; and the cursor in it. */
export interface Seen {
  readonly rows: readonly string[];
  readonly cursor: { readonly row: string; readonly column: number };
}

export interface FakeTerminal {
  readonly stdin: NodeJS.ReadStream;
  readonly stdout: NodeJS.WriteStream;
  /** Sends one chunk, as a key or a paste does. */
  readonly send: (chunk: string | Uint8Array) => void;
  /** The person closes the window. */
  readonly hangUp: () => void;
  readonly resize: (columns: number, rows: number) => void;
  readonly see: () => Seen;
  /** Waits until what is seen satisfies the test; the test runner's own time limit ends a wait in vain. */
  readonly until: (isSo: (seen: Seen) => boolean) => Promise<Seen>;
  /** Waits until some row holds these words. */
  readonly shows: (words: string) => Promise<Seen>;
  /** Waits until these words are on a row above the prompt and the prompt is empty again. */
  readonly answers: (words: string) => Promise<Seen>;
  /** All bytes written so far, escapes included. */
  readonly written: () => string;
  readonly isRaw: () => boolean;
}

const see = (screen: Terminal): Seen => {
  const { active } = screen.buffer;
  const textOf = (row: number): string => (active.getLine(row)?.translateToString(true) ?? '').trimEnd();
  const rows = Array.from({ length: active.length }, (_, row) => textOf(row));
  while (rows.at(-1) === '') rows.pop();
  const cursor = { row: textOf(active.baseY + active.cursorY), column: active.cursorX };
  return { rows, cursor };
};

/** The last Windows console that cut rows off at a narrower window's edge, as other old terminals do, and did not break them. */
const thatCuts = { backend: 'conpty', buildNumber: 21375 } as const;

/** A terminal of this size with nothing on it; `cuts` for one that does not break rows that became too long. */
export const openTerminal = (columns = 80, rows = 24, cuts = false): FakeTerminal => {
  const screen = new Terminal({
    cols: columns,
    rows,
    scrollback: 1000,
    convertEol: true,
    allowProposedApi: true,
    ...(cuts ? { windowsPty: thatCuts } : {}),
  });
  const waiting = new Set<() => void>();
  const chunks: string[] = [];
  const output = new Writable({
    write: (chunk: Buffer, _encoding, done) => {
      chunks.push(chunk.toString());
      screen.write(chunk, () => {
        for (const look of waiting) look();
      });
      done();
    },
  });
  const stdout = Object.assign(output, { isTTY: true, columns, rows }) as unknown as NodeJS.WriteStream;
  let isRaw = false;
  const input = new PassThrough();
  const stdin = Object.assign(input, {
    isTTY: true,
    setRawMode: (raw: boolean) => {
      isRaw = raw;
    },
    ref: () => input,
    unref: () => input,
  }) as unknown as NodeJS.ReadStream;
  const until = (isSo: (seen: Seen) => boolean): Promise<Seen> =>
    new Promise((resolve) => {
      const look = (): void => {
        const seen = see(screen);
        if (!isSo(seen)) return;
        waiting.delete(look);
        resolve(seen);
      };
      waiting.add(look);
      look();
    });
  return {
    stdin,
    stdout,
    send: (chunk) => {
      input.write(chunk);
    },
    hangUp: () => {
      input.end();
    },
    resize: (nextColumns, nextRows) => {
      screen.resize(nextColumns, nextRows);
      Object.assign(output, { columns: nextColumns, rows: nextRows });
      output.emit('resize');
    },
    see: () => see(screen),
    until,
    shows: (words) => until((seen) => seen.rows.some((row) => row.includes(words))),
    answers: (words) =>
      until(
        ({ rows, cursor }) => cursor.row === 'say:' && rows.slice(0, -1).some((row) => row.includes(words)),
      ),
    written: () => chunks.join(''),
    isRaw: () => isRaw,
  };
};
