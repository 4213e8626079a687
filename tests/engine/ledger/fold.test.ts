/** Folding to a moment: two clocks, undo and correction, and an order that only the day and the line decide. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkLedger, foldTo, lineOf, type NewEntry } from '../../../engine/ledger/index.ts';
import type { Moment } from '../../../engine/types.ts';
import {
  book,
  correctionOf,
  type Line,
  ledgerOf,
  measure,
  reds,
  stateOf,
  textOf,
  undoOf,
  whites,
} from '../../helpers/ledger-of.ts';

const everything: Moment = { on: '2026-11-25', asOf: null, lines: null };
const loss = (count: number, more: object = {}): NewEntry => ({
  kind: 'loss',
  on: '2026-05-02',
  group: 'whites',
  count,
  ...more,
});
const problemsOf = (...lines: readonly Line[]) => {
  const ledger = ledgerOf(...lines);
  return [...foldTo(ledger, everything, book).problems, ...checkLedger(ledger, everything, book, measure())];
};
const lossesOf = (moment: Partial<Moment>, ...lines: readonly Line[]) =>
  foldTo(ledgerOf(...lines), { ...everything, ...moment }, book).state.groups[0]?.losses.map(
    ({ count }) => count,
  );

describe('moments', () => {
  const lines = [
    whites,
    loss(1, { on: '2026-05-01', written: '2026-05-01T08:00:00-04:00' }),
    loss(2, { on: '2026-04-30', written: '2026-05-03T08:00:00-04:00' }),
    loss(3, { on: '2026-05-04' }),
  ];

  it('adds up by the day asked about', () => {
    expect(lossesOf({ on: '2026-04-30' }, ...lines)).toEqual([2]);
    expect(lossesOf({ on: '2026-05-01' }, ...lines)).toEqual([2, 1]);
    expect(lossesOf({}, ...lines)).toEqual([2, 1, 3]);
  });

  it('believes only what was written by a day, or stands on the first lines', () => {
    expect(lossesOf({ asOf: '2026-05-02' }, ...lines)).toEqual([1]);
    expect(lossesOf({ asOf: '2026-05-03' }, ...lines)).toEqual([2, 1]);
    expect(lossesOf({ asOf: '2026-05-04' }, ...lines)).toEqual([2, 1, 3]);
    expect(lossesOf({ lines: 2 }, ...lines)).toEqual([1]);
  });

  it('says how many lines are believed', () => {
    const believed = (moment: Partial<Moment>) =>
      foldTo(ledgerOf(...lines), { ...everything, ...moment }, book).state.lines;
    expect([
      believed({}),
      believed({ lines: 2 }),
      believed({ lines: 9 }),
      believed({ asOf: '2026-05-02' }),
      believed({ asOf: '2026-01-01' }),
    ]).toEqual([4, 2, 4, 2, 0]);
  });

  it('keeps weather of days to come, and nothing else of them', () => {
    const ahead = ledgerOf(
      { kind: 'weather', on: '2026-05-09', low: '4 C', forecast: true },
      { kind: 'note', on: '2026-05-09', words: 'x' },
    );
    const state = stateOf(ahead, '2026-05-08');
    expect([Object.keys(state.weather), state.notes]).toEqual([['2026-05-09'], []]);
  });

  it('counts a loss told before the arrival of the same day', () => {
    expect(lossesOf({}, loss(1, { on: '2026-04-09' }), whites)).toEqual([1]);
  });
});

describe('undo', () => {
  it('takes a line back, and an undo of the undo restores it', () => {
    const undo = undoOf(2, loss(2));
    const again = undoOf(3, undo);
    expect(lossesOf({}, whites, loss(2), undo)).toEqual([]);
    expect(lossesOf({}, whites, loss(2), undo, again)).toEqual([2]);
    expect(lossesOf({}, whites, loss(2), undo, again, undoOf(4, again))).toEqual([]);
    expect(lossesOf({ lines: 3 }, whites, loss(2), undo, again)).toEqual([]);
  });

  it('takes back a broken line with its problems', () => {
    const broken = '{"kind":"loss","on":"2026-05-02" "group":"whites"}';
    expect(problemsOf(whites, broken).map(({ code }) => code)).toEqual(['not-json']);
    expect(problemsOf(whites, broken, undoOf(2, broken))).toEqual([]);
  });

  it('that does not fit its line changes nothing', () => {
    expect(lossesOf({}, whites, loss(2), undoOf(2, loss(3)))).toEqual([2]);
  });
});

describe('correct', () => {
  it('replaces fields, the day among them; null takes one away; later corrections win', () => {
    const first = correctionOf(2, loss(2, { cause: 'hawk' }), { count: 3, on: '2026-05-01' });
    const second = correctionOf(2, loss(2, { cause: 'hawk' }), { count: 4, cause: null });
    const losses = (...lines: readonly Line[]) =>
      stateOf(ledgerOf(whites, loss(2, { cause: 'hawk' }), ...lines)).groups[0]?.losses;
    expect(losses(first)).toEqual([{ on: '2026-05-01', line: 2, count: 3, cause: 'hawk' }]);
    expect(losses(first, second)).toEqual([{ on: '2026-05-01', line: 2, count: 4, cause: 'unknown' }]);
    expect(losses(first, second, undoOf(4, second))).toEqual([
      { on: '2026-05-01', line: 2, count: 3, cause: 'hawk' },
    ]);
  });

  it('puts a broken line right', () => {
    const broken = '{"kind":"loss","on":"2026-05-02","group":"whites","count":"two"}';
    expect(problemsOf(whites, broken).map(({ code }) => code)).toEqual(['wrong-type']);
    expect(problemsOf(whites, broken, correctionOf(2, broken, { count: 2 }))).toEqual([]);
    expect(lossesOf({}, whites, broken, correctionOf(2, broken, { count: 2 }))).toEqual([2]);
  });

  it('that is wrong itself is shown where it was told', () => {
    const [bad, ...others] = problemsOf(whites, loss(2), correctionOf(2, loss(2), { count: -1 }));
    expect(others).toEqual([]);
    expect([bad?.code, bad?.at.line, bad?.raw.slice((bad?.at.column ?? 0) - 1)]).toEqual([
      'out-of-range',
      3,
      '-1}}',
    ]);
    const [many] = problemsOf(whites, loss(2), correctionOf(2, loss(2), { count: 60 }));
    expect([many?.code, many?.at.line, many?.data.max]).toEqual(['more-than-alive', 3, 51]);
  });

  it('cannot make a line another kind of line, or told at another time', () => {
    const problems = problemsOf(
      whites,
      loss(2),
      correctionOf(2, loss(2), { kind: 'feed', written: '2026-05-02T07:12:00Z' }),
    );
    expect(problems.map(({ code, data }) => [code, data])).toEqual([
      ['unknown-field', { field: 'with.kind' }],
      ['unknown-field', { field: 'with.written' }],
    ]);
  });
});

describe('a broken arrival', () => {
  it('is one problem, not one for each entry of its group', () => {
    const broken = lineOf({ ...whites, hatched: 'tuesday' });
    expect(problemsOf(broken, loss(2), loss(1)).map(({ code }) => code)).toEqual(['bad-day']);
  });
});

describe('order', () => {
  const days = ['2026-05-01', '2026-05-02', '2026-05-03'];

  it('does not depend on where unrelated lines stand', () => {
    const ours = [loss(1, { on: days[0] }), loss(2, { on: days[2] }), loss(3, { on: days[1] })];
    const other = fc.record({
      kind: fc.constant('feed'),
      on: fc.constantFrom(...days),
      amount: fc.constant('5 kg'),
      group: fc.constant('reds'),
    });
    const strip = (found: ReturnType<typeof stateOf>) =>
      found.groups.find(({ name }) => name === 'whites')?.losses.map(({ on, count }) => [on, count]);
    const alone = strip(stateOf(ledgerOf(whites, ...ours)));
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.nat({ max: 4 }), other), { maxLength: 12 }), (others) => {
        const lines: NewEntry[] = [whites, ...ours];
        for (const [at, entry] of others) lines.splice(at, 0, entry);
        expect(strip(stateOf(ledgerOf(reds, ...lines)))).toEqual(alone);
      }),
    );
  });

  it('gives the same state after any entry is undone and the undo undone', () => {
    const lines: NewEntry[] = [
      whites,
      reds,
      loss(1),
      loss(2),
      { kind: 'feed', on: '2026-05-02', amount: '5 kg' },
    ];
    const before = stateOf(ledgerOf(...lines));
    fc.assert(
      fc.property(fc.nat({ max: lines.length - 1 }), (index) => {
        const undo = undoOf(index + 1, lines[index] ?? whites);
        const after = stateOf(ledgerOf(...lines, undo, undoOf(lines.length + 1, undo)));
        expect({ ...after, lines: 0 }).toEqual({ ...before, lines: 0 });
      }),
    );
  });
});

describe('damage', () => {
  it('of any byte never throws and never loses another line', () => {
    const lines = [whites, loss(2), undoOf(2, loss(2)), correctionOf(1, whites, { count: 50 }), reds];
    const text = textOf(...lines);
    fc.assert(
      fc.property(fc.nat({ max: text.length - 1 }), fc.integer({ min: 0, max: 255 }), (at, byte) => {
        const bytes = Buffer.from(text);
        bytes[at] = byte;
        const damaged = bytes
          .toString('utf8')
          .split('\n')
          .filter((line) => line !== '');
        const ledger = ledgerOf(...damaged);
        foldTo(ledger, everything, book);
        checkLedger(ledger, everything, book, measure());
        const whole = damaged.filter((line) => lines.some((each) => lineOf(each) === line));
        expect(ledger.entries.map(({ raw }) => raw)).toEqual(expect.arrayContaining(whole));
      }),
      { numRuns: 500 },
    );
  });

  it('of lines that are any JSON at all never throws', () => {
    const value = fc.oneof(
      fc.jsonValue(),
      fc.constantFrom(1, -1, 1e300, '', '__proto__', '2026-05-02', '5 kg', 'whites'),
    );
    const name = fc.constantFrom(
      'on',
      'group',
      'count',
      'line',
      'print',
      'with',
      'weights',
      'what',
      'value',
      '__proto__',
      'written',
      'constructor',
    );
    const kind = fc.constantFrom(
      'arrive',
      'loss',
      'undo',
      'correct',
      'setting',
      'weigh',
      'figure',
      '__proto__',
      'toString',
    );
    const line = fc
      .tuple(kind, fc.dictionary(name, value))
      .map(([each, fields]) => JSON.stringify({ kind: each, on: '2026-05-02', ...fields }));
    fc.assert(
      fc.property(fc.array(line, { maxLength: 6 }), (lines) => {
        const ledger = ledgerOf(...lines);
        const { state, problems } = foldTo(ledger, everything, book);
        checkLedger(ledger, everything, book, measure());
        expect(state.lines).toBe(lines.length);
        const spoken = new Set([
          ...ledger.entries.map((each) => each.line),
          ...problems.map(({ at }) => at.line),
        ]);
        expect(spoken.size).toBe(lines.length);
      }),
      { numRuns: 500 },
    );
  });
});
