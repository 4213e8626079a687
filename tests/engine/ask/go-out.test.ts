/** Going out as the engine answers it over the shipped rules: each verdict, what is asked for, and which way is up. */
import { describe, expect, test } from 'vitest';
import { ask, flockOf, type Line, partOf } from '../../helpers/flock-of.ts';
import { arrive, cover, hawk, heatDown, nights, pen, ready, sign, today } from './go-out-flock.ts';

/** A part without its wording: verdict and rule, each reason as [rule, fact, outcome], and what is still open. */
const told = async (...lines: readonly Line[]) => {
  const part = partOf(await ask(flockOf(...lines), 'go-out', today));
  return {
    verdict: part.verdict,
    rule: part.rule?.slice('go-out/'.length) ?? null,
    reasons: part.reasons
      .filter((reason) => part.rule === null || reason.rule === part.rule || reason.outcome === 'unknown')
      .map((reason) => `${reason.rule.slice('go-out/'.length)}: ${reason.fact.id} ${reason.outcome}`),
    unknown: part.unknown.map(({ fact }) => fact),
    unless: part.unless.map(({ rule }) => rule.slice('go-out/'.length)),
    chores: part.steps.map(({ id }) => id.slice('go-out/'.length)),
  };
};

const settled = (
  verdict: 'yes' | 'no',
  rule: string,
  facts: readonly string[],
  chores: readonly string[] = [],
) => ({
  verdict,
  rule,
  reasons: facts.map((fact) => `${rule}: ${fact} held`),
  unknown: [],
  unless: [],
  chores,
});

/** A group that stood on a pen's length of ground until two days ago. */
const lastOnTheGround: readonly Line[] = [
  { kind: 'arrive', on: '2026-04-02', group: 'whites', count: 20, bird: 'fast', hatched: '2026-04-01' },
  { kind: 'out', on: '2026-04-25', group: 'whites' },
  { kind: 'process', on: '2026-05-28', group: 'whites', count: 20 },
];

describe('the verdict', () => {
  test('is yes when nothing stands in the way', async () => {
    const facts = ['age', 'night-low', 'days-of-hardening', 'feathered', 'pen-room', 'place'];
    expect(await told(...ready)).toEqual(settled('yes', 'may-go', facts, ['may-go']));
  });

  test('is yes when they are out already', async () => {
    expect(await told(...ready, { kind: 'out', on: '2026-05-28', group: 'reds' })).toEqual(
      settled('yes', 'already-out', ['place']),
    );
  });

  test.each<readonly [string, string, readonly string[], readonly Line[]]>([
    [
      'none are left',
      'gone',
      ['place'],
      [...ready, { kind: 'process', on: '2026-05-29', group: 'reds', count: 25 }],
    ],
    ['one looks sick', 'sick', ['sick-signs', 'place'], [...ready, sign('lethargic', today)]],
    [
      'a hawk has been and the pen is open',
      'hunters',
      ['hunters-lately', 'pen-covered', 'place'],
      [...ready, cover('no'), hawk],
    ],
    [
      'they are ten days old, however warm it is',
      'too-young',
      ['age', 'place'],
      [{ ...arrive, on: '2026-05-22', hatched: '2026-05-20' }, pen, cover('yes'), ...nights('75 F')],
    ],
    ['the pen is too small', 'no-room', ['pen-room', 'place'], [...ready, { ...pen, value: '4 ft x 8 ft' }]],
    [
      'it rains and is cold',
      'cold-rain',
      ['rain-soon', 'night-low', 'place'],
      [arrive, pen, heatDown('2026-05-20'), ...nights('55 F', { rain: '10 mm' })],
    ],
    [
      'the nights are too cold',
      'cold-night',
      ['night-low', 'place'],
      [arrive, pen, ...nights('35 F', { high: '60 F' })],
    ],
    [
      'their backs are bare',
      'not-feathered',
      ['feathered', 'night-low', 'place'],
      [...ready, sign('bald', '2026-05-29')],
    ],
    [
      'the ground is used up',
      'ground-used-up',
      ['fresh-moves', 'place'],
      [
        ...ready,
        { kind: 'setting', on: '2026-05-04', what: 'ground', value: '10 ft x 12 ft' },
        ...lastOnTheGround,
      ],
    ],
  ])('is no when %s', async (_, rule, facts, lines) => {
    expect(await told(...lines)).toEqual(settled('no', rule, facts));
  });

  test('is no with a chore when a warm day on grass, or less heat, is what they need', async () => {
    expect(await told(arrive, pen, ...nights('35 F', { high: '75 F' }))).toEqual(
      settled('no', 'day-only', ['age', 'night-low', 'today-high', 'place'], ['day-only']),
    );
    expect((await told(arrive, pen, heatDown('2026-05-28'), ...nights('55 F'))).rule).toBe('not-hardened');
  });
});

describe('what is not known', () => {
  test('is asked for when it could decide, and then nothing else is', async () => {
    const { verdict, rule, unknown, unless } = await told(arrive, pen, heatDown('2026-05-20'));
    expect({ verdict, rule, unknown, unless }).toEqual({
      verdict: 'cannot-say',
      rule: null,
      unknown: ['night-low', 'today-high'],
      unless: [],
    });
    expect((await told(arrive, heatDown('2026-05-20'), ...nights('55 F'))).unknown).toEqual(['pen-area']);
    expect((await told(arrive, pen, ...nights('55 F'))).unknown).toEqual(['days-of-hardening']);
  });

  test('does not hold up an answer that it could only overrule; it is named beside it', async () => {
    const { verdict, rule, unknown, unless, reasons } = await told(
      arrive,
      pen,
      heatDown('2026-05-20'),
      ...nights('55 F'),
      hawk,
    );
    expect({ verdict, rule, unknown, unless }).toEqual({
      verdict: 'yes',
      rule: 'may-go',
      unknown: ['pen-covered'],
      unless: ['hunters'],
    });
    expect(reasons).toContain('hunters: pen-covered unknown');
  });

  test('is not asked for when it could not matter', async () => {
    const young = { ...arrive, on: '2026-05-22', hatched: '2026-05-20' };
    expect(await told(young, pen)).toMatchObject({ verdict: 'no', rule: 'too-young', unknown: [] });
    expect(await told(...ready, hawk)).toMatchObject({ verdict: 'yes', unknown: [], unless: [] });
  });
});

describe('an answer', () => {
  test('is the same in either system of units: only its wording is not', async () => {
    const inSystem = (value: 'us' | 'metric') =>
      ask(
        flockOf(...ready, { kind: 'setting', on: '2026-05-04', what: 'units-system', value }),
        'go-out',
        today,
      );
    const { ref, ...us } = await inSystem('us');
    expect(us.results).toEqual([
      { id: 'age', fact: 'age', group: 'reds', value: 28, unit: 'day' },
      {
        id: 'night-low',
        fact: 'night-low',
        group: 'reds',
        value: expect.closeTo((55 - 32) / 1.8, 9),
        unit: 'C',
      },
      {
        id: 'night-floor',
        fact: 'night-floor',
        group: 'reds',
        value: expect.closeTo((40 - 32) / 1.8, 9),
        unit: 'C',
      },
      { id: 'first-day', fact: 'when', group: 'reds', value: today, unit: 'date' },
    ]);
    expect(await inSystem('metric')).toEqual({ ...us, ref });
  });

  test('is the same whichever units the records are in', async () => {
    const metric = ready.map((line) =>
      line.kind === 'weather' ? { ...line, low: '12.777777777777779 C' } : line,
    );
    const [us, other] = await Promise.all(
      [ready, metric].map((lines) => ask(flockOf(...lines), 'go-out', today)),
    );
    expect(other?.parts[0]?.reasons.map(({ fact }) => fact.value)).toEqual(
      us?.parts[0]?.reasons.map(({ fact }) => fact.value),
    );
  });

  test('believes only what was written by a day, or only so many lines', async () => {
    const colder: Line = { kind: 'weather', on: today, low: '30 F', written: '2026-05-30T18:00:00-04:00' };
    const earlier = ready.map((line) => ({ ...line, written: '2026-05-28T07:00:00-04:00' }));
    const flock = flockOf(...earlier, colder);
    const asOf = (day: string | null, lines: number | null = null) =>
      ask(flock, 'go-out', today, { moment: { on: today, asOf: day, lines } });
    const answers = await Promise.all([
      asOf(null),
      asOf('2026-05-29'),
      asOf('2026-05-30'),
      asOf(null, ready.length),
    ]);
    expect(answers.map((each) => [partOf(each).rule, each.ref.split('-')[0]])).toEqual([
      ['go-out/cold-night', String(ready.length + 1)],
      ['go-out/may-go', String(ready.length)],
      ['go-out/cold-night', String(ready.length + 1)],
      ['go-out/may-go', String(ready.length)],
    ]);
  });

  test('leaves the ledger as it was, whatever is supposed', async () => {
    const flock = flockOf(...ready);
    const [lines, before] = [[...flock.lines], await ask(flock, 'go-out', today)];
    const supposing = [{ what: { fact: 'night-low' }, value: -10, adds: true }];
    expect(partOf(await ask(flock, 'go-out', today, { supposing })).rule).toBe('go-out/cold-night');
    expect(flock.lines).toEqual(lines);
    expect(await ask(flock, 'go-out', today)).toEqual(before);
  });

  test('can be had over one supposition laid on another, of facts and of figures', async () => {
    const flock = flockOf(...ready);
    const rule = async (...supposing: readonly [string, number | string | boolean][]) =>
      partOf(
        await ask(flock, 'go-out', today, {
          supposing: supposing.map(([id, value]) => ({
            what: id.includes('/') ? { figure: id } : { fact: id },
            value,
            adds: false,
          })),
        }),
      ).rule;
    expect(await rule(['age', 13])).toBe('go-out/too-young');
    expect(await rule(['age', 13], ['pasture/youngest-out', 7])).toBe('go-out/not-feathered');
    expect(await rule(['age', 15], ['feathered', true])).toBe('go-out/cold-night');
    expect(await rule(['age', 15], ['feathered', true], ['pasture/lowest-night', 0])).toBe('go-out/may-go');
    expect(await rule(['pen-covered', false], ['hunters-lately', 1])).toBe('go-out/hunters');
    expect(await rule(['place', 'pen'])).toBe('go-out/already-out');
  });
});
