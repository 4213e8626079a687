/** What a line supposes: values for facts by their words in rules/facts, several at once, shares, and rules switched off. */
import { describe, expect, test } from 'vitest';
import { listener } from '../../../helpers/heard.ts';

const { hear } = listener();
const first = hear('can the reds go out');
const reading = (words: string) => hear(words, { before: first }).readings[0];
const supposed = (words: string) => reading(words)?.supposing;

describe('a value', () => {
  test.each([
    ["what if it's 38 tonight", { what: 'night low', fact: 'night-low', value: 38, unit: null, adds: false }],
    ['what if it hits 95 tomorrow', { what: 'high', fact: 'today-high', value: 95, unit: null, adds: false }],
    ['what if it rained 0.5 in', { what: 'rain', fact: 'rain-soon', value: 0.5, unit: 'in', adds: false }],
    [
      'what if feed doubled',
      { what: 'feed price', fact: 'bag-price', value: 2, unit: null, adds: false, times: true },
    ],
    ['what if they were 5 weeks old', { what: 'age', fact: 'age', value: 35, unit: 'day', adds: false }],
    ['what if they waited til 9 weeks', { what: 'age', fact: 'age', value: 63, unit: 'day', adds: false }],
    [
      'what if there were 6 of us',
      { what: 'people eating', fact: 'eaters', value: 6, unit: null, adds: false },
    ],
    [
      'what if we moved the pen every other day',
      { what: 'moves of the pen in a day', fact: 'moves-a-day', value: 1 / 2, unit: null, adds: false },
    ],
  ])('%s', (words, wanted) => {
    expect(supposed(words)?.map(({ orElse: _, ...each }) => each)).toEqual([wanted]);
  });

  test('goes off what there is, as a number or as a share', () => {
    expect(supposed('and if half of them die')?.map(({ orElse: _, ...each }) => each)).toEqual([
      { what: 'birds lost', fact: 'alive', value: 0.5, unit: null, adds: false, share: 'goes' },
    ]);
    expect(supposed('what if 3 of the reds died')?.map(({ orElse: _, ...each }) => each)).toEqual([
      {
        what: 'birds lost',
        fact: 'alive',
        value: 3,
        unit: null,
        adds: true,
        share: 'goes',
        tells: 'loss',
        group: 'reds',
      },
    ]);
  });

  test('is a share of another fact where that is what stands open', () => {
    const alone = hear('what if 40 % of the freezer is free').readings[0]?.supposing;
    expect(alone?.map(({ orElse: _, ...each }) => each)).toEqual([
      {
        what: 'room free in the freezer',
        fact: 'freezer-free',
        value: 40,
        unit: 'percent',
        adds: false,
        share: 'is',
        of: 'freezer-size',
      },
    ]);
  });
});

test('of a size both sides are supposed along with the floor', () => {
  expect(supposed('what if the pen were 8 by 12 ft')?.map(({ orElse: _, ...each }) => each)).toEqual([
    { what: 'floor of the pen', fact: 'pen-area', value: 96, unit: 'ft2', adds: false },
    { what: 'length of the pen', fact: 'pen-length', value: 12, unit: 'ft', adds: false },
    { what: 'width of the pen', fact: 'pen-width', value: 8, unit: 'ft', adds: false },
  ]);
  const field = supposed('what if the field were 50 by 100 ft');
  expect(field?.map(({ orElse: _, ...each }) => each)).toEqual([
    { what: 'ground', fact: 'ground-area', value: 5000, unit: 'ft2', adds: false },
  ]);
});

describe('several at once', () => {
  test('are joined by and', () => {
    const both = supposed("what if it's 38 tonight and they are 5 weeks old");
    expect(both?.map(({ fact, value }) => [fact, value])).toEqual([
      ['night-low', 38],
      ['age', 35],
    ]);
  });

  test('are one where only the whole says something', () => {
    expect(supposed('what if it is cold and wet at 38 tonight')?.map(({ fact }) => fact)).toEqual([
      'night-low',
    ]);
  });
});

describe('a rule switched off', () => {
  test.each([
    ['without the feather rule', 'feather'],
    ['what if we ignored the ground rest rule', 'ground rest'],
    ['and if we skip the rule about rain', 'rain'],
    ['ignoring the hardening rule', 'hardening'],
  ])('%s', (words, rule) => {
    expect(supposed(words)).toEqual([
      { what: `rule on ${rule}`, rule, value: 'off', unit: null, adds: false },
    ]);
    expect(reading(words)?.topic).toBe('go-out');
  });

  test('is none where no rule is spoken of', () => {
    expect(supposed('can they go out without the lamp')).toEqual([]);
  });
});

describe('a line that only supposes', () => {
  test('asks the last question again, and stays', () => {
    for (const words of ["what if it's 38 tonight and they are 5 weeks old", 'and if half of them die'])
      expect([words, reading(words)?.topic, reading(words)?.stays]).toEqual([words, 'go-out', true]);
  });

  test('of a sign of sickness is not taken for one', () => {
    const ideas = (words: string) => reading(words)?.evidence.map(({ idea }) => idea);
    expect(ideas('what if one is limping')).not.toContain('only supposes');
    expect(ideas("what if it's 38 tonight")).toContain('only supposes');
  });

  test('is no more than a condition inside a whole question', () => {
    const whole = hear("can the reds go out if it's 38 tonight").readings[0];
    expect([whole?.topic, whole?.supposing.length, whole?.stays]).toEqual(['go-out', 1, undefined]);
  });
});

test('a record that is only supposed carries its words, so that nothing is written', () => {
  const told = (...lines: readonly string[]) =>
    lines.flatMap((words) => hear(words).readings.filter(({ topic }) => topic.startsWith('tell:')));
  const supposed = told(
    'what if we bought 4 bags of feed',
    'what if we lost 3 reds to a hawk',
    'suppose we put the reds out',
  );
  expect(supposed.length).toBeGreaterThan(0);
  expect(supposed.filter(({ supposing }) => supposing.length === 0)).toEqual([]);
  const plain = told('we bought 4 bags of feed', 'we lost 3 reds to a hawk', 'put the reds out');
  expect(plain.length).toBeGreaterThan(0);
  expect(plain.filter(({ supposing }) => supposing.length > 0)).toEqual([]);
});
