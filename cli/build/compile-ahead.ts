/** Runs the built program once in a process of its own and keeps the code that Node compiled for it: `tsx compile-ahead.ts FOLDER WAY`. */
import { writeFileSync } from 'node:fs';
import { PassThrough } from 'node:stream';
import { compiledFile, startProgram, type Way } from '../start-program.ts';

/** A terminal as far as the chat looks at it; nobody sits before it. */
const noOnesTerminal = (): PassThrough => {
  const terminal = new PassThrough();
  return Object.assign(terminal, {
    isTTY: true,
    columns: 80,
    rows: 24,
    getColorDepth: () => 8,
    hasColors: () => true,
    setRawMode: () => terminal,
    ref: () => terminal,
    unref: () => terminal,
  });
};

const stand = (name: 'stdin' | 'stdout' | 'stderr'): PassThrough => {
  const terminal = noOnesTerminal();
  Object.defineProperty(process, name, { value: terminal });
  return terminal;
};

const question = 'can they go out';

/** What is typed into the chat, and after how many milliseconds: long after the first frame stands, so that none is lost. */
const typed = [
  [1500, question],
  [1700, '\r'],
  [3000, 'bye'],
  [3200, '\r'],
] as const;

const compileAhead = (folder: string, way: Way): void => {
  process.argv = way === 'chat' ? ['node', 'penside'] : ['node', 'penside', question];
  const keys = stand('stdin');
  for (const name of ['stdout', 'stderr'] as const) stand(name).resume();
  const script = startProgram(folder, way);
  // As the program is left, whatever it ran has been compiled.
  process.on('exit', () => writeFileSync(compiledFile(folder, way), script.createCachedData()));
  if (way === 'chat') for (const [wait, text] of typed) setTimeout(() => keys.write(text), wait);
};

const [, , folder = '', way] = process.argv;
compileAhead(folder, way === 'chat' ? 'chat' : 'answer');
