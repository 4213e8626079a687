/** One rule file as text: places are right in any file, and a file made to do harm does none. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readDocument } from '../../../engine/rulebook/document.ts';

const read = (text: string) => readDocument({ file: 'x.yaml', text });

const codesOf = (text: string): readonly string[] => read(text).problems.map(({ code }) => code);

describe('a place in a file', () => {
  const text = 'says: hello\r\nwhen:\r\n  all:\r\n    - fact: age\r\n      value: [a, b]\r\nnot: []\r\n';
  const under = (path: readonly (string | number)[]): readonly [number, string] => {
    const { at, raw } = read(text).problemAt(path, 'made-up', {});
    return [at.line, raw.slice(at.column - 1, at.column - 1 + (at.length ?? 0))];
  };

  test('is a short value itself', () => {
    expect(under(['says'])).toEqual([1, 'hello']);
    expect(under(['when', 'all', 0, 'fact'])).toEqual([4, 'age']);
    expect(under(['when', 'all', 0, 'value', 1])).toEqual([5, 'b']);
  });

  test('is the key of a longer one', () => {
    expect(under(['when'])).toEqual([2, 'when']);
    expect(under(['when', 'all'])).toEqual([3, 'all']);
    expect(under(['not'])).toEqual([6, 'not']);
  });

  test('is the beginning of a list item that has several keys', () => {
    expect(under(['when', 'all', 0])).toEqual([4, 'f']);
  });

  test('is the nearest parent of what is not there', () => {
    expect(under(['when', 'all', 0, 'because'])).toEqual([4, 'f']);
    expect(under(['when', 'all', 7, 'fact'])).toEqual([3, 'all']);
    expect(under(['chore', 'says'])).toEqual([1, 's']);
  });

  test('can be a key', () => {
    const { at, raw } = read(text).problemAtKey(['when', 'all', 0, 'value'], 'made-up', { a: 1 });
    expect({ at, raw }).toEqual({
      at: { file: 'x.yaml', line: 5, column: 7, length: 5 },
      raw: '      value: [a, b]',
    });
  });
});

describe('a file that would not end', () => {
  test.each([
    ['brackets in one line', `a: ${'['.repeat(50_000)}`],
    ['brackets line by line', '[\n'.repeat(50_000)],
    ['braces that are closed again', `${'{a: '.repeat(5000)}${'}'.repeat(5000)}`],
    ['a list in a list in a list', `${'- '.repeat(50_000)}a`],
    ['keys of keys of keys', `${'? '.repeat(50_000)}a`],
    ['steps to the right', Array.from({ length: 200 }, (_, depth) => `${'  '.repeat(depth)}a:`).join('\n')],
  ])('%s', (_, text) => {
    expect(codesOf(text)).toEqual(['too-deep']);
  });

  test.each([
    ['an alias of itself', 'a: &a [*a]', 1],
    ['an alias of nothing', 'a: *b', 1],
    [
      'a bomb of aliases',
      `a: &a [${'x, '.repeat(9)}x]\nb: &b [${'*a, '.repeat(10)}x]\nc: [${'*b, '.repeat(12)}x]`,
      2,
    ],
  ])('%s', (_, text, count) => {
    const { data, problems } = read(text);
    expect(data).toBeUndefined();
    expect(problems.map(({ code }) => code)).toEqual(Array(count).fill('wrong-alias'));
  });

  test('may use an alias for what stands above it', () => {
    expect(read('a: &a {x: 1}\nb: *a').data).toEqual({ a: { x: 1 }, b: { x: 1 } });
  });
});

describe('a file of another kind', () => {
  test.each([
    ['', 'empty-file'],
    ['# only a remark', 'empty-file'],
    ['hello', 'empty-file'],
    ['a: 1\n---\nb: 2', 'not-yaml'],
    ['a: 1\na: 2', 'not-yaml'],
    ['a:\n\tb: 1', 'not-yaml'],
    ['a: "open', 'not-yaml'],
  ])('%j is %s', (text, code) => {
    expect(codesOf(text)).toEqual([code]);
  });

  test('runs nothing and reaches no prototype', () => {
    expect(read('a: !!js/function "() => 1"').data).toEqual({ a: '() => 1' });
    expect(({} as { b?: number }).b).toBeUndefined();
    read('__proto__: {b: 1}');
    expect(({} as { b?: number }).b).toBeUndefined();
  });

  test('never throws, whatever it holds', () => {
    const bit = fc.constantFrom(
      'a',
      ': ',
      '\n',
      '  ',
      '- ',
      '[',
      ']',
      '{',
      '}',
      '"',
      "'",
      '&x ',
      '*x',
      '|',
      '>',
      '#',
      '? ',
      '\t',
      '\0',
      '\ud800',
      '---\n',
      '!!',
      '%',
    );
    fc.assert(
      fc.property(fc.array(bit, { maxLength: 40 }), (bits) => {
        const { data, problems } = read(bits.join(''));
        expect(problems.length > 0).toBe(data === undefined);
        for (const { at } of problems)
          expect(Math.min(at.line, at.column, at.length ?? 1)).toBeGreaterThanOrEqual(1);
      }),
      { numRuns: 2000 },
    );
  });
});
