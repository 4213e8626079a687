/** Where nothing is to be written, no command leaves anything beside the flock file or in the user's own folders. */
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { commands } from '../../../cli/commands/index.ts';
import { penside } from '../../helpers/program.ts';

const today = '2026-05-05';
let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'penside-'));
  mkdirSync(join(folder, 'home'));
  const setting = { kind: 'setting', on: today };
  const lines = [
    { kind: 'arrive', on: today, group: 'whites', count: 40, bird: 'fast', hatched: '2026-05-04' },
    { ...setting, what: 'place-at', value: '44.1 -73.2' },
    { ...setting, what: 'forecast', value: true },
  ];
  writeFileSync(join(folder, 'flock.jsonl'), lines.map((line) => `${JSON.stringify(line)}\n`).join(''));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** Every file below the folder with its text and the time of its last writing. */
const listing = () =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .sort()
    .map((name) => {
      const path = join(folder, name);
      const about = statSync(path);
      return [name, about.isFile() ? readFileSync(path, 'utf8') : 'folder', about.mtimeMs];
    });

const words: Readonly<Record<string, readonly string[]>> = {
  ask: ['how many birds do I have'],
  tell: ['lost 2 whites to a hawk today'],
  weather: ['off'],
  context: ['1'],
  list: ['entries'],
  heard: ['can they go out'],
  completions: ['bash'],
};

const ways = [
  ['how many birds do I have'],
  ['lost 2 whites to a hawk today'],
  ['undo'],
  [],
  ['new', '--demo'],
  ['new', '--eaters', '4'],
  ['weather'],
  ...commands.map(({ name }) => [name, ...(words[name] ?? [])]),
];

test.each(ways.map((args) => [args.join(' '), args] as const))('penside %s', (_, args) => {
  const before = listing();
  const home = join(folder, 'home');
  const { exit } = penside(args, {
    file: join(folder, 'flock.jsonl'),
    today,
    env: {
      PENSIDE_READ_ONLY: 'yes',
      PENSIDE_LOG: 'yes',
      HOME: home,
      XDG_DATA_HOME: join(home, 'data'),
      XDG_STATE_HOME: join(home, 'state'),
      XDG_CACHE_HOME: join(home, 'cache'),
    },
  });
  expect([exit === 64, listing()]).toEqual([false, before]);
});

test('a new file is refused also where there is none, with what to do', () => {
  const file = join(folder, 'none', 'flock.jsonl');
  expect(penside(['new'], { file, today, env: { PENSIDE_READ_ONLY: 'yes' } })).toEqual({
    out: '',
    err: 'No flock file is made, as PENSIDE_READ_ONLY is set here. Take that setting away, or name the file that there is: penside --file PATH\n',
    exit: 1,
  });
  expect(readdirSync(folder)).not.toContain('none');
});
