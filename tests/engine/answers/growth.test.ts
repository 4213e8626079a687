import { describe, expect, test } from 'vitest';
import { answer } from '../../../engine/ask/ask.ts';
import { addDays } from '../../../engine/day.ts';
import { allFacts } from '../../../engine/facts/index.ts';
import type { Answer, Group, State } from '../../../engine/types.ts';
import { group, stateOf } from '../../helpers/state-of.ts';
import { bookForTests } from '../../helpers/work-out.ts';

const hatched = '2026-05-01';
const ask = (
  question: string,
  age: number,
  given: Partial<Group> = {},
  more: Partial<State> = {},
): Promise<Answer> => {
  const on = addDays(hatched, age);
  const state = stateOf({ on, groups: [group({ arrived: hatched, ...given })], ...more });
  const world = { book: bookForTests, facts: allFacts, state, problems: [] };
  const moment = { on, asOf: null, lines: null };
  return answer(world, { question, groups: [], moment, until: null, supposing: [] });
};
const weighing = (age: number, mean: number, count = 20) => ({
  on: addDays(hatched, age),
  line: age,
  mean,
  count,
  spread: null,
});
const gist = ({ parts: [part] }: Answer) => ({
  verdict: part?.verdict,
  rule: part?.rule,
  when: part?.when?.on ?? null,
  cautions: part?.cautions.map((each) => each.rule),
  remarks: part?.remarks.map((each) => each.rule),
  steps: part?.steps.map((each) => each.id),
});

describe('are they on track', () => {
  test('never weighed: a weight and its range, and how many to weigh', async () => {
    const answered = await ask('growth', 35);
    expect(gist(answered)).toEqual({
      verdict: 'amount',
      rule: 'growth/not-weighed',
      when: null,
      cautions: [],
      remarks: ['growth/how-many-to-weigh'],
      steps: ['growth/weighing-due'],
    });
    expect(answered.results.map(({ id }) => id)).toEqual(['live', 'live-low', 'live-high', 'weigh']);
  });

  test.each([
    [0.97, 'yes', 'growth/on-track', []],
    [0.7, 'no', 'growth/behind', ['growth/behind-since']],
    [1.25, 'yes', 'growth/ahead', []],
  ])('weighed at %f of the plan line', async (share, verdict, rule, remarks) => {
    // Twenty birds weighed today, four weeks old: 1.33 kg published, 0.82 of it planned for.
    const answered = await ask('growth', 28, { weighings: [weighing(28, 1.33 * 0.82 * share)] });
    expect(gist(answered)).toEqual({
      verdict,
      rule,
      when: null,
      cautions: [],
      remarks,
      steps: ['growth/weighing-due'],
    });
    expect(answered.parts[0]?.steps[0]?.done).toBe(true);
  });

  test('a kind that nobody described or weighed: asks for it and for nothing else', async () => {
    const answered = await ask('growth', 28, { kind: 'barred' });
    expect(gist(answered)).toMatchObject({ verdict: 'cannot-say', rule: null });
    expect(answered.parts[0]?.unknown).toEqual([{ fact: 'growth-line', group: 'whites' }]);
  });
});

describe('when are they ready', () => {
  test('too light: the day, which is also the day the answer turns', async () => {
    const answered = await ask('process-when', 42, { weighings: [weighing(42, 2)] });
    expect(gist(answered)).toEqual({
      verdict: 'no',
      rule: 'process-when/not-yet',
      when: '2026-06-26',
      cautions: [],
      remarks: ['process-when/by-the-weekend', 'process-when/hands-short'],
      steps: [],
    });
    expect(
      answered.results.filter(({ unit }) => unit === 'date').map(({ id, value }) => [id, value]),
    ).toEqual([
      ['ready', '2026-06-26'],
      ['ready-early', '2026-06-22'],
      ['ready-late', '2026-07-03'],
    ]);
  });

  test('a week ahead: what to prepare', async () => {
    expect(gist(await ask('process-when', 49))).toMatchObject({
      rule: 'process-when/not-yet',
      remarks: ['process-when/by-the-weekend', 'process-when/hands-short', 'process-when/weigh-first'],
      steps: ['process-when/prepare', 'process-when/ask-for-hands'],
    });
  });

  test('heavy enough and past eight weeks: yes, with the caution for fast birds', async () => {
    expect(gist(await ask('process-when', 60, { weighings: [weighing(56, 3)] }))).toMatchObject({
      verdict: 'yes',
      rule: 'process-when/ready-now',
      cautions: ['process-when/fast-held-long'],
      steps: ['process-when/ready-now', 'process-when/ask-for-hands'],
    });
  });

  test('so slow that the last day for fast birds comes first: that day, with the caution', async () => {
    expect(gist(await ask('process-when', 43, { weighings: [weighing(42, 1.4)] }))).toMatchObject({
      verdict: 'no',
      rule: 'process-when/too-slow-to-wait',
      when: addDays(hatched, 84),
      cautions: ['process-when/ready-past-window'],
    });
  });

  test('fast birds of twelve weeks are not to wait, whatever they weigh', async () => {
    expect(gist(await ask('process-when', 84, { weighings: [weighing(80, 1.5)] }))).toMatchObject({
      verdict: 'yes',
      rule: 'process-when/held-too-long',
    });
  });

  test('a weight that slow birds never come to: by the end of the usual time, and then without delay', async () => {
    const settings: State['settings'] = {
      'wanted-carcass': [{ what: 'wanted-carcass', value: 4, on: hatched, line: 2, size: null, said: '' }],
    };
    const ask4kg = (age: number) => ask('process-when', age, { kind: 'slow' }, { settings });
    expect(gist(await ask4kg(100))).toMatchObject({
      verdict: 'no',
      rule: 'process-when/out-of-reach',
      when: addDays(hatched, 120),
    });
    expect(gist(await ask4kg(154))).toMatchObject({ verdict: 'yes', rule: 'process-when/no-use-waiting' });
  });

  test('birds that are all kept back are not for processing', async () => {
    const kept = [{ on: hatched, line: 9, count: 50, until: null }];
    expect(gist(await ask('process-when', 154, { kind: 'slow', kept }))).toMatchObject({
      verdict: 'no',
      rule: 'process-when/all-kept-back',
    });
  });

  test('on the day of the hatch it is answered too', async () => {
    expect(gist(await ask('process-when', 0))).toMatchObject({
      verdict: 'no',
      rule: 'process-when/not-yet',
      when: '2026-06-24',
    });
  });
});
