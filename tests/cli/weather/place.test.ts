/** Coordinates from words, and who is asked for the forecast of a place. */
import { expect, test } from 'vitest';
import { sourcesFor } from '../../../cli/weather/choose.ts';
import { readPlace, sayPlace } from '../../../cli/weather/place.ts';

test.each([
  ['44.1 -73.2', 44.1, -73.2],
  ['44.1, −73.2', 44.1, -73.2],
  ['44.1N 73.2W', 44.1, -73.2],
  ['33.9 south; 18.4 east', -33.9, 18.4],
  // A kilometre is near enough, and all that leaves the machine.
  ['44.123456 -73.987654', 44.12, -73.99],
  ['-0 0', 0, 0],
])('%s', (words, latitude, longitude) => {
  const place = readPlace(words);
  expect(place && [place.latitude + 0, place.longitude + 0]).toEqual([latitude, longitude]);
});

test.each(['', '44.1', 'here', '91 10', '44 181', '44.1 -73.2 5', '1e5 2', '44.1-73.2 x'])(
  '%j is no place',
  (words) => {
    expect(readPlace(words)).toBe(null);
  },
);

test('a place reads back as it was written', () => {
  expect(sayPlace({ latitude: 44.1, longitude: -73.2 })).toBe('44.1 -73.2');
});

test.each([
  ['Vermont', '44.1 -73.2', null, ['us', 'world']],
  ['Vermont, country told', '44.1 -73.2', true, ['us', 'world']],
  ['Hawaii', '19.7 -155.1', null, ['us', 'world']],
  ['Ontario, country not told', '43.7 -79.4', null, ['us', 'world']],
  ['Ontario, country told', '43.7 -79.4', false, ['world']],
  ['the Netherlands', '52.1 5.3', null, ['world']],
  ['the Netherlands, country mistaken', '52.1 5.3', true, ['world']],
  ['New Zealand', '-41 175', false, ['world']],
])('%s', (_, words, isInUs, ids) => {
  const place = readPlace(words);
  expect(place && sourcesFor(place, isInUs).map(({ id }) => id)).toEqual(ids);
});
