/** What has changed in words: every sort of cause, and a comparison from the claim to the doubt. */
import { describe, expect, test } from 'vitest';
import { sayCause } from '../../../cli/say/cause.ts';
import { sayChanged } from '../../../cli/say/changed.ts';
import { changedAsJson } from '../../../cli/say/changed-as-json.ts';
import { readOut } from '../../../cli/say/read-out.ts';
import type { Speech } from '../../../cli/say/speech.ts';
import type { Answer, Cause, Comparison, Explained } from '../../../engine/types.ts';
import { shipped } from '../../helpers/flock-of.ts';

const speech: Speech = { book: shipped, system: 'us', currency: '$', today: '2026-05-14' };
const lines = [
  '{"kind":"loss","on":"2026-05-13","group":"reds","count":2,"cause":"hawk"}',
  '{"kind":"weather","on":"2026-05-15","low":"38 F","forecast":true}',
  'cut off {',
];
const entry = (line: number, more: Partial<Extract<Cause, { kind: 'entry' }>> = {}): Cause => ({
  kind: 'entry',
  line,
  entry: 'loss',
  on: '2026-05-13',
  how: 'told',
  of: null,
  ...more,
});
const days: Cause = { kind: 'days', from: '2026-05-11', to: '2026-05-14' };

describe('a cause', () => {
  test.each<[Cause, string]>([
    [entry(1), 'line 1 was told, "2 reds lost, cause hawk, on Wednesday 13 May"'],
    [
      entry(2, { entry: 'weather', how: 'forecast' }),
      'the weather was foretold on line 2, "Low 38 °F, as forecast, on Friday 15 May"',
    ],
    [
      entry(9, { entry: 'correct', how: 'corrected', of: 1 }),
      'line 1 was put right on line 9, "2 reds lost, cause hawk, on Wednesday 13 May"',
    ],
    [
      entry(9, { entry: 'undo', how: 'undone', of: 1 }),
      'line 1 was taken back on line 9, "2 reds lost, cause hawk, on Wednesday 13 May"',
    ],
    [entry(3), 'line 3 was told'],
    [
      { kind: 'figure', figure: 'feed/bag', from: '2026-05-12' },
      'the figure feed/bag has another value since Tuesday 12 May',
    ],
    [{ kind: 'rules', from: 'a', to: 'b' }, 'the rules themselves have changed'],
    [{ kind: 'days', from: '2026-05-13', to: '2026-05-14' }, 'a day has passed'],
    [days, '3 days have passed'],
  ])('%j', (cause, says) => {
    expect(sayCause(speech, lines, cause)).toBe(says);
  });
});

const cold = entry(2, { entry: 'weather', how: 'forecast' });
const lost = entry(1);
const verdict: Explained = {
  what: 'verdict',
  id: 'verdict',
  fact: null,
  group: 'reds',
  from: 'yes',
  to: 'no',
  unit: null,
  size: null,
  causes: [cold],
  effects: [
    { cause: cold, without: 'yes', isUndone: true },
    { cause: days, without: 'yes', isUndone: true },
    { cause: lost, without: 'cannot-say', isUndone: false },
  ],
};
const amount: Explained = {
  what: 'result',
  id: 'alive',
  fact: 'alive',
  group: 'reds',
  from: 25,
  to: 22,
  unit: 'bird',
  size: -3,
  causes: [lost, days],
  effects: [
    { cause: lost, without: 24, isUndone: false },
    { cause: days, without: 23, isUndone: false },
  ],
};

const comparison = (more: Partial<Comparison>): Comparison => ({
  question: 'go-out',
  earlier: { on: '2026-05-11', asOf: null, lines: 1 },
  later: { on: '2026-05-14', asOf: null, lines: null },
  before: [],
  after: [],
  was: null,
  is: { parts: [] as Answer['parts'] } as Answer,
  differences: [],
  doubt: null,
  replays: 0,
  ...more,
});

const say = (of: Comparison, wasSaid = true): readonly string[] =>
  sayChanged(speech, of, { lines, wasSaid }).map(readOut);

describe('a comparison', () => {
  test('of a verdict that was given: what it was, why, and what else would have kept it so', () => {
    expect(say(comparison({ differences: [verdict] }))).toEqual([
      'On Monday 11 May I said yes for the reds; now it is no.',
      '1. Because the weather was foretold on line 2, "Low 38 °F, as forecast, on Friday 15 May". Without that: yes.',
      'It would be so again without this, too: 3 days have passed.',
    ]);
  });

  test.each([
    ['yes', 'no', false, 'By what was known on Monday 11 May it was yes for the reds; now it is no.'],
    ['cannot-say', 'yes', true, 'On Monday 11 May I could not say for the reds; now it is yes.'],
    [
      'cannot-say',
      'yes',
      false,
      'By what was known on Monday 11 May I could not have said for the reds; now it is yes.',
    ],
    ['yes', 'cannot-say', true, 'On Monday 11 May I said yes for the reds; now I cannot say.'],
    [
      null,
      'yes',
      false,
      'By what was known on Monday 11 May it was no question for the reds; now it is yes.',
    ],
  ])('from %s to %s, said: %s', (from, to, wasSaid, says) => {
    expect(say(comparison({ differences: [{ ...verdict, from, to }] }), wasSaid)[0]).toBe(says);
  });

  test('of an amount that two causes moved together, with what each did', () => {
    expect(say(comparison({ question: 'headcount', differences: [amount] }))).toEqual([
      'Birds alive for the reds: 25 birds then, 22 birds now.',
      '1. Because of these together: line 1 was told, "2 reds lost, cause hawk, on Wednesday 13 May" and 3 days have passed. Without all of them: 25 birds.',
      'One by one: line 1 was told, "2 reds lost, cause hawk, on Wednesday 13 May" (24 birds without it); 3 days have passed (23 birds without it).',
    ]);
  });

  test('tells differences with the same cause together, and leaves out what cannot be seen', () => {
    const told = [
      verdict,
      { ...verdict, group: 'whites' },
      { ...amount, from: 22.001, to: 22, causes: verdict.causes },
    ];
    expect(say(comparison({ differences: told }))).toEqual([
      'On Monday 11 May I said yes for the reds; now it is no.',
      'On Monday 11 May I said yes for the whites; now it is no.',
      '1. Because the weather was foretold on line 2, "Low 38 °F, as forecast, on Friday 15 May". Without that: yes.',
      'It would be so again without this, too: 3 days have passed.',
    ]);
  });

  test('beside a verdict, other results are only mentioned', () => {
    const is = { parts: [{ group: 'reds', verdict: 'yes', headline: null }] } as unknown as Answer;
    expect(say(comparison({ is, differences: [amount] }))).toEqual([
      'Still yes for the reds.',
      'Also: birds alive for the reds 25 birds then and 22 birds now.',
    ]);
  });

  test('with nothing different says nothing', () => {
    expect(say(comparison({}))).toEqual([]);
  });

  test.each([
    [
      'rules-not-kept',
      'Careful: The rules of then are not at hand: what they had to do with it cannot be proved.',
    ],
    ['program-changed', 'Careful: The program itself works this out otherwise than it did then.'],
    ['file-edited', 'Careful: Lines of the flock file that were there then have been edited since.'],
  ] as const)('that could not be replayed in full says so: %s', (doubt, says) => {
    const unexplained = { ...verdict, causes: [], effects: [] };
    expect(say(comparison({ doubt, differences: [unexplained] }))).toEqual([
      'On Monday 11 May I said yes for the reds; now it is no.',
      says,
    ]);
  });
});

test('as data, nothing is left out', () => {
  expect(changedAsJson(speech, lines, comparison({ differences: [amount] }))).toEqual({
    question: 'go-out',
    since: '2026-05-11',
    'since-line': 1,
    on: '2026-05-14',
    differences: [
      {
        what: 'result',
        id: 'alive',
        group: 'reds',
        from: 25,
        to: 22,
        unit: 'bird',
        days: null,
        causes: [
          { ...entry(1), says: 'line 1 was told, "2 reds lost, cause hawk, on Wednesday 13 May"' },
          { ...days, says: '3 days have passed' },
        ],
        tried: [
          { ...entry(1), without: 24, undoes: false },
          { ...days, without: 23, undoes: false },
        ],
      },
    ],
    doubt: null,
  });
});
