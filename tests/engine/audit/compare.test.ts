/** The same question at two moments over the shipped rules: every sort of cause, proved by asking again without it. */
import { describe, expect, test } from 'vitest';
import { type Engine, openText, printOf } from '../../../engine/index.ts';
import type { Cause, Comparison, Moment, Rulebook } from '../../../engine/types.ts';
import { ask, flockOf, type Line, shipped } from '../../helpers/flock-of.ts';

const written = (day: string, hour = '07'): string => `${day}T${hour}:00:00+00:00`;
const monday = '2026-05-25';
const tuesday = '2026-05-26';

const at = (on: string, lines: number | null = null): Moment => ({ on, asOf: null, lines });

const place: readonly Line[] = [
  { kind: 'setting', on: '2026-04-28', what: 'brooder', value: '5 ft x 8 ft' },
  { kind: 'setting', on: '2026-04-28', what: 'pen', value: '10 ft x 12 ft' },
  { kind: 'setting', on: '2026-04-28', what: 'pen-cover', value: true },
  {
    kind: 'arrive',
    on: '2026-04-28',
    group: 'whites',
    count: 40,
    dead: 0,
    bird: 'fast',
    hatched: '2026-04-27',
  },
  { kind: 'sign', on: '2026-05-20', group: 'whites', sign: 'feathered', words: 'feathered' },
  { kind: 'sign', on: '2026-05-18', group: 'whites', sign: 'heat-off', words: 'heat off' },
];
const night = (on: string, low: string, day = monday): Line => ({
  kind: 'weather',
  on,
  low,
  forecast: true,
  written: written(day),
});
const warm = [
  night(monday, '60 F'),
  night(tuesday, '60 F'),
  night('2026-05-27', '60 F'),
  night('2026-05-28', '60 F'),
];

/** Compares a question on two moments of one flock; only verdicts unless more is wanted. */
const between = (
  engine: Engine,
  question: string,
  then: Moment,
  now: Moment,
  what: readonly string[] = ['verdict'],
): Promise<Comparison> =>
  engine
    .audit(null)
    .compare(
      { question, groups: [], moment: now, until: null, supposing: [] },
      { moment: then, advice: null },
      { counts: (each) => what.includes(each.what) },
    );

const told = ({ differences }: Comparison) =>
  differences.map(({ group, from, to, causes }) => [
    group,
    from,
    to,
    causes.map((cause) => (cause.kind === 'entry' ? `${cause.how} ${cause.line}` : cause.kind)),
  ]);

describe('one cause', () => {
  test('a forecast', async () => {
    const flock = flockOf(...place, ...warm, night('2026-05-28', '30 F', tuesday));
    const found = await between(flock, 'go-out', at(tuesday, 10), at(tuesday, 11));
    expect(told(found)).toEqual([['whites', 'yes', 'no', ['forecast 11']]]);
  });

  test('a correction, and that it was taken back', async () => {
    const cold = { ...warm[1], low: '30 F' };
    const lines: readonly Line[] = [...place, ...warm.slice(0, 1), cold, ...warm.slice(2)];
    const raw = JSON.stringify(cold);
    const correct = { kind: 'correct', on: tuesday, line: 8, print: printOf(raw), with: { low: '60 F' } };
    const undo = { kind: 'undo', on: tuesday, line: 11, print: printOf(JSON.stringify(correct)) };
    const flock = flockOf(...lines, correct, undo);
    expect(told(await between(flock, 'go-out', at(tuesday, 10), at(tuesday, 11)))).toEqual([
      ['whites', 'no', 'yes', ['corrected 11']],
    ]);
    expect(told(await between(flock, 'go-out', at(tuesday, 11), at(tuesday, 12)))).toEqual([
      ['whites', 'yes', 'no', ['undone 12']],
    ]);
    expect(told(await between(flock, 'go-out', at(tuesday, 10), at(tuesday, 12)))).toEqual([]);
  });

  test('a figure of the keeper’s own', async () => {
    const own = {
      kind: 'figure',
      on: tuesday,
      figure: 'pasture/hardening-days',
      value: '20 day',
      reason: 'last year they caught cold',
    };
    const flock = flockOf(...place, ...warm, own);
    expect(told(await between(flock, 'go-out', at(tuesday, 10), at(tuesday, 11)))).toEqual([
      ['whites', 'yes', 'no', ['own-figure 11']],
    ]);
  });

  test('days that went by', async () => {
    const flock = flockOf(...place, ...warm, night('2026-05-22', '60 F', '2026-05-22'));
    const found = await between(flock, 'go-out', at('2026-05-22', 11), at(monday, 11));
    expect(told(found)).toEqual([['whites', 'no', 'yes', ['days']]]);
  });

  test('a dated value of a figure that came into force', async () => {
    const figure = shipped.figures['pasture/hardening-days'];
    const [first] = figure?.values ?? [];
    if (figure === undefined || first === undefined) throw new Error('no figure');
    const values = [first, { ...first, from: tuesday, value: 20 }];
    const book = { ...shipped, figures: { ...shipped.figures, [figure.id]: { ...figure, values } } };
    const text = [...place, ...warm].map((line) => `${JSON.stringify(line)}\n`).join('');
    const flock = openText(book, 'flock.jsonl', text);
    const found = await between(flock, 'go-out', at(monday), at(tuesday));
    // Going back a day would undo it as well, as the figure would not be in force yet.
    expect([
      told(found),
      found.differences[0]?.effects.map(({ cause, isUndone }) => [cause.kind, isUndone]),
    ]).toEqual([
      [['whites', 'yes', 'no', ['figure']]],
      [
        ['figure', true],
        ['days', true],
      ],
    ]);
  });
});

test('a cause that another hides is found with it', async () => {
  const flock = flockOf(
    ...place,
    ...warm,
    night('2026-05-27', '30 F', tuesday),
    night('2026-05-28', '30 F', tuesday),
  );
  const found = await between(flock, 'go-out', at(tuesday, 10), at(tuesday, 12));
  expect(told(found)).toEqual([['whites', 'yes', 'no', ['forecast 12', 'forecast 11']]]);
});

test('an amount: what each cause moves, and the first day that moves with the nights', async () => {
  const loss = {
    kind: 'loss',
    on: tuesday,
    group: 'whites',
    count: 4,
    cause: 'hawk',
    written: written(tuesday),
  };
  const flock = flockOf(...place, ...warm, loss);
  const { differences, after, before } = await between(flock, 'headcount', at(monday, 10), at(tuesday, 11), [
    'result',
  ]);
  expect(
    differences.map(({ id, from, to, size, causes, effects }) => [
      [id, from, to, size],
      causes.map(({ kind }) => kind),
      effects.map(({ cause, without }) => [cause.kind, without]),
    ]),
  ).toEqual([
    [
      ['alive', 40, 36, -4],
      ['entry'],
      [
        ['entry', 40],
        ['days', 40],
      ],
    ],
    [
      ['lost', 0, 4, 4],
      ['entry'],
      [
        ['entry', 0],
        ['days', 0],
      ],
    ],
    [['age', 28, 29, 1], ['days'], [['days', 28]]],
  ]);
  expect([before.length, after.length]).toEqual([5, 5]);
});

describe('rules', () => {
  const figure = shipped.figures['pasture/hardening-days'];
  const stricter: Rulebook = {
    ...shipped,
    hash: 'abcdef01',
    figures:
      figure === undefined
        ? {}
        : {
            ...shipped.figures,
            [figure.id]: { ...figure, values: figure.values.map((each) => ({ ...each, value: 20 })) },
          },
  };
  const text = [...place, ...warm].map((line) => `${JSON.stringify(line)}\n`).join('');

  test('of then that are not at hand leave the log to go by, and that is said', async () => {
    const flock = openText(stricter, 'flock.jsonl', text);
    const said = await ask(openText(shipped, 'flock.jsonl', text), 'go-out', monday);
    const advice = {
      at: written(monday),
      asked: 'can they go out',
      request: { ...said.request, moment: at(monday, 10) },
      rules: shipped.hash,
      print: printOf(text.trimEnd()),
      ref: said.ref,
      parts: said.parts,
      results: said.results,
    };
    const found = await flock
      .audit(null)
      .compare({ ...said.request, moment: at(monday) }, { moment: at(monday, 10), advice });
    expect([found.doubt, found.was, told(found)]).toEqual([
      'rules-not-kept',
      null,
      [
        ['whites', 'yes', 'no', []],
        ['whites', 'at once', '2026-06-07', []],
      ],
    ]);
  });

  test.each([
    ['program-changed', printOf(text.trimEnd())],
    ['file-edited', '00000000'],
  ])('where the log says otherwise than a replay does: %s', async (doubt, print) => {
    const flock = openText(shipped, 'flock.jsonl', text);
    const said = await ask(flock, 'go-out', monday);
    const advice = {
      at: written(monday),
      asked: 'can they go out',
      request: { ...said.request, moment: at(monday, 10) },
      rules: shipped.hash,
      print,
      ref: said.ref,
      parts: said.parts.map((part) => ({ ...part, verdict: 'no' as const })),
      results: said.results,
    };
    const found = await flock
      .audit(null)
      .compare({ ...said.request, moment: at(monday) }, { moment: at(monday, 10), advice });
    expect([found.doubt, told(found)]).toEqual([doubt, [['whites', 'no', 'yes', []]]]);
  });
});

test('a round: which tasks came and went, each with its cause', async () => {
  const flock = flockOf(...place, ...warm, {
    kind: 'out',
    on: monday,
    group: 'whites',
    written: written(monday, '09'),
  });
  const { differences, replays } = await between(flock, 'today', at(monday, 10), at(monday, 11), ['task']);
  const gone = differences.filter(({ to }) => to === null).map(({ id }) => id);
  const causes: readonly Cause[] = differences.flatMap((each) => each.causes);
  expect([gone.includes('go-out/may-go'), [...new Set(causes.map(({ kind }) => kind))]]).toEqual([
    true,
    ['entry'],
  ]);
  expect(replays).toBe(3);
});

test('the ledger is as long as it likes: among a hundred new lines the decisive one takes few replays', async () => {
  const feed = (n: number): Line => ({
    kind: 'feed',
    on: monday,
    group: 'whites',
    amount: `${n % 3} lb`,
    written: written(monday, '08'),
  });
  const many = Array.from({ length: 100 }, (_, n) => feed(n + 1));
  const flock = flockOf(...place, ...warm, ...many, night('2026-05-26', '30 F'), ...many);
  const found = await between(flock, 'go-out', at(monday, 10), at(monday));
  expect([told(found), found.replays < 12]).toEqual([[['whites', 'yes', 'no', ['forecast 111']]], true]);
});
