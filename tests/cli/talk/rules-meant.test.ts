/** Rules and figures that a keeper means in a what-if, by the words. */
import { describe, expect, test } from 'vitest';
import { figureMeant } from '../../../cli/talk/figure-meant.ts';
import { rulesMeant } from '../../../cli/talk/rules-meant.ts';
import { shipped } from '../../helpers/flock-of.ts';

describe('a rule', () => {
  test.each([
    ['feather', ['go-out/not-feathered']],
    ['feathers', ['go-out/not-feathered']],
    ['cold rain', ['go-out/cold-rain']],
    ['ground rest', ['go-out/ground-used-up']],
    ['hardening', ['go-out/not-hardened']],
    ['moon', []],
  ])('called %s', (words, ids) => {
    expect(rulesMeant(shipped, ['go-out'], words)).toEqual(ids);
  });

  test('is one of the questions asked about alone', () => {
    expect(rulesMeant(shipped, ['fair-price'], 'feather')).toEqual([]);
    expect(rulesMeant(shipped, ['fair-price', 'go-out'], 'feather')).toEqual(['go-out/not-feathered']);
  });
});

describe('a figure', () => {
  test.each([
    ['hardening took only 2 days', 'pasture/hardening-days', { value: 2, unit: 'day' }],
    ['the youngest out were 5 weeks', 'pasture/youngest-out', { value: 5, unit: 'week' }],
    ['the lowest night were 40 °F', 'pasture/lowest-night', { value: 40, unit: 'F' }],
  ])('named in: %s', (words, figure, quantity) => {
    expect(figureMeant(shipped, 'go-out', words)).toEqual({ figure, quantity });
  });

  test.each([
    ['without an amount', 'hardening took longer'],
    ['with an amount of something else', 'hardening took 2 lb'],
    ['not behind the question', 'the certainty were 95 %'],
    ['by half of its name only', 'it lasted 3 days'],
  ])('%s is none', (_, words) => {
    expect(figureMeant(shipped, 'go-out', words)).toBeUndefined();
  });
});
