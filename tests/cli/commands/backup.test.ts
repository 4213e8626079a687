/** A dated copy of a flock: whole, never over an older one, and enough to go back to. */
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { backup } from '../../../cli/commands/backup.ts';
import type { Outcome } from '../../../cli/commands/command.ts';
import { lookAround, type Surroundings } from '../../../cli/surroundings.ts';

let folder = '';
let home = '';
let around: Surroundings;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'penside-'));
  home = join(folder, 'home');
  mkdirSync(join(home, 'flock.rules', 'figures'), { recursive: true });
  writeFileSync(join(home, 'flock.jsonl'), '{"kind":"note","on":"2026-05-02","words":"wet"}\n');
  writeFileSync(join(home, 'flock.advice.jsonl'), '{}\n');
  writeFileSync(join(home, 'flock.rules', 'figures', 'bag.yaml'), 'value: 40\n');
  writeFileSync(join(home, 'shopping.txt'), 'salt\n');
  around = {
    ...lookAround(process),
    today: '2026-05-14',
    flockFile: join(home, 'flock.jsonl'),
    copiesFolder: join(folder, 'copies'),
    isReadOnly: false,
  };
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const run = (words: readonly string[], json = false, where = around): Promise<Outcome> =>
  backup.run({ words, options: { json } }, where);
/** Every file below a folder, with its text. */
const textsIn = (at: string) =>
  Object.fromEntries(
    readdirSync(at, { recursive: true, encoding: 'utf8' })
      .filter((name) => statSync(join(at, name)).isFile())
      .sort()
      .map((name) => [name, readFileSync(join(at, name), 'utf8')]),
  );

test('what belongs to the flock is copied and nothing else, and the way back is said', async () => {
  const { 'shopping.txt': _, ...flock } = textsIn(home);
  const copy = join(folder, 'stick', 'flock-2026-05-14');
  expect(await run([join(folder, 'stick')])).toEqual({
    out: [
      `Copied and read back: flock.jsonl, flock.advice.jsonl, flock.rules/figures/bag.yaml, in ${copy}`,
      `To go back to it, copy everything in that folder to ${home}`,
    ],
    err: [],
    exit: 0,
  });
  expect(textsIn(copy)).toEqual(flock);
});

test('the way back goes back', async () => {
  const before = textsIn(home);
  await run([]);
  writeFileSync(join(home, 'flock.jsonl'), 'lost\n');
  rmSync(join(home, 'flock.rules'), { recursive: true });
  cpSync(join(around.copiesFolder, 'flock-2026-05-14'), home, { recursive: true });
  expect(textsIn(home)).toEqual(before);
});

test('an older copy is never touched, and each has a name of its own', async () => {
  await run([]);
  writeFileSync(join(home, 'flock.jsonl'), 'second\n');
  await run([]);
  writeFileSync(join(home, 'flock.jsonl'), 'third\n');
  await run([]);
  const copies = textsIn(around.copiesFolder);
  expect(readdirSync(around.copiesFolder).sort()).toEqual([
    'flock-2026-05-14',
    'flock-2026-05-14-2',
    'flock-2026-05-14-3',
  ]);
  expect([copies['flock-2026-05-14-2/flock.jsonl'], copies['flock-2026-05-14-3/flock.jsonl']]).toEqual([
    'second\n',
    'third\n',
  ]);
  expect(copies['flock-2026-05-14/flock.jsonl']).toContain('wet');
});

test('only the keeper can read it', async () => {
  await run([]);
  const copy = join(around.copiesFolder, 'flock-2026-05-14');
  expect([statSync(copy).mode & 0o777, statSync(join(copy, 'flock.jsonl')).mode & 0o777]).toEqual([
    0o700, 0o600,
  ]);
});

test('a link is left out and told of', async () => {
  symlinkSync('/etc/hostname', join(home, 'flock.rules', 'elsewhere.yaml'));
  const { err } = await run([]);
  expect(err).toEqual(['flock.rules/elsewhere.yaml is no plain file and was left out.']);
});

test('for scripts, as data', async () => {
  const { out } = await run([], true);
  expect(out.map((line) => JSON.parse(line))).toEqual([
    {
      folder: join(around.copiesFolder, 'flock-2026-05-14'),
      files: ['flock.jsonl', 'flock.advice.jsonl', 'flock.rules/figures/bag.yaml'],
      'left-out': [],
      'goes-back-to': home,
    },
  ]);
});

test('where it cannot be written nothing is left behind, and what to do is said', async () => {
  const blocked = join(folder, 'blocked');
  writeFileSync(blocked, '');
  const { out, err, exit } = await run([blocked]);
  expect([out, exit]).toEqual([[], 1]);
  expect(err).toEqual([
    `Nothing was copied (ENOTDIR at ${blocked}). Name a folder that may be written to and has room: penside backup FOLDER`,
  ]);
  expect(readdirSync(folder).sort()).toEqual(['blocked', 'home']);
});

test('without a flock file there is nothing to copy', async () => {
  const nowhere = { ...around, flockFile: join(folder, 'none.jsonl') };
  expect(await run([], false, nowhere)).toEqual({
    out: [],
    err: [
      `There is no flock file at ${nowhere.flockFile}, so there is nothing to copy. To start one: penside new`,
    ],
    exit: 1,
  });
});

test('where nothing is to be written it goes only to a folder that is named', async () => {
  const helper = { ...around, isReadOnly: true };
  expect(await run([], false, helper)).toMatchObject({ out: [], exit: 1 });
  expect(readdirSync(folder)).toEqual(['home']);
  expect((await run([join(folder, 'stick')], false, helper)).exit).toBe(0);
});
