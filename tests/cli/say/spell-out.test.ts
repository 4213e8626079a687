/** Short forms as they are said. */
import { expect, test } from 'vitest';
import { spellOut } from '../../../cli/say/spell-out.ts';

test.each([
  [
    'the freezer has 14 ft³ and takes 25 lb/ft³',
    'the freezer has 14 cubic feet and takes 25 pounds per cubic foot',
  ],
  ['3.8 ft² of floor, 1 lamp', '3.8 square feet of floor, 1 lamp'],
  ['Brooder size: 4 ft x 8 ft.', 'Brooder size: 4 feet by 8 feet.'],
  ['1.2 m x 1.8 m, 2000 m²', '1.2 metres by 1.8 metres, 2000 square metres'],
  ['1 lb of feed, 2.4 lb (1,200 g)', '1 pound of feed, 2.4 pounds (1,200 grams)'],
  [
    '0.12 in of rain, dry shavings 3 in deep, 18 in above it',
    '0.12 inches of rain, dry shavings 3 inches deep, 18 inches above it',
  ],
  ['4 °C → 12 °C', '4 °C to 12 °C'],
  ['under the heat – piled up, wind 15 mph', 'under the heat, piled up, wind 15 miles an hour'],
])('%s', (written, said) => {
  expect(spellOut(written)).toBe(said);
});

test.each([
  '1 bird in a box, 2 in a day, 40 in the pen',
  'rule feed-buy/buy-more, Extension 2014',
  '{"rain":"3 mm","low":"51 F"}',
  'lines 3 g9, m 4, 2014 lbs',
  '$2.48 per lb, 61%, 08:00',
])('%s stays as it is', (text) => {
  expect(spellOut(text)).toBe(text);
});
