/** `penside new` with the questions of the first run as options: the same entries as the chat would write, or none at all. */
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { penside } from '../../helpers/program.ts';

const today = '2026-05-14';
let folder = '';
let file = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'penside-'));
  file = join(folder, 'flock.jsonl');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

test('answers are written and read back one by one', () => {
  const answers = [
    '--units',
    'metric',
    '--birds',
    '50 whites hatched monday',
    '--pen',
    '3 by 4 m',
    '--eaters',
    '4',
  ];
  const made = penside(['new', ...answers], { file, today });
  expect([made.exit, made.err, made.out]).toEqual([
    0,
    '',
    [
      `Your flock file is ${file}`,
      'Written: Units: metric.',
      'Written: 50 whites came, fast growing, hatched Monday 11 May.',
      'Written: Pen size: 3 m x 4 m.',
      'Written: People eating: 4.',
      '',
    ].join('\n'),
  ]);
  expect(readFileSync(file, 'utf8').trimEnd().split('\n')).toHaveLength(4);
});

test('with one answer that is none, nothing is written', () => {
  const made = penside(['new', '--units', 'metric', '--eaters', 'lots'], { file, today });
  expect([made.exit, made.err, made.out]).toEqual([
    64,
    '--eaters lots: How many people eat the birds? Such as "4".\n',
    '',
  ]);
  expect(existsSync(file)).toBe(false);
});

test('a file that is there is not touched', () => {
  penside(['new'], { file, today });
  const again = penside(['new', '--pen', '3 by 4 m'], { file, today });
  expect([again.exit, again.err]).toEqual([
    1,
    `${file} is there already; nothing was touched. To start another: penside new --file PATH\n`,
  ]);
  expect(readFileSync(file, 'utf8')).toBe('');
});
