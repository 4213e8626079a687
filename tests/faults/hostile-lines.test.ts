/** Ledger lines that nobody would write: read, added up and checked without an error, and never believed beyond what they say. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { kinds, openText } from '../../engine/index.ts';
import { shipped } from '../helpers/flock-of.ts';
import { isFull, often, patience, tell } from './extent.ts';
import { lineOfJson, slowest } from './hostile.ts';

const whites =
  '{"kind":"arrive","on":"2026-04-09","group":"whites","count":52,"dead":1,"bird":"fast","hatched":"2026-04-07"}';
const moment = { on: '2026-05-14', asOf: null, lines: null };

/** What is believed of the whites beside such a line, and how many problems the line has. */
const readBeside = (line: string) => {
  const engine = openText(shipped, 'flock.jsonl', `${whites}\n${line}\n`);
  const problems = engine.check(moment.on);
  return { state: engine.state(moment), entries: engine.standing(), problems };
};

test(
  'lines drawn from the words of the ledger, and raw ones',
  () => {
    const times = often(500, 100_000);
    const lines = fc.sample(
      fc.oneof(
        lineOfJson(kinds.map(({ kind, fields }) => ({ kind, fields: fields.map(({ name }) => name) }))),
        fc.string({ unit: 'binary', maxLength: 200 }),
        fc.json(),
      ),
      times,
    );
    let refused = 0;
    const took = slowest();
    for (const line of lines) {
      const { entries, problems, state } = took.time(() => readBeside(line));
      // The line before is whole and stays believed, unless an undo or a correction with its print is drawn, which is not to be had by chance.
      expect([entries[0]?.raw, state.groups[0]?.name]).toEqual([whites, 'whites']);
      if (problems.length > 0) refused += 1;
    }
    if (isFull) expect(took.worst()).toBeLessThan(100);
    tell({
      what: 'ledger lines',
      times,
      lost: 0,
      note: `${refused} named as wrong, slowest ${took.worst().toFixed(1)} ms`,
    });
  },
  patience,
);

test.each([
  [
    'a name that all objects have',
    '{"kind":"note","on":"2026-05-01","words":"x","__proto__":{"count":1}}',
    ['unknown-field'],
  ],
  ['a kind that all objects have', '{"kind":"constructor","on":"2026-05-01"}', ['unknown-kind']],
  [
    'a setting of such a name',
    '{"kind":"setting","on":"2026-05-01","what":"__proto__","value":"pen"}',
    ['unknown-choice'],
  ],
  [
    'a figure of such a name',
    '{"kind":"figure","on":"2026-05-01","figure":"__proto__","value":"1 lb"}',
    ['unknown-choice'],
  ],
  [
    'the same key twice',
    '{"kind":"loss","on":"2026-05-01","group":"whites","count":1,"count":2}',
    ['duplicate-key'],
  ],
  [
    'more than any number',
    '{"kind":"loss","on":"2026-05-01","group":"whites","count":1e999}',
    ['wrong-type'],
  ],
  ['no number', '{"kind":"loss","on":"2026-05-01","group":"whites","count":NaN}', ['not-json']],
  [
    'a number beyond counting',
    '{"kind":"loss","on":"2026-05-01","group":"whites","count":90071992547409930}',
    ['out-of-range'],
  ],
  ['a hundred thousand brackets', '['.repeat(100_000), ['not-json']],
  ['as many, closed', `${'['.repeat(100_000)}${']'.repeat(100_000)}`, ['not-an-object']],
  [
    'as many inside a field',
    `{"kind":"note","on":"2026-05-01","words":${'['.repeat(50_000)}${']'.repeat(50_000)}}`,
    ['wrong-type'],
  ],
  [
    'a megabyte of digits',
    `{"kind":"loss","on":"2026-05-01","group":"whites","count":${'9'.repeat(1_000_000)}}`,
    ['wrong-type'],
  ],
  [
    'marks that turn the writing',
    '{"kind":"note","on":"2026-05-01","words":"a\\u061cb"}',
    ['control-characters'],
  ],
])('%s', (_name, line, codes) => {
  const { problems, entries } = readBeside(line);
  expect([problems.map(({ code }) => code), entries.map(({ raw }) => raw)]).toEqual([codes, [whites]]);
  expect(Object.keys(Object.prototype)).toEqual([]);
});

test('a loss of a group with a name that all objects have is read, named, and taken from nobody', () => {
  const { problems, state } = readBeside('{"kind":"loss","on":"2026-05-01","group":"__proto__","count":1}');
  expect(problems.map(({ code, at }) => [code, at.line])).toEqual([['unknown-group', 2]]);
  expect(state.groups.map(({ name, losses }) => [name, losses])).toEqual([['whites', []]]);
});
