/** Working facts out: each once, with everything it was made of on record, and no value where something is missing. */
import { describe, expect, test } from 'vitest';
import { defineFact, type Fact } from '../../../engine/facts/define.ts';
import { openWorkings, type Setup } from '../../../engine/facts/workings.ts';
import type { State, Supposition, Value } from '../../../engine/types.ts';
import { smallRulebook } from '../../helpers/small-rulebook.ts';
import { group, stateOf } from '../../helpers/state-of.ts';

const { book } = smallRulebook();

const on = '2026-05-22';
const work = (facts: readonly Fact[], more: Partial<Setup> = {}) =>
  openWorkings({
    state: stateOf({ on }),
    book,
    facts: new Map(facts.map((fact) => [fact.id, fact])),
    on,
    until: null,
    supposing: [],
    ...more,
  });
const flock = (id: string, compute: Fact['compute'], more: Partial<Fact> = {}): Fact =>
  defineFact({ id, unit: 'C', per: 'flock', compute, ...more });
const told = (id: string, value: Value | undefined): Fact => flock(id, () => value);
const suppose = (fact: string, value: Value, adds = false): Supposition => ({ what: { fact }, value, adds });

const age = defineFact({
  id: 'age',
  unit: 'day',
  compute: (read) => {
    read.from({ on: read.group.arrived, line: read.group.line });
    return 21;
  },
});

/** A step as it is when nothing went into it. */
const step = (fact: string, value: Value | null, more = {}) => ({
  fact,
  group: null,
  unit: 'C',
  value,
  missing: [],
  facts: [],
  figures: [],
  entries: [],
  assumed: [],
  supposed: false,
  ...more,
});

describe('a fact', () => {
  test('is worked out once, and only when it is asked for', () => {
    const asked: string[] = [];
    const counted = (id: string, needs: readonly string[] = []): Fact =>
      flock(
        id,
        (read) => {
          asked.push(id);
          return needs.reduce((sum, need) => sum + read.number(need), 1);
        },
        { needs },
      );
    const workings = work([
      counted('low'),
      counted('floor', ['low']),
      counted('gap', ['low', 'floor', 'low']),
      counted('idle'),
    ]);
    expect(asked).toEqual([]);
    expect(workings.step('gap', null).value).toBe(5);
    expect(workings.step('gap', null)).toBe(workings.step('gap', null));
    expect(asked).toEqual(['low', 'floor', 'gap']);
    expect(workings.steps().map(({ fact }) => fact)).toEqual(['low', 'floor', 'gap']);
  });

  test('of the flock is one for all groups, of a group one for each', () => {
    const own = defineFact({ id: 'size', unit: 'bird', compute: (read) => read.group.boxed });
    const state = stateOf({ groups: [group(), group({ name: 'reds', boxed: 25 })] });
    const workings = work([told('low', 9), own], { state });
    expect(workings.step('low', 'whites')).toBe(workings.step('low', 'reds'));
    expect([workings.step('size', 'whites'), workings.step('size', 'reds')]).toEqual([
      step('size', 50, { group: 'whites', unit: 'bird' }),
      step('size', 25, { group: 'reds', unit: 'bird' }),
    ]);
  });

  test('keeps what it was made of: facts, figures, entries and what was taken for granted, each once', () => {
    const floor = defineFact({
      id: 'night-floor',
      unit: 'C',
      needs: ['age'],
      wants: ['low'],
      figures: ['out/lowest-night', 'out/youngest'],
      compute: (read) => {
        read.maybe('low');
        read.number('age');
        read.figure('out/youngest');
        read.figure('out/youngest');
        read.from({ on: '2026-05-20', line: 4 }, { on: '2026-05-20', line: 4 });
        read.assume('no-frost', { low: { value: 9, unit: 'C' } });
        return read.figure('out/lowest-night');
      },
    });
    const figure = (id: string, value: number, unit: string) => ({
      id,
      value,
      unit,
      from: '2026-01-01',
      source: 'own-judgement',
      own: false,
    });
    expect(work([age, told('low', 9), floor]).step('night-floor', 'whites')).toEqual(
      step('night-floor', 10, {
        group: 'whites',
        facts: [
          { fact: 'age', group: 'whites' },
          { fact: 'low', group: null },
        ],
        // In the unit of the figure, while the fact had it in base units: 50 °F are 10 °C.
        figures: [figure('out/youngest', 14, 'day'), figure('out/lowest-night', 50, 'F')],
        entries: [{ on: '2026-05-20', line: 4 }],
        assumed: [{ id: 'no-frost', group: 'whites', values: { low: { value: 9, unit: 'C' } } }],
      }),
    );
  });

  test('of the flock can look at a fact of every group that has come by then', () => {
    const state = stateOf({
      groups: [group(), group({ name: 'reds', boxed: 25 }), group({ name: 'late', arrived: '2026-06-01' })],
    });
    const size = defineFact({ id: 'size', unit: 'bird', compute: (read) => read.group.boxed });
    const all = flock('all', (read) => read.each('size').reduce((sum, { value }) => sum + Number(value), 0), {
      each: ['size'],
      unit: 'bird',
    });
    expect(work([size, all], { state }).step('all', null)).toEqual(
      step('all', 75, {
        unit: 'bird',
        facts: [
          { fact: 'size', group: 'whites' },
          { fact: 'size', group: 'reds' },
        ],
      }),
    );
  });
});

describe('a fact that is not known', () => {
  const sum = flock('sum', (read) => read.number('low') + read.number('high'), { needs: ['low', 'high'] });

  test('asks for itself when nobody else can', () => {
    expect(work([told('low', undefined)]).step('low', null)).toEqual(
      step('low', null, { missing: [{ fact: 'low', group: null }] }),
    );
    expect(work([told('low', Number.NaN)]).step('low', null).value).toBeNull();
  });

  test('names what it waits for at the root, each once, however long the way', () => {
    const facts = [
      told('low', undefined),
      told('high', undefined),
      sum,
      flock('twice', (read) => read.number('sum') + read.number('low'), { needs: ['sum', 'low'] }),
    ];
    expect(work(facts).step('twice', null)).toEqual(
      step('twice', null, {
        missing: [
          { fact: 'low', group: null },
          { fact: 'high', group: null },
        ],
        facts: [
          { fact: 'sum', group: null },
          { fact: 'low', group: null },
        ],
      }),
    );
  });

  test('is not computed at all', () => {
    const never = flock(
      'never',
      () => {
        throw new Error('computed');
      },
      { needs: ['low'] },
    );
    expect(work([told('low', undefined), never]).step('never', null).value).toBeNull();
  });

  test('may be missing where it was only wanted', () => {
    const lenient = flock('lenient', (read) => read.maybe('low') ?? 3, { wants: ['low'] });
    expect(work([told('low', undefined), lenient]).step('lenient', null)).toEqual(
      step('lenient', 3, { facts: [{ fact: 'low', group: null }] }),
    );
    expect(work([told('low', 0), lenient]).step('lenient', null).value).toBe(0);
  });
});

describe('a supposition', () => {
  const gap = flock('gap', (read) => read.number('low') - 10, { needs: ['low'] });

  test('takes the place of a fact, known or not, and of all that it is made of', () => {
    for (const low of [told('low', 12), told('low', undefined)]) {
      const workings = work([low, gap], { supposing: [suppose('low', 4)] });
      expect(workings.step('low', null)).toEqual(step('low', 4, { supposed: true }));
      expect(workings.step('gap', null).value).toBe(-6);
    }
  });

  test('adds to what is known, and to nothing else', () => {
    const colder = { supposing: [suppose('low', -4, true)] };
    expect(work([told('low', 12), gap], colder).step('gap', null).value).toBe(-2);
    expect(work([told('low', undefined), gap], colder).step('gap', null)).toMatchObject({
      value: null,
      missing: [{ fact: 'low', group: null }],
    });
  });

  test('replaces a figure or adds to it, in base units, and shows it in the unit of the figure', () => {
    const floor = defineFact({
      id: 'night-floor',
      unit: 'C',
      figures: ['out/lowest-night'],
      compute: (read) => read.figure('out/lowest-night'),
    });
    const withFigure = (value: number, adds: boolean) =>
      work([age, floor], { supposing: [{ what: { figure: 'out/lowest-night' }, value, adds }] });
    for (const [value, adds, base, shown] of [
      [5, false, 5, 41],
      [5, true, 15, 59],
    ] as const) {
      const { value: worth, figures } = withFigure(value, adds).step('night-floor', 'whites');
      expect(worth).toBeCloseTo(base, 9);
      expect(figures.map((use) => use.value)).toEqual([expect.closeTo(shown, 9)]);
    }
  });
});

describe('a figure', () => {
  test('is entered by its own axes, in their units', () => {
    const workings = work([age]);
    expect(workings.figure('out/lowest-night', 'whites')).toEqual({
      use: {
        id: 'out/lowest-night',
        value: 50,
        unit: 'F',
        from: '2026-01-01',
        source: 'own-judgement',
        own: false,
      },
      base: expect.closeTo(10, 9),
    });
  });

  test('is not known where an axis is not, or where the table has nothing', () => {
    expect(
      work([defineFact({ id: 'age', unit: 'day', compute: () => undefined })]).figure(
        'out/lowest-night',
        'whites',
      ),
    ).toBeUndefined();
    expect(
      work([defineFact({ id: 'age', unit: 'day', compute: () => 13 })]).figure('out/lowest-night', 'whites'),
    ).toBeUndefined();
  });

  test('set by the keeper counts from its day on, in the unit they gave it', () => {
    const ownFigures: State['ownFigures'] = [
      { figure: 'out/youngest', quantity: { value: 3, unit: 'day' }, reason: '', on: '2026-05-21', line: 9 },
    ];
    const state = stateOf({ ownFigures });
    const baseOn = (day: string) => work([age], { state, on: day }).figure('out/youngest', 'whites')?.base;
    expect([baseOn('2026-05-20'), baseOn('2026-05-21')]).toEqual([14, 3]);
  });
});

describe('a mistake in a model throws', () => {
  const reads = (id: string, compute: Fact['compute']) => () =>
    work([told('low', 1), flock(id, compute)]).step(id, 'whites');

  test.each([
    ['a fact that it does not need', (read) => read.number('low'), 'fact odd reads low without declaring it'],
    ['a fact that it does not want', (read) => read.maybe('low'), 'fact odd reads low without declaring it'],
    ['a fact of each group', (read) => read.each('low').length, 'fact odd reads low without declaring it'],
    ['a figure', (read) => read.figure('out/youngest'), 'fact odd reads out/youngest without declaring it'],
    [
      'a figure that may be missing',
      (read) => read.maybeFigure('out/youngest'),
      'fact odd reads out/youngest without declaring it',
    ],
    [
      'a figure along its axis',
      (read) => read.along('out/lowest-night')(20),
      'fact odd reads out/lowest-night without declaring it',
    ],
    [
      'the group, in a fact of the flock',
      (read) => read.group.boxed,
      'fact odd asked for a group that there is not',
    ],
  ] as const satisfies readonly (readonly [string, Fact['compute'], string])[])(
    'that reads %s',
    (_, compute, says) => {
      expect(reads('odd', compute)).toThrow(says);
    },
  );

  test('that needs itself by way of another', () => {
    const facts = [
      flock('a', (read) => read.number('b'), { needs: ['b'] }),
      flock('b', (read) => read.number('a'), { needs: ['a'] }),
    ];
    expect(() => work(facts).step('a', null)).toThrow('fact a needs itself');
  });

  test('that asks for what there is not', () => {
    expect(() => work([]).step('luck', null)).toThrow('no such fact: luck');
    expect(() => work([]).figure('out/luck', null)).toThrow('no such figure: out/luck');
    const wordless = flock('wordless', (read) => {
      read.assume('all-is-well');
      return 1;
    });
    expect(() => work([wordless]).step('wordless', null)).toThrow(
      'fact wordless assumes all-is-well, which has no words',
    );
  });

  test('that takes for certain what a table does not have', () => {
    const young = defineFact({
      id: 'young',
      unit: 'C',
      figures: ['out/lowest-night'],
      compute: (read) => read.figure('out/lowest-night', [13]),
    });
    expect(() => work([young]).step('young', 'whites')).toThrow(
      'figure out/lowest-night has nothing for [13] in young',
    );
  });
});
