/** Prices that a question names: of a bird or of a weight, marked as money or bare. */
import { describe, expect, test } from 'vitest';
import { listener } from '../../../helpers/heard.ts';

const { hear } = listener();

const priceIn = (words: string) => {
  const [reading] = hear(words).readings;
  const slots = reading?.slots ?? {};
  return {
    topic: reading?.topic,
    bird: slots['price-a-bird'],
    weight: slots['price-a-weight'],
    unit: slots.unit,
  };
};

describe('a price', () => {
  test.each([
    ['is 15 a bird enough', { bird: 15 }],
    ['would 20 each cover my costs', { bird: 20 }],
    ['is $12.50 a bird too cheap', { bird: 12.5 }],
    ['is 5 a pound a fair price', { weight: 5, unit: 'money/lb' }],
    ['do I make a profit at 4.50 a lb', { weight: 4.5, unit: 'money/lb' }],
    ['would 9 a kilo pay for itself', { weight: 9, unit: 'money/kg' }],
    ['what should I charge for a bird', {}],
  ])('%s', (words, price) => {
    expect(priceIn(words)).toEqual({
      topic: 'fair-price',
      bird: undefined,
      weight: undefined,
      unit: undefined,
      ...price,
    });
  });

  test('is no slot of a question that does not take one', () => {
    const { bird, weight } = priceIn('how many bags should I buy at 20 a bag');
    expect({ bird, weight }).toEqual({ bird: undefined, weight: undefined });
  });
});
