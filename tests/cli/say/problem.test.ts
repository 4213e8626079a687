/** A problem in words: place, the line itself, a caret that is right on any screen, and what to do. */
import { describe, expect, test } from 'vitest';
import { sayProblem } from '../../../cli/say/problem.ts';
import type { Place, Problem } from '../../../engine/problem.ts';

const problem = (raw: string, at: Partial<Place> = {}, more: Partial<Problem> = {}): Problem => ({
  code: 'unknown-group',
  at: { file: 'flock.jsonl', line: 7, column: 1, ...at },
  raw,
  data: { found: 'blue', suggestion: 'blues' },
  grave: true,
  touches: [],
  ...more,
});
/** The shown line and the caret line under it. */
const shown = (raw: string, column: number, length = 1): readonly (string | undefined)[] =>
  sayProblem(problem(raw, { column, length })).slice(1, 3);

test('a message has the place, the line, the caret, what is wrong and what to do', () => {
  expect(sayProblem(problem('{"group":"blue"}', { column: 10, length: 6 }))).toEqual([
    'flock.jsonl, line 7, column 10: there are no birds called blue.',
    '  {"group":"blue"}',
    '           ^^^^^^',
    '  Did you mean blues?',
  ]);
});

test('a warning says so; without anything to do, or without a line, there is nothing in their place', () => {
  expect(sayProblem(problem('x', {}, { grave: false, data: { found: 'blue' } }))).toEqual([
    'flock.jsonl, line 7, column 1: take note: there are no birds called blue.',
    '  x',
    '  ^',
  ]);
  expect(sayProblem(problem(''))).toEqual([
    'flock.jsonl, line 7, column 1: there are no birds called blue.',
    '  Did you mean blues?',
  ]);
});

test('a code without a wording is still told', () => {
  expect(sayProblem(problem('x', {}, { code: 'made-up' }))[0]).toBe('flock.jsonl, line 7, column 1: made-up');
});

describe('the caret', () => {
  test('stays right under tabs and other characters that are not shown', () => {
    expect(shown('a\tb\u0007c\u202ed', 7)).toEqual(['  a b c d', '        ^']);
    expect(shown('\u001b[31mred', 6, 3)).toEqual(['   [31mred', '       ^^^']);
  });

  test('counts columns of the screen: two for a wide character, none for an accent of its own', () => {
    expect(shown('鶏鶏x', 3)).toEqual(['  鶏鶏x', '      ^']);
    expect(shown('鶏鶏x', 2)).toEqual(['  鶏鶏x', '    ^^']);
    expect(shown('e\u0301x', 3)).toEqual(['  e\u0301x', '   ^']);
    expect(shown('🐔x', 3)).toEqual(['  🐔x', '    ^']);
  });

  test('may stand behind the end of the line, and never runs past it', () => {
    expect(shown('{"a":', 6)).toEqual(['  {"a":', '       ^']);
    expect(shown('abc', 2, 50)).toEqual(['  abc', '   ^^']);
  });

  test('keeps its place in a long line, of which only what is around it is shown', () => {
    const long = `${'a'.repeat(200)}HERE${'b'.repeat(200)}`;
    const [line = '', caret = ''] = shown(long, 201, 4);
    expect([line.length, caret.length <= line.length]).toEqual([78, true]);
    expect(line.slice(caret.indexOf('^'), caret.lastIndexOf('^') + 1)).toBe('HERE');
    const [start = ''] = shown(long, 1, 1);
    expect(start).toBe(`  ${'a'.repeat(76)}`);
    const [end = '', last = ''] = shown(long, 404, 1);
    expect([end, last]).toEqual([`  ${'b'.repeat(76)}`, `  ${' '.repeat(75)}^`]);
  });

  test('shows no half of a character that was cut in two', () => {
    for (let column = 60; column < 140; column += 1) {
      const [line = ''] = shown('🐔'.repeat(100), column);
      expect(line).not.toMatch(/\p{Surrogate}/u);
    }
  });
});

test('nothing in a message gets to the terminal but words', () => {
  const evil = '\u001b[2J\u202e';
  const message = sayProblem(
    problem(`${evil}x`, { file: `${evil}f` }, { data: { found: evil, suggestion: evil } }),
  );
  expect(message.join('\n')).not.toMatch(/[\u001b\u202e\u0007]/);
  expect(message[0]).toBe('f, line 7, column 1: there are no birds called .');
});

test('a lock is told with whose it is and what to do about one that is left over', () => {
  const locked = (data: Problem['data']) =>
    sayProblem({ ...problem('', { file: 'flock.jsonl', line: 1, column: 1 }), code: 'locked', data });
  expect(locked({ lock: 'flock.jsonl.lock', process: 12, host: 'barn' })).toEqual([
    'flock.jsonl, line 1, column 1: somebody else is writing to the file (process 12 on barn).',
    '  Nothing was written. Try again in a moment; if that process is no more, remove flock.jsonl.lock.',
  ]);
  expect(locked({ lock: 'flock.jsonl.lock' })).toEqual([
    'flock.jsonl, line 1, column 1: somebody else seems to be writing to the file, and does not say who.',
    '  Nothing was written. Try again in a moment; if nobody else is at it, remove flock.jsonl.lock.',
  ]);
});
