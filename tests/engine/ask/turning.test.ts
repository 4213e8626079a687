/** What would turn an answer: single changes of what can be changed, else the smallest pair; each tried by asking again. */
import { describe, expect, test } from 'vitest';
import { demoLedger } from '../../../cli/demo/demo.ts';
import { isDirect } from '../../../engine/ask/turning/candidates.ts';
import { turningChanges } from '../../../engine/ask/turning/search.ts';
import type { Again } from '../../../engine/ask/turns.ts';
import { stepOf } from '../../../engine/explain/drill.ts';
import { type Engine, openText } from '../../../engine/index.ts';
import type { Change, Part, Supposition } from '../../../engine/types.ts';
import { ask, flockOf, type Line, partOf, shipped } from '../../helpers/flock-of.ts';
import { arrive, cover, hawk, heatDown, nights, pen, ready, today } from './go-out-flock.ts';

const near: Line = {
  kind: 'figure',
  on: '2026-05-04',
  figure: 'search/look-ahead',
  value: '1 day',
  reason: 'for this test',
};

const supposed = ({ fact, group, to }: Change): Supposition => ({
  what: { fact },
  value: to,
  adds: false,
  group: group ?? undefined,
});

/** The verdict for the same group when the changes are supposed. */
const verdictWith = async (
  flock: Engine,
  question: string,
  on: string,
  { group }: Part,
  changes: readonly Change[],
): Promise<string | undefined> => {
  const groups = group === null ? [] : [group];
  const then = await ask(flock, question, on, { groups, supposing: changes.map(supposed) });
  return then.parts.find((part) => part.group === group)?.verdict;
};

const tooYoung: readonly Line[] = [
  { ...arrive, on: '2026-05-22', hatched: '2026-05-20' },
  pen,
  heatDown('2026-05-29'),
  ...nights('55 F'),
];

describe('a pair', () => {
  test('is named where no change by itself is enough, and turns it', async () => {
    const flock = flockOf(...tooYoung, near);
    const part = partOf(await ask(flock, 'go-out', today));
    const [pair, ...more] = part.turnsOn;
    if (pair?.and === undefined) throw new Error('no pair');
    expect(more).toEqual([]);
    expect([part.verdict, pair.fact, pair.and.fact, pair.verdict]).toEqual(['no', 'age', 'night-low', 'yes']);
    expect(await verdictWith(flock, 'go-out', today, part, [pair, pair.and])).toBe('yes');
    expect(await verdictWith(flock, 'go-out', today, part, [pair])).toBe('no');
    expect(await verdictWith(flock, 'go-out', today, part, [pair.and])).toBe('no');
  });

  test('is not named beside a change that is enough', async () => {
    const flock = flockOf(arrive, pen, heatDown('2026-05-20'), ...nights('35 F'), near);
    const { turnsOn } = partOf(await ask(flock, 'go-out', today));
    expect(turnsOn.length).toBeGreaterThan(0);
    expect(turnsOn.filter(({ and }) => and !== undefined)).toEqual([]);
  });
});

describe('what nobody can change as it stands', () => {
  test('is followed down to what somebody can: a crowded pen to its floor, how many there are, and the birds', async () => {
    const flock = flockOf(...ready, { ...pen, value: '4 ft x 8 ft' }, near);
    const answer = await ask(flock, 'go-out', today);
    const part = partOf(answer);
    const facts = part.turnsOn.map(({ fact }) => fact);
    expect(part.rule).toBe('go-out/no-room');
    expect([...facts].sort()).toEqual(['alive', 'pen-area', 'pens']);
    const area = part.turnsOn.find(({ fact }) => fact === 'pen-area');
    // 25 birds at 1.5 ft² each want 37.5 ft², which is said as it was tried.
    expect(Number(area?.to) / 0.3048 ** 2).toBeCloseTo(37.5, 6);
    for (const turn of part.turnsOn)
      expect(await verdictWith(flock, 'go-out', today, part, [turn])).toBe(turn.verdict);
  });

  const day = '2026-05-14';
  const demo = openText(shipped, 'demo', demoLedger(day));
  const turning = Object.values(shipped.questions).filter(({ turns }) => turns);

  test.each(turning.map(({ id }) => id))(
    'is never offered itself of %s in the demo, and whatever is offered turns it',
    async (id) => {
      for (const part of (await ask(demo, id, day)).parts) {
        for (const turn of part.turnsOn) {
          const changes = [turn, ...(turn.and === undefined ? [] : [turn.and])];
          for (const { fact } of changes) expect([fact, shipped.facts[fact]?.fixed]).toEqual([fact, false]);
          const then = await verdictWith(demo, id, day, part, changes);
          expect([id, turn.fact, then]).toEqual([id, turn.fact, turn.verdict]);
        }
      }
    },
  );

  test('stands on records, settings or figures, all of it', async () => {
    const answer = await ask(demo, 'losses', day);
    const facts = answer.parts.flatMap(({ turnsOn }) => turnsOn);
    expect(facts.length).toBeGreaterThan(0);
    for (const { fact, group } of facts) {
      const step = stepOf(answer, fact, group);
      expect([fact, step !== undefined && isDirect(step)]).toEqual([fact, true]);
    }
    // The chance that losses are luck is what the rule compares, and nobody can change a chance.
    expect(facts.map(({ fact }) => fact)).not.toContain('loss-chance');
  });

  test('has nothing to turn in an amount', async () => {
    const flock = openText(shipped, 'demo', demoLedger('2026-05-14'));
    expect(partOf(await ask(flock, 'fair-price', '2026-05-14'))).toMatchObject({
      verdict: 'amount',
      turnsOn: [],
    });
  });
});

test('the search is bounded: no more trials than changes and two dozen pairs', async () => {
  const flock = flockOf(...ready, cover('no'), hawk, near);
  const answer = await ask(flock, 'go-out', today);
  expect(partOf(answer).verdict).toBe('no');
  // Changes that never turn anything make the search go on to its end.
  const step = {
    fact: 'a',
    group: null,
    unit: null,
    value: 0,
    missing: [],
    facts: [],
    figures: [],
    entries: [],
    assumed: [],
    supposed: false,
  };
  const leaves = Array.from({ length: 20 }, (_, n) => ({
    leaf: { fact: `f${n}`, operator: 'at-least', figure: null, other: null, value: 1, because: '' },
    outcome: 'failed' as const,
    left: 0,
    right: n + 1,
  }));
  const rule = shipped.rules['go-out/may-go'];
  if (rule === undefined) throw new Error('no rule');
  const outcome = { rule, outcome: 'failed' as const, deciding: leaves, leaves };
  const evaluation = {
    group: null,
    workings: { step: (fact: string) => ({ ...step, fact }), figure: () => undefined, steps: () => [] },
    outcomes: [outcome],
    choice: { winner: null, open: [] },
  };
  let tried = 0;
  const again: Again = async () => {
    tried += 1;
    return evaluation;
  };
  const grounds = { rules: [rule], step: () => 1, isFixed: () => false, levers: () => [] };
  expect(await turningChanges(evaluation, again, grounds)).toEqual([]);
  expect(tried).toBe(20 + 24);
});
