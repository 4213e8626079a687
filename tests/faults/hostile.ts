/** Things that a keeper would not write and somebody else might, drawn at random; and how long the slowest took. */
import fc from 'fast-check';

/** Characters that a terminal obeys or does not show. */
export const unseen = [
  '\x1b[2J',
  '\x1b]0;t\x07',
  '\x9b31m',
  '\u202e',
  '\u2066',
  '\u200b',
  '\u2060',
  '\ufeff',
  '\u00ad',
  '\u0000',
  '\u0008',
  '\r',
  String.fromCodePoint(0xe0041),
];

/** Numbers and texts at the edges of what can be meant. */
export const edges = fc.oneof(
  fc.constantFrom(
    '0',
    '-1',
    '1e999',
    '1e-999',
    '99999999999999999999',
    'NaN',
    'Infinity',
    '0.1e',
    '١٢',
    '½',
    '3..4',
  ),
  fc.constantFrom(
    '__proto__',
    'constructor',
    'toString',
    'hasOwnProperty',
    'null',
    'undefined',
    '{fact}',
    '$&',
  ),
  fc.constantFrom(
    '2026-02-30',
    '0000-01-01',
    '9999-12-31',
    'may 40',
    '25:61',
    'whites',
    'reds',
    '3 lb',
    '38 F',
    '-500 F',
  ),
  fc.constantFrom(...unseen),
);

const value: fc.Arbitrary<unknown> = fc.oneof(
  edges,
  fc.jsonValue(),
  fc.double(),
  fc.integer(),
  fc.constantFrom(
    '2026-05-01',
    '2026-05-20T07:00:00+00:00',
    true,
    null,
    [],
    {},
    ['3 lb', '4 lb'],
    '12.50',
    '10 lb',
  ),
);

/** JSON objects made of the kinds and fields that there are, with values that fit seldom. */
export const lineOfJson = (
  kinds: readonly { readonly kind: string; readonly fields: readonly string[] }[],
): fc.Arbitrary<string> =>
  fc.constantFrom(...kinds).chain(({ kind, fields }) =>
    fc
      .record({
        on: fc.oneof({ weight: 4, arbitrary: fc.constant('2026-05-01') }, { weight: 1, arbitrary: value }),
        rest: fc.dictionary(fc.constantFrom(...fields, 'by', 'written', '__proto__', 'kind'), value, {
          maxKeys: 6,
        }),
      })
      .map(({ on, rest }) => JSON.stringify({ kind, on, ...rest })),
  );

/** Sentences made of known ones: cut, doubled, put together and with edges between the words. */
export const sentenceOf = (known: readonly string[]): fc.Arbitrary<string> =>
  fc
    .record({
      words: fc.array(fc.constantFrom(...known), { minLength: 1, maxLength: 2 }),
      edge: edges,
      at: fc.nat(12),
      cut: fc.nat(12),
      cased: fc.boolean(),
    })
    .map(({ words, edge, at, cut, cased }) => {
      const all = words.join(' and ').split(' ');
      const some = cut > 9 ? all.slice(0, cut - 8) : all;
      const line = [...some.slice(0, at), edge, ...some.slice(at)].join(' ');
      return cased ? line.toUpperCase() : line;
    });

/** Raw text, and one piece repeated many times over. */
export const rawText: fc.Arbitrary<string> = fc.oneof(
  { weight: 6, arbitrary: fc.string({ unit: 'binary', maxLength: 120 }) },
  { weight: 3, arbitrary: fc.string({ maxLength: 120 }) },
  {
    weight: 1,
    arbitrary: fc
      .tuple(fc.oneof(edges, fc.constantFrom('1 lb ', 'and ', 'if ', '"', '- ', 'lost 1 ')), fc.nat(150))
      .map(([piece, times]) => piece.repeat(times)),
  },
);

/** Times calls and keeps the longest, in milliseconds. */
export const slowest = () => {
  let worst = 0;
  const keep = (began: number): void => {
    worst = Math.max(worst, performance.now() - began);
  };
  return {
    time: <T>(call: () => T): T => {
      const began = performance.now();
      const result = call();
      keep(began);
      return result;
    },
    timeLong: async <T>(call: () => Promise<T>): Promise<T> => {
      const began = performance.now();
      const result = await call();
      keep(began);
      return result;
    },
    worst: (): number => worst,
  };
};
