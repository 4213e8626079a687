/** Facts used again: the same as worked out anew, whatever was looked at before, and worked out only where something differs. */
import { expect, test } from 'vitest';
import { demoLedger } from '../../../cli/demo/demo.ts';
import { answer } from '../../../engine/ask/ask.ts';
import { rememberWorkings } from '../../../engine/ask/world.ts';
import { addDays } from '../../../engine/day.ts';
import { defineFact, type Fact } from '../../../engine/facts/define.ts';
import { allFacts } from '../../../engine/facts/index.ts';
import { rememberFacts } from '../../../engine/facts/memory.ts';
import { openWorkings } from '../../../engine/facts/workings.ts';
import { openText } from '../../../engine/index.ts';
import type { Moment, State, Supposition } from '../../../engine/types.ts';
import { shipped } from '../../helpers/flock-of.ts';

const today = '2026-05-14';
const engine = openText(shipped, 'demo', demoLedger(today));
const at = (on: string, without: readonly number[] = []): Moment => ({
  on,
  asOf: null,
  lines: null,
  without,
});
/** Weather foretold, feed given, a sign seen, all of it, and the day before. */
const moments = [at(today), at(today, [58]), at(today, [54, 61]), at(today, [57]), at(addDays(today, -1))];

const questions = Object.values(shipped.questions).filter(
  ({ kind, tries, foretells }) => kind !== 'about' && tries === null && Object.keys(foretells).length === 0,
);

test.each(questions.map(({ id }) => id))(
  '%s: answered from memory, bit for bit as without one',
  async (id) => {
    const memory = rememberWorkings();
    for (const moment of moments) {
      const world = { book: shipped, facts: allFacts, state: engine.state(moment), problems: [] };
      const request = { question: id, groups: [], moment, until: null, supposing: [] };
      const [anew, again] = [
        await answer(world, request, 'now'),
        await answer({ ...world, memory }, request, 'now'),
      ];
      expect(JSON.stringify(again)).toBe(JSON.stringify(anew));
    }
  },
);

/** Facts that count how often they are worked out. */
const counted = () => {
  const worked: string[] = [];
  const fact = (id: string, more: Partial<Fact>, compute: Fact['compute']): [string, Fact] => [
    id,
    defineFact({
      id,
      unit: null,
      per: 'flock',
      ...more,
      compute: (read) => {
        worked.push(id);
        return compute(read);
      },
    }),
  ];
  const facts = new Map([
    fact('tonight', {}, ({ state }) => state.weather[today]?.low?.value),
    fact('is-cold', { needs: ['tonight'] }, (read) => read.number('tonight') < 5),
    fact('lamps', { needs: ['is-cold'], wants: ['tomorrow'] }, (read) =>
      read.yes('is-cold') ? Number(read.maybe('tomorrow') ?? 0) : 0,
    ),
    fact('tomorrow', {}, ({ on }) => Number(addDays(on, 1).slice(-2))),
  ]);
  return { worked, facts };
};

const stateWith = (low: number): State => {
  const state = engine.state(at(today));
  const day = { on: today, high: null, rain: null, wind: null, humidity: null };
  const air = { on: today, line: 1, value: low, forecast: true, written: null };
  return { ...state, weather: { [today]: { ...day, low: air } } } as State;
};

const lampsIn = (
  { facts }: ReturnType<typeof counted>,
  memory: ReturnType<typeof rememberFacts>,
  low: number,
  on = today,
  supposing: readonly Supposition[] = [],
) =>
  openWorkings({ state: stateWith(low), book: shipped, facts, on, until: null, supposing, memory }).step(
    'lamps',
    null,
  ).value;

test('only what looked at something else is worked out anew, and what rests on it where it came out otherwise', () => {
  const tally = counted();
  const memory = rememberFacts();
  const during = (work: () => unknown): readonly [unknown, readonly string[]] => {
    tally.worked.length = 0;
    const value = work();
    return [value, [...tally.worked]];
  };
  expect(during(() => lampsIn(tally, memory, 8))).toEqual([0, ['tonight', 'is-cold', 'lamps']]);
  // The same in another state of the same content.
  expect(during(() => lampsIn(tally, memory, 8))).toEqual([0, []]);
  // Another night, as mild: the lamps need no second look.
  expect(during(() => lampsIn(tally, memory, 7))).toEqual([0, ['tonight', 'is-cold']]);
  // A cold one asks for what a mild one never did.
  expect(during(() => lampsIn(tally, memory, 2))).toEqual([15, ['tonight', 'is-cold', 'lamps', 'tomorrow']]);
  // The day matters only where it was looked at.
  expect(during(() => lampsIn(tally, memory, 8, '2026-05-20'))).toEqual([0, []]);
  expect(during(() => lampsIn(tally, memory, 2, '2026-05-20'))).toEqual([21, ['tomorrow', 'lamps']]);
  const cold: Supposition = { what: { fact: 'is-cold' }, value: true, adds: false };
  expect(during(() => lampsIn(tally, memory, 8, today, [cold]))).toEqual([15, []]);
});

test('a fact that does not hang on what it looks at alone is found out', () => {
  let turn = 0;
  const facts = new Map([
    [
      'fickle',
      defineFact({
        id: 'fickle',
        unit: null,
        per: 'flock',
        compute: (read) => {
          turn += 1;
          return turn === 1 ? read.on : `${read.until} ${read.on}`;
        },
      }),
    ],
  ]);
  const memory = rememberFacts();
  const on = (day: string) =>
    openWorkings({
      state: stateWith(8),
      book: shipped,
      facts,
      on: day,
      until: null,
      supposing: [],
      memory,
    }).step('fickle', null).value;
  expect(on(today)).toBe(today);
  expect(() => on('2026-05-20')).toThrow(
    'fact fickle looked at until and did not when all else was the same',
  );
});
