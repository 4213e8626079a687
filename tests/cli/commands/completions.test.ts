/** Completions: bash asked as it asks itself; for zsh and fish every command, word and option, and quotes that close. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { completions } from '../../../cli/commands/completions.ts';
import { commands } from '../../../cli/commands/index.ts';
import { lookAround } from '../../../cli/surroundings.ts';

const scriptFor = async (shell: string): Promise<string> => {
  const { out } = await completions.run({ words: [shell], options: {} }, lookAround(process));
  return `${out.join('\n')}\n`;
};

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'penside-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** A shell's own check of a script; null where there is no such shell here. */
const complaintsOf = (shell: string, args: readonly string[], script: string): string | null => {
  const file = join(folder, 'script');
  writeFileSync(file, script);
  const { error, stderr } = spawnSync(shell, [...args, file], { encoding: 'utf8' });
  return error === undefined ? stderr : null;
};

describe('bash', () => {
  /** What is offered behind the last word of each line, asked in one shell: on a busy machine each takes long to start. */
  const offeredToEach = async (
    lines: readonly (readonly string[])[],
  ): Promise<readonly (readonly string[])[]> => {
    const ask = `ask() {
  COMP_WORDS=(penside "$@"); COMP_CWORD=$#; COMPREPLY=(); _penside
  for each in "\${COMPREPLY[@]}"; do echo "$each"; done; echo ----
}`;
    const asked = lines.map((words) => `ask ${words.map((word) => `'${word}'`).join(' ')}`);
    const { stdout, stderr } = spawnSync(
      'bash',
      ['-c', `${await scriptFor('bash')}${ask}\n${asked.join('\n')}`],
      { encoding: 'utf8', cwd: folder },
    );
    expect(stderr).toBe('');
    const offers = stdout.split('----\n').slice(0, -1);
    return offers.map((each) => each.split('\n').filter((line) => line !== ''));
  };
  const offered = async (...words: readonly string[]): Promise<readonly string[]> =>
    (await offeredToEach([words])).flat();
  const flagsOf = (name: string) => [
    ...(commands.find((each) => each.name === name)?.options.map((option) => `--${option.name}`) ?? []),
    '--help',
  ];

  test('the first word is a command', async () => {
    expect(await offered('')).toEqual(commands.map(({ name }) => name));
    expect(await offered('ca')).toEqual(['calendar']);
  });

  test('a command has its own words and options', async () => {
    const words = [
      ['list', ''],
      ['list', 'f'],
      ['completions', 'z'],
      ['weather', '--json', 'o'],
    ];
    expect(await offeredToEach(words)).toEqual([
      ['entries', 'losses', 'feed', 'weights', 'purchases', 'freezer', 'advice'],
      ['feed', 'freezer'],
      ['zsh'],
      ['on', 'off'],
    ]);
    expect(await offeredToEach(commands.map(({ name }) => [name, '--']))).toEqual(
      commands.map(({ name }) => flagsOf(name)),
    );
  });

  test('paths are offered where a path goes, blanks and all, and nothing where a text goes', async () => {
    mkdirSync(join(folder, 'my flocks'));
    writeFileSync(join(folder, 'my flock.jsonl'), '');
    const paths = async (...words: readonly string[]) => (await offered(...words)).toSorted();
    expect(await paths('check', '--file', 'my')).toEqual(['my flock.jsonl', 'my flocks']);
    expect(await paths('backup', 'my')).toEqual(['my flock.jsonl', 'my flocks']);
    expect(await paths('backup', '--f')).toEqual(['--file']);
    expect(await paths('check', '--on', '')).toEqual([]);
  });

  test('words that are no command are followed by options alone', async () => {
    expect(await offered('lost 2 whites', '')).toEqual([]);
    expect(await offered('lost 2 whites', '--as')).toEqual(['--as-of']);
  });
});

describe.each(['zsh', 'fish'])('%s', (shell) => {
  test('is offered every command, word and option with what it means', async () => {
    const script = await scriptFor(shell);
    const wanted = commands.flatMap(({ name, words = [], options }) => [
      shell === 'zsh' ? `'${name}:` : `-a ${name} -d '`,
      ...(words.length === 0 ? [] : [words.join(' ')]),
      ...options.map((option) => (shell === 'zsh' ? `'--${option.name}[` : ` -l ${option.name} `)),
    ]);
    expect(wanted.filter((each) => !script.includes(each))).toEqual([]);
  });

  test('is written so that it can be read', async () => {
    const script = await scriptFor(shell);
    const complaints = complaintsOf(shell, ['-n'], script);
    expect(complaints ?? '').toBe('');
    // Quotes close on their own row: what is escaped is taken away, then they come in pairs.
    const bare = shell === 'zsh' ? script.replaceAll("'\\''", '') : script.replace(/\\[\\']/g, '');
    const rows = bare.split('\n').filter((row) => !row.startsWith('#'));
    expect(rows.filter((row) => row.replace(/[^']/g, '').length % 2 === 1)).toEqual([]);
  });
});

test('a shell that is not known is wrong use', async () => {
  expect(await completions.run({ words: ['csh'], options: {} }, lookAround(process))).toEqual({
    out: [],
    err: ['completions wants the name of a shell: bash, zsh, fish'],
    exit: 64,
  });
});
