/** Which lines speak of fetching forecasts, and which only of the weather. */
import { expect, test } from 'vitest';
import { forecastWish } from '../../../cli/talk/forecast-wish.ts';

test.each([
  ['forecast on', { wish: 'on' }],
  ['Turn the forecast on, please.', { wish: 'on' }],
  ['switch on weather forecasts', { wish: 'on' }],
  ['forecast off', { wish: 'off' }],
  ['stop fetching the forecast', { wish: 'off' }],
  ['get the forecast', { wish: 'get' }],
  ['please update the weather', { wish: 'get' }],
  ['fetch a new forecast now', { wish: 'get' }],
  ['show me the forecast', { wish: 'show' }],
  ['forecast?', { wish: 'show' }],
  ['our place is at 44.1 -73.2', { wish: 'place', place: '44.1 -73.2' }],
  ['forecast at 44.1 −73.2', { wish: 'place', place: '44.1 -73.2' }],
  ['the coordinates are 52.12345, 5.3', { wish: 'place', place: '52.12 5.3' }],
  ['we are at 44.1 N 73.2 W', { wish: 'place', place: '44.1 -73.2' }],
  ['our place is at 144.1, -73.2', { wish: 'no-place' }],
])('%s', (words, wish) => {
  expect(forecastWish(words)).toEqual(wish);
});

test.each([
  'forecast low 6 C for tonight',
  'forecast says 35 tonight',
  'weather forecast for wednesday is 33 C with rain',
  'how cold will it get tonight',
  'place is Maple Hollow',
  'we are at 40 birds',
  'get the birds in',
  'heat lamp on',
  '',
])('%j is none of them', (words) => {
  expect(forecastWish(words)).toBe(null);
});
