/** `penside check` as a commit hook runs it: one line a problem, nothing when clean, and an exit code that tells. */
import { appendFileSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { penside } from '../../helpers/program.ts';

const today = '2026-05-05';
let folder = '';
let file = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'penside-'));
  file = join(folder, 'flock.jsonl');
  penside(['tell', '40 whites hatched yesterday came this morning, none dead'], { file, today });
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const check = () => penside(['check', '--short'], { file, today });

test('it says nothing of a file with nothing wrong', () => {
  expect(check()).toEqual({ out: '', err: '', exit: 0 });
});

test('two copies joined are noted, each with both lines, and do not stop a commit', () => {
  appendFileSync(file, readFileSync(file, 'utf8'));
  expect(check()).toEqual({
    out: `${file}:2:1: repeated-line: take note: the same line, written at the same time, stands at line 1; it is counted once.\n`,
    err: '',
    exit: 0,
  });
});

test('what stands in the way of answers stops it, in file order', () => {
  appendFileSync(
    file,
    '{"kind":"los","on":"2026-05-05"}\n{"kind":"note","on":"2026-05-05","wo{"kind":"eat"}\n',
  );
  expect(check()).toEqual({
    out: [
      `${file}:2:9: unknown-kind: there is no entry kind called los.`,
      `${file}:3:37: not-json: two entries have run together, as where two files were joined; everything else in the file is still used.`,
      '',
    ].join('\n'),
    err: '',
    exit: 1,
  });
});

test('the help has every exit code in one table', () => {
  const { out } = penside(['--help']);
  expect(out.slice(out.indexOf('Exit codes'), out.indexOf('\nEnvironment'))).toBe(
    [
      'Exit codes',
      '  0   answered, recorded, or nothing wrong',
      '  1   problems: in the file or the rules, or nothing could be written',
      '  2   not understood, or more than one thing may be meant',
      '  3   cannot say yet: something is missing',
      '  64  wrong use of the command line',
      '',
    ].join('\n'),
  );
});
