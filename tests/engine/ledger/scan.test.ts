/** The scanner finds every value where it stands, and agrees with JSON.parse on what is JSON. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { scanLine } from '../../../engine/ledger/scan.ts';

const isJson = (text: string): boolean => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};

/** What stands at each path, key and value. */
const found = (raw: string): Record<string, readonly [key: string | null, value: string]> => {
  const scan = scanLine(raw);
  if (!scan.ok) throw new Error(`stopped at ${scan.at}`);
  const cut = (span: { at: number; length: number }): string => raw.slice(span.at, span.at + span.length);
  return Object.fromEntries(
    [...scan.parts].map(([path, { key, value }]) => [path, [key === null ? null : cut(key), cut(value)]]),
  );
};

describe('scanLine', () => {
  it('finds keys and values by path, with the spaces around them left out', () => {
    expect(found(' {"kind" : "weigh","weights":["3 lb", "4 lb"], "with":{"n":-1.5e3,"w":[true]}} ')).toEqual({
      '': [null, '{"kind" : "weigh","weights":["3 lb", "4 lb"], "with":{"n":-1.5e3,"w":[true]}}'],
      kind: ['"kind"', '"weigh"'],
      weights: ['"weights"', '["3 lb", "4 lb"]'],
      'weights.0': [null, '"3 lb"'],
      'weights.1': [null, '"4 lb"'],
      with: ['"with"', '{"n":-1.5e3,"w":[true]}'],
      'with.n': ['"n"', '-1.5e3'],
      'with.w': ['"w"', '[true]'],
      'with.w.0': [null, 'true'],
    });
  });

  it('reads keys with escapes, and finds the later of two equal ones', () => {
    expect(scanLine('{"a":1,"\\u0061":2}')).toMatchObject({ ok: true, duplicates: ['a'] });
    expect(found('{"a":1,"\\u0061":2}').a).toEqual(['"\\u0061"', '2']);
  });

  it('tells a line that was cut off from one that is wrong', () => {
    const whole = '{"kind":"loss","n":[12.5,-1e2,true,null],"w":"a\\u00e9 \\"b\\""}';
    for (let length = 1; length < whole.length; length += 1) {
      const cut = whole.slice(0, length);
      expect(scanLine(cut), cut).toEqual({ ok: false, at: length, unfinished: true });
    }
    expect(scanLine('{"a":1,,}')).toEqual({ ok: false, at: 7, unfinished: false });
    expect(scanLine('{"a":01}')).toEqual({ ok: false, at: 5, unfinished: false });
    expect(scanLine('{"a":"\t"}')).toEqual({ ok: false, at: 6, unfinished: false });
    expect(scanLine('{"a":"\\x"}')).toEqual({ ok: false, at: 6, unfinished: false });
    expect(scanLine('{"a":1} x')).toEqual({ ok: false, at: 8, unfinished: false });
    expect(scanLine('{"a":NaN}')).toEqual({ ok: false, at: 5, unfinished: false });
    expect(scanLine('{"a":1]')).toEqual({ ok: false, at: 6, unfinished: false });
  });

  it('agrees with JSON.parse on every text, whole or damaged', () => {
    const damaged = fc
      .tuple(
        fc.json(),
        fc.nat(),
        fc.constantFrom(
          '',
          '"',
          '\\',
          '{',
          '}',
          '[',
          ']',
          ',',
          ':',
          '0',
          '-',
          '.',
          'e',
          ' ',
          'u',
          '\n',
          '\u0000',
        ),
      )
      .map(([json, at, letter]) => {
        const place = at % (json.length + 1);
        return json.slice(0, place) + letter + json.slice(place + 1);
      });
    fc.assert(
      fc.property(fc.oneof(fc.json(), fc.string(), damaged), (text) => {
        expect(scanLine(text).ok).toBe(isJson(text));
      }),
      { numRuns: 2000 },
    );
  });

  it('finds values that parse to what JSON.parse gives', () => {
    fc.assert(
      fc.property(
        fc.dictionary(fc.stringMatching(/^[a-z]{1,5}$/), fc.jsonValue({ maxDepth: 1 })),
        (record) => {
          const parts = found(JSON.stringify(record, null, 1));
          for (const [name, value] of Object.entries(record)) {
            expect(JSON.parse(parts[name]?.[1] ?? '')).toEqual(JSON.parse(JSON.stringify(value)));
          }
        },
      ),
    );
  });

  it('bears a line nested a hundred thousand deep', () => {
    const deep = '['.repeat(100_000) + ']'.repeat(100_000);
    expect(scanLine(deep).ok).toBe(true);
    expect(scanLine(deep.slice(0, -1))).toEqual({ ok: false, at: deep.length - 1, unfinished: true });
  });
});
