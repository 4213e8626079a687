/** Two people, one flock: two real copies that grew apart, joined line by line, still say what both keepers meant. */
import { copyFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { jsonLines, penside } from '../../helpers/program.ts';

const today = '2026-05-05';
let folder = '';
let both = '';
const at = (name: string): string => join(folder, name);
const tell = (file: string, by: string, hour: string, words: string): void => {
  const run = penside(['tell', words], { file, today, hour, env: { PENSIDE_BY: by } });
  expect([run.exit, run.err]).toEqual([0, '']);
};

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'penside-'));
  tell(at('nell.jsonl'), 'Nell', '07:00', '40 whites hatched yesterday came this morning, none dead');
  both = readFileSync(at('nell.jsonl'), 'utf8');
  copyFileSync(at('nell.jsonl'), at('sam.jsonl'));
  tell(at('nell.jsonl'), 'Nell', '08:00', 'lost 4 whites to the heat');
  tell(at('nell.jsonl'), 'Nell', '10:00', 'fed 3 lb');
  tell(at('sam.jsonl'), 'Sam', '09:00', 'lost 2 whites to a hawk');
  tell(at('sam.jsonl'), 'Sam', '09:05', 'undo');
  tell(at('sam.jsonl'), 'Sam', '09:10', 'lost 1 white to a hawk');
}, 30_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** What each added, behind what both had: a version control's union of the two. */
const joined = (first: string, second: string): string => {
  const file = at('joined.jsonl');
  const added = [first, second].map((name) => readFileSync(at(name), 'utf8').slice(both.length));
  writeFileSync(file, `${both}${added.join('')}`);
  return file;
};

test.each([
  ['nell.jsonl', 'sam.jsonl'],
  ['sam.jsonl', 'nell.jsonl'],
])('%s joined with %s: what was taken back in one copy stays taken back', (first, second) => {
  const file = joined(first, second);
  const { out } = penside(['list', 'losses', '--json'], { file, today });
  const losses = out
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line));
  expect(losses.map(({ count, cause, by }) => [count, cause, by]).toSorted()).toEqual([
    [1, 'hawk', 'Sam'],
    [4, 'heat', 'Nell'],
  ]);
  const { exit, out: asked } = penside(['how many birds do I have'], { file, today });
  expect([exit, asked.split('\n')[0]]).toEqual([0, 'The whites: 35 birds alive, 1 day old, in the brooder.']);
});

test('check says that two files were joined, finds nothing in the way, and each line knows its undo', () => {
  const file = joined('nell.jsonl', 'sam.jsonl');
  const check = penside(['check', '--json'], { file, today });
  expect([check.exit, jsonLines(check).map(({ code, grave }) => [code, grave])]).toEqual([
    0,
    [['written-order', false]],
  ]);
  const [context] = jsonLines(penside(['context', '4', '--json'], { file, today }));
  expect([context?.by, context?.counts, context?.revised]).toEqual([
    'Sam',
    false,
    [{ line: 5, how: 'undone' }],
  ]);
});

test('an undo whose line is in neither copy any more counts for nothing and is named', () => {
  const file = joined('nell.jsonl', 'sam.jsonl');
  const lines = readFileSync(file, 'utf8').split('\n');
  writeFileSync(file, [...lines.slice(0, 3), ...lines.slice(4)].join('\n'));
  const check = penside(['check'], { file, today });
  expect(check.exit).toBe(1);
  expect(check.out).toContain(
    'this counts for nothing, as the line it was written for is not in the file as it was.',
  );
});

test.each([
  ['nell.jsonl', 'sam.jsonl'],
  ['sam.jsonl', 'nell.jsonl'],
])(
  '%s joined with %s: undo takes back what was told last, wherever it stands, and says by whom',
  (first, second) => {
    const file = joined(first, second);
    const undo = (): readonly string[] =>
      penside(['undo'], { file, today, hour: '11:00' }).out.trim().split('\n');
    expect(undo()).toEqual([
      'Taken back: 3 lb fed.',
      'It was written by Nell.',
      'The line stays in the file, marked as undone.',
    ]);
    expect(undo()[0]).toBe('Taken back: 1 white lost, cause hawk.');
    expect(undo()[0]).toBe('Taken back: 4 whites lost, cause heat.');
  },
);
