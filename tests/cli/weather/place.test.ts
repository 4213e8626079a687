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
  ['Windsor in Ontario, south of Detroit, country not told', '42.3 -83.0', null, ['us', 'world']],
  ['the same, country told', '42.3 -83.0', false, ['world']],
  ['the Netherlands', '52.1 5.3', null, ['world']],
  ['the Netherlands, country mistaken', '52.1 5.3', true, ['world']],
  ['New Zealand', '-41 175', false, ['world']],
])('%s', (_, words, isInUs, ids) => {
  const place = readPlace(words);
  expect(place && sourcesFor(place, isInUs).map(({ id }) => id)).toEqual(ids);
});

// Where these towns lie is from memory, to a tenth of a degree.
test.each([
  ['Toronto', '43.7 -79.4'],
  ['London in Ontario', '43.0 -81.2'],
  ['Ottawa', '45.4 -75.7'],
  ['Kingston in Ontario', '44.2 -76.5'],
  ['Montreal', '45.5 -73.6'],
  ['Sherbrooke', '45.4 -71.9'],
  ['Quebec', '46.8 -71.2'],
  ['Fredericton', '46.0 -66.6'],
  ['Halifax', '44.6 -63.6'],
  ['Thunder Bay', '48.4 -89.2'],
  ['Winnipeg', '49.9 -97.1'],
  ['Calgary', '51.0 -114.1'],
  ['Vancouver', '49.3 -123.1'],
  ['Victoria', '48.43 -123.4'],
  ['Whitehorse', '60.7 -135.1'],
])('%s is asked of the service for the world alone, though no country is told', (_, words) => {
  const place = readPlace(words);
  expect(place && sourcesFor(place, null).map(({ id }) => id)).toEqual(['world']);
});

test.each([
  ['Seattle', '47.6 -122.3'],
  ['Port Angeles', '48.1 -123.4'],
  ['Bellingham', '48.8 -122.5'],
  ['International Falls', '48.6 -93.4'],
  ['Duluth', '46.8 -92.1'],
  ['Marquette', '46.5 -87.4'],
  ['Detroit', '42.3 -83.1'],
  ['Cleveland', '41.5 -81.7'],
  ['Erie', '42.1 -80.1'],
  ['Buffalo', '42.9 -78.9'],
  ['Watertown in New York', '44.0 -75.9'],
  ['Plattsburgh', '44.7 -73.5'],
  ['Pittsburg in New Hampshire', '45.1 -71.4'],
  ['Jackman in Maine', '45.6 -70.3'],
  ['Caribou in Maine', '46.9 -68.0'],
  ['Eastport in Maine', '44.9 -67.0'],
  ['Key West', '24.6 -81.8'],
  ['Anchorage', '61.2 -149.9'],
  ['Juneau', '58.3 -134.4'],
  ['San Juan', '18.4 -66.1'],
])('%s is asked of the service of the United States first', (_, words) => {
  const place = readPlace(words);
  expect(place && sourcesFor(place, null).map(({ id }) => id)).toEqual(['us', 'world']);
});
