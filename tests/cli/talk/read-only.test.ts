/** A flock file that is only to be read: answers work, records are read back and refused with what to do, nothing is written. */
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { penside } from '../../helpers/program.ts';

const today = '2026-05-05';
let folder = '';
let file = '';
let before = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'penside-'));
  file = join(folder, 'flock.jsonl');
  penside(['tell', '40 whites hatched yesterday came this morning, none dead'], { file, today });
  before = readFileSync(file, 'utf8');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const why =
  'Nothing is written, as PENSIDE_READ_ONLY is set here. Tell it where the flock file is kept, or take that setting away.';
/** Output without the line ends that only keep it narrow. */
const unwrapped = (out: string): string => out.replace(/\n +/g, ' ');
const run = (args: readonly string[], wish = 'yes') =>
  penside(args, {
    file,
    today,
    env: { PENSIDE_READ_ONLY: wish, PENSIDE_LOG: 'yes', XDG_DATA_HOME: join(folder, 'data') },
  });

test('an answer is given, and nothing is noted beside the file', () => {
  const { out, exit } = run(['how many birds do I have']);
  expect([out.split('\n')[0], exit]).toEqual(['The whites: 40 birds alive, 1 day old, in the brooder.', 0]);
  expect([readdirSync(folder), readFileSync(file, 'utf8')]).toEqual([['flock.jsonl'], before]);
});

test.each(['yes', '1'])('with PENSIDE_READ_ONLY=%s a record is read back and refused', (wish) => {
  const refused = run(['tell', 'lost 2 whites to a hawk today'], wish);
  expect({ ...refused, out: unwrapped(refused.out) }).toEqual({
    out: `Not written.\nI heard: 2 whites lost, cause hawk.\nCareful: ${why}\n`,
    err: '',
    exit: 1,
  });
  expect([readdirSync(folder), readFileSync(file, 'utf8')]).toEqual([['flock.jsonl'], before]);
});

test('nothing is taken back either', () => {
  const { out, exit } = run(['tell', 'undo']);
  const lines = unwrapped(out).split('\n');
  expect([lines[0], lines[2], exit, readFileSync(file, 'utf8')]).toEqual([
    'Not taken back.',
    `Careful: ${why}`,
    1,
    before,
  ]);
});

test('"no" is no wish to read only', () => {
  expect(run(['tell', 'lost 2 whites to a hawk today'], 'no').exit).toBe(0);
});

test('a file that nobody may write to is left alone', () => {
  const sealed = join(folder, 'sealed.jsonl');
  writeFileSync(sealed, before, { mode: 0o444 });
  const { out, exit } = penside(['tell', 'lost 2 whites to a hawk today'], { file: sealed, today });
  expect([unwrapped(out).split('\n')[2], exit, readFileSync(sealed, 'utf8')]).toEqual([
    `Careful: Nothing is written, as ${sealed} may only be read here. Tell it where the flock file is kept, or allow writing to it.`,
    1,
    before,
  ]);
});
