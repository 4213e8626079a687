import { describe, expect, test } from 'vitest';
import { decodeKeys, nothingDecoded } from '../../../../cli/chat/prompt/decode-keys.ts';
import type { Act } from '../../../../cli/chat/prompt/prompt-state.ts';

const insert = (text: string): Act => ({ t: 'insert', text });

/** The acts of several chunks, decoded one after the other. */
const decode = (...chunks: readonly string[]): readonly Act[] => {
  let decoding = nothingDecoded;
  return chunks.flatMap((chunk) => {
    const { acts, after } = decodeKeys(chunk, decoding);
    decoding = after;
    return acts;
  });
};

test.each<[string, string, readonly string[]]>([
  ['move', 'left', ['\x1b[D', '\x1bOD', '\x02', '\x1b[1;2D']],
  ['move', 'right', ['\x1b[C', '\x1bOC', '\x06', '\x1b[1;2C']],
  ['move', 'word-left', ['\x1bb', '\x1b[1;3D', '\x1b[1;5D', '\x1b\x1b[D', '\x1b\x1bOD', '\x1bOd', '\x1b[5D']],
  [
    'move',
    'word-right',
    ['\x1bf', '\x1b[1;3C', '\x1b[1;5C', '\x1b\x1b[C', '\x1b\x1bOC', '\x1bOc', '\x1b[5C'],
  ],
  ['move', 'start', ['\x01', '\x1b[H', '\x1bOH', '\x1b[1~', '\x1b[7~']],
  ['move', 'end', ['\x05', '\x1b[F', '\x1bOF', '\x1b[4~', '\x1b[8~']],
  ['delete', 'left', ['\x7f', '\x08']],
  ['delete', 'right', ['\x1b[3~']],
  ['delete', 'word-left', ['\x17', '\x1b\x7f', '\x1b\x08']],
  ['delete', 'word-right', ['\x1bd', '\x1b[3;3~', '\x1b[3;5~']],
  ['delete', 'start', ['\x15']],
  ['delete', 'end', ['\x0b']],
  ['recall', 'older', ['\x1b[A', '\x1bOA', '\x10']],
  ['recall', 'newer', ['\x1b[B', '\x1bOB', '\x0e']],
])('%s %s, as each terminal sends it', (t, to, sequences) => {
  expect(sequences.map((sequence) => decode(sequence))).toEqual(sequences.map(() => [{ t, to }]));
});

test.each([
  ['\r', 'submit'],
  ['\n', 'submit'],
  ['\r\n', 'submit'],
  ['\x03', 'interrupt'],
  ['\x04', 'finish'],
])('%j is %s', (chunk, t) => {
  expect(decode(chunk)).toEqual([{ t }]);
});

describe('chunks', () => {
  test('words and Enter at once are words, then Enter', () => {
    expect(decode('foo\r')).toEqual([insert('foo'), { t: 'submit' }]);
  });

  test('line ends inside become spaces', () => {
    expect(decode('a\r\n\r\nb\nc')).toEqual([insert('a b c')]);
  });

  test('keys between words keep their places', () => {
    expect(decode('ab\x7f\x7fc\x1b[Dd')).toEqual([
      insert('ab'),
      { t: 'delete', to: 'left' },
      { t: 'delete', to: 'left' },
      insert('c'),
      { t: 'move', to: 'left' },
      insert('d'),
    ]);
  });

  test('a sequence cut in two is put together', () => {
    expect(decode('a\x1b[1;', '5Db')).toEqual([insert('a'), { t: 'move', to: 'word-left' }, insert('b')]);
  });

  test('Esc alone is a key of its own, not the beginning of the next', () => {
    expect(decode('\x1b', 'b')).toEqual([{ t: 'let-be' }, insert('b')]);
  });

  test('Tab at the end of what is typed is the key; between words it is a space, as in a paste', () => {
    const tab = { t: 'complete', to: 'next' };
    expect([
      decode('\t'),
      decode('a\t'),
      decode('a\tb'),
      decode('a\t\r'),
      decode('\x1b[200~a\t\x1b[201~'),
      decode('\x1b[200~a\t', '\x1b[201~'),
    ]).toEqual([
      [tab],
      [insert('a'), tab],
      [insert('a b')],
      [insert('a'), tab, { t: 'submit' }],
      [insert('a ')],
      [insert('a ')],
    ]);
  });
});

describe('bracketed paste', () => {
  test('never submits, and its line ends become spaces', () => {
    expect(decode('\x1b[200~one\rtwo\x1b[201~')).toEqual([insert('one two')]);
  });

  test('may come in several chunks, one of them ending in a line end', () => {
    expect(decode('\x1b[200~one\n', 'two\x1b[20', '1~', '\r')).toEqual([
      insert('one '),
      insert('two'),
      { t: 'submit' },
    ]);
  });

  test('keys in it do nothing', () => {
    expect(decode('\x1b[200~a\x03\x04\x1b[Ab\x1b[201~')).toEqual([insert('ab')]);
  });

  test.each([
    ['Esc', '\x1b', [{ t: 'let-be' }]],
    ['Ctrl-C', '\x03', [{ t: 'interrupt' }]],
  ])('%s frees the keys when the end mark was lost', (_key, chunk, acts) => {
    expect(decode('\x1b[200~lost', chunk, '\r')).toEqual([insert('lost'), ...acts, { t: 'submit' }]);
  });
});

test.each([
  ['a mouse report', '\x1b[<0;10;10M'],
  ['a mouse report in the old coding', '\x1b[M !!'],
  ['focus gained', '\x1b[I'],
  ['a cursor report', '\x1b[1;5R'],
  ['a colour report', '\x1b]11;rgb:0000/0000/0000\x1b\\'],
  ['a device report', '\x1bP>|name 1.0\x1b\\'],
  ['Ctrl-F1', '\x1b[1;5P'],
  ['F1 on a console', '\x1b[[A'],
  ['Alt-x', '\x1bx'],
  ['Ctrl-Space', '\x00'],
])('%s is dropped', (_name, chunk) => {
  expect(decode(chunk, 'x')).toEqual([insert('x')]);
});
