/** Lows, highs and humidity in questions, also where only a bare number is said. */
import { describe, expect, test } from 'vitest';
import { listener } from '../../../helpers/heard.ts';

const { hear } = listener();

const airIn = (words: string) => {
  const { low, high, humidity, wind, unit, count } = hear(words).readings[0]?.slots ?? {};
  return { low, high, humidity, wind, unit, count };
};
const none = {
  low: undefined,
  high: undefined,
  humidity: undefined,
  wind: undefined,
  unit: undefined,
  count: undefined,
};

describe('the air of a question', () => {
  test.each([
    ['is 97 F with 65 % humidity dangerous for the whites', { high: 97, humidity: 65, unit: 'F' }],
    ['are the whites all right in the pen at 35 C and humidity of 20', { high: 35, humidity: 20, unit: 'C' }],
    ['with a low of 30 F tonight will they be all right out there', { low: 30, unit: 'F' }],
    [
      'a high of 95 F and a low of 70 F tomorrow, are the whites safe in the heat',
      { high: 95, low: 70, unit: 'F' },
    ],
    ['are the birds safe in the pen in a wind of 40 mph', { wind: 40, unit: 'mph' }],
  ])('%s', (words, air) => {
    expect(airIn(words)).toEqual({ ...none, ...air });
  });
});

describe('a bare number', () => {
  test.each([
    ['it will go down to 33 tonight, will the whites be alright out there', { low: 33 }],
    ['it is going to be 96 tomorrow, what do I do for the birds in the heat', { high: 96 }],
    ['its about 20 out, are they too cold out there', { low: 20 }],
  ])('is degrees where the air is spoken of: %s', (words, air) => {
    expect(airIn(words)).toEqual({ ...none, ...air });
  });

  test.each([
    ['how much water do 40 birds drink on a hot day', { count: 40 }],
    ['are 2 nights in the cold pen too much for them', { count: 2 }],
  ])('is no degrees where things are counted: %s', (words, counted) => {
    expect(airIn(words)).toEqual({ ...none, ...counted });
  });
});
