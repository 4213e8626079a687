/** What holds for every command: it speaks JSON on request, and what it will not do it says on standard error with what to do. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { commands } from '../../../cli/commands/index.ts';
import { demoLedger } from '../../../cli/demo/demo.ts';
import { jsonLines, penside } from '../../helpers/program.ts';

const today = '2026-05-05';
let folder = '';
let file = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'penside-'));
  file = join(folder, 'flock.jsonl');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** Words with which each command has something to say; none where it needs none. */
const words: Readonly<Record<string, readonly string[]>> = {
  ask: ['how many birds do I have'],
  tell: ['lost 1 white today'],
  context: ['1'],
  list: ['feed'],
  heard: ['can they go out'],
  completions: ['bash'],
};

const demo = (): void => writeFileSync(file, demoLedger(today));

test.each(commands.map(({ name }) => name))('%s --json gives one object a line and nothing else', (name) => {
  if (name !== 'new') demo();
  const args = [name, ...(words[name] ?? []), '--json', ...(name === 'audit' ? ['--from', today] : [])];
  const run = penside(args, { file, today, env: { XDG_DATA_HOME: join(folder, 'data') } });
  expect([run.exit, run.err]).toEqual([0, '']);
  // A whole flock has nothing for check to say, and a single day may have no turn of advice.
  const least = ['check', 'audit'].includes(name) ? 0 : 1;
  const objects = jsonLines(run);
  expect(objects.length).toBeGreaterThanOrEqual(least);
  expect(objects.filter((each) => typeof each !== 'object' || each === null)).toEqual([]);
});

test('every command says that it takes --json', () => {
  expect(commands.filter(({ options }) => !options.some(({ name }) => name === 'json'))).toEqual([]);
});

test.each([['list', 'feed'], ['weather']])('an option that %s has not is wrong use', (...args) => {
  expect(penside([...args, '--colour'], { file, today })).toEqual({
    out: '',
    err: `Unknown option '--colour'. penside ${args[0]} --help shows what there is.\n`,
    exit: 64,
  });
});

test.each([['check'], ['rules', 'feed'], ['what needs doing today']])(
  '%s puts no colour into a pipe',
  (...args) => {
    demo();
    const run = penside(args, { file, today, env: { FORCE_COLOR: '3' } });
    expect([run.out.length > 0, `${run.out}${run.err}`.includes('\u001b')]).toEqual([true, false]);
  },
);

test.each([
  [['list'], 'list wants the name of one list: entries, losses, feed, weights, purchases, freezer, advice'],
  [
    ['list', 'eggs'],
    'list wants the name of one list: entries, losses, feed, weights, purchases, freezer, advice',
  ],
  [['context'], 'context wants the number of a line, as: penside context 12'],
  [['context', 'twelve'], 'context wants the number of a line, as: penside context 12'],
  [['backup', 'one', 'two'], 'backup wants one folder, as: penside backup /media/stick'],
  [['man', 'ask'], 'man wants no words, as: penside man > penside.1'],
  [['completions'], 'completions wants the name of a shell: bash, zsh, fish'],
])('%j is wrong use', (args, says) => {
  expect(penside(args, { file, today })).toEqual({ out: '', err: `${says}\n`, exit: 64 });
});

test('a line that there is not is wrong use, and says how many there are', () => {
  demo();
  const last = demoLedger(today).split('\n').length - 1;
  expect(penside(['context', '999'], { file, today })).toEqual({
    out: '',
    err: `there is no line 999 in ${file}; it has ${last}. To find one: penside list entries\n`,
    exit: 64,
  });
});

test.each([
  ['40', 40],
  ['200', 100],
])('COLUMNS=%s makes rows in a pipe at most %i columns wide', (COLUMNS, most) => {
  demo();
  const { out } = penside(['what needs doing today'], { file, today, env: { COLUMNS } });
  const widest = Math.max(...out.split('\n').map(({ length }) => length));
  expect([widest <= most, widest > most - 15]).toEqual([true, true]);
});

test('a list is rows that end as the standard has it', () => {
  const note = { kind: 'note', on: today, words: '=1+1', by: '=Nell' };
  writeFileSync(file, `${JSON.stringify(note)}\n`);
  expect(penside(['list', 'entries'], { file, today })).toEqual({
    out: "line,on,kind,group,says,by,written\r\n1,2026-05-05,note,,Note: =1+1.,'=Nell,\r\n",
    err: '',
    exit: 0,
  });
});
