import { describe, expect, test } from 'vitest';
import { drawPicture, pictureToken } from '../../../cli/picture/draw.ts';
import { joinPictures, widths } from '../../../cli/picture/picture.ts';
import { columnsOf } from '../../../cli/say/columns.ts';
import type { PictureData, PictureKind } from '../../../engine/types.ts';
import { rulebook } from '../../helpers/rulebook-of.ts';

const { book } = rulebook();
const speech = { book, system: 'metric', currency: '$', today: '2026-05-14' } as const;
const data = (kind: PictureKind, series: object, group: string | null = null): PictureData => ({
  kind,
  group,
  series: JSON.stringify(series),
});

const growth = data(
  'growth',
  {
    from: '2026-04-14',
    to: '2026-06-03',
    today: '2026-05-14',
    ready: null,
    line: [
      [0, 0, 0, 0],
      [25, 0.9, 1, 1.1],
      [50, 1.6, 2, 2.4],
    ],
    weighings: [[25, 1.05]],
  },
  'whites',
);
const stock = data('stock', { from: '2026-05-14', out: '2026-05-16', bag: 25, left: [30, 18, 6, 0] });
const ground = data('ground', {
  places: 5,
  used: [5, 2, 0],
  pens: [
    { groups: ['whites'], strip: 2, place: 1, away: false },
    { groups: ['reds', 'blues'], strip: 3, place: 0, away: true },
  ],
});
const year = data('year', {
  today: '2026-05-14',
  batches: [
    { group: 'whites', hatched: '2026-04-12', out: '2026-05-06', end: '2026-06-04', isGone: false },
    { group: 'autumn reds', hatched: '2025-11-20', out: null, end: '2026-02-01', isGone: true },
    { group: 'others', hatched: '2025-03-01', out: null, end: '2025-05-01', isGone: true },
  ],
});

test('growth stands against age, with its range and what was weighed', () => {
  expect(drawPicture(speech, growth, true)).toEqual({
    lines: [
      '  2.4 kg |                             |                 :::',
      '         |                             |            :::::::*',
      '         |                             |       ::::::******:',
      '         |                             |  ::::*******:::::::',
      '         |                           ::|******:::::::::',
      '         |                     ::**o***|:::::',
      '         |               ::******:::   |',
      '         |         :*******::          |',
      '         |   :******:                  |',
      '    0 kg |****                         |',
      '         +--------------------------------------------------',
      '          Tuesday 14 April                  Wednesday 3 June',
      '          * expected  : range  o weighed  | today',
    ],
    says: 'Growth of the whites: about 1.2 kg on Thursday 14 May, between 1 kg and 1.4 kg; 2 kg expected on Wednesday 3 June; weighed once, last 1.1 kg on Saturday 9 May.',
  });
});

test('feed in hand runs down a bar a day', () => {
  expect(drawPicture(speech, stock, true)).toEqual({
    lines: [
      'Thursday 14 May ######################## 30 kg',
      'Friday 15 May   ############## 18 kg',
      'Saturday 16 May ##### 6 kg',
      'Sunday 17 May    0 kg',
    ],
    says: 'Feed in hand: 30 kg at the beginning of Thursday 14 May, not enough any more on Saturday 16 May.',
  });
});

test('the ground has a row for each strip; one walked back is seen from its far end', () => {
  expect(drawPicture(speech, ground, true)).toEqual({
    lines: ['strip 1   =====', 'strip 2   ...P=', 'strip 3   P....', '          P pen  = used  . fresh'],
    says: 'The ground: 3 strips of 5 places each, 8 of them fresh; the whites on strip 2, place 2 and the reds and blues on strip 3, place 1.',
  });
});

test('the year has its batches one under the other, those of other years left out', () => {
  expect(drawPicture(speech, year, true)).toEqual({
    lines: [
      '2026       Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec',
      'whites                  ===#####',
      'autumn re  =====',
      '                            | today',
      '           = brooder  # grass',
    ],
    says: 'The batches of 2026: the whites hatched on Sunday 12 April, out on Wednesday 6 May, to be processed on Thursday 4 June and the autumn reds hatched on Thursday 20 November 2025, gone by Sunday 1 February.',
  });
});

describe.each([growth, stock, ground, year])('$kind', (picture) => {
  test.each(widths)('fits %i columns, with and without drawing characters', (width) => {
    for (const isPlain of [true, false]) {
      const { lines } = drawPicture(speech, picture, isPlain, width);
      expect(lines.filter((line) => columnsOf(line) > width)).toEqual([]);
    }
  });

  test('has a drawing for each width, the widest first, and one sentence for all', () => {
    const token = pictureToken(speech, picture, true);
    expect(token).toEqual({
      t: 'picture',
      drawings: widths.map((width) => drawPicture(speech, picture, true, width).lines),
      says: drawPicture(speech, picture, true).says,
    });
  });

  test('holds nothing but ASCII where it may not', () => {
    expect(drawPicture(speech, picture, true).lines.filter((line) => /[^ -~]/.test(line))).toEqual([]);
  });
});

test.each([
  ['growth', growth],
  ['stock', stock],
  ['year', year],
])('%s uses the room of a wider window', (_kind, picture) => {
  const [wide = 0, , narrow = 0] = widths.map((width) =>
    Math.max(...drawPicture(speech, picture, true, width).lines.map(columnsOf)),
  );
  expect(wide).toBeGreaterThan(narrow + 20);
});

test('several pictures become one, and none becomes none', () => {
  const one = { lines: ['a'], says: 'A.' };
  expect(joinPictures([one, one])).toEqual({ lines: ['a', '', 'a'], says: 'A. A.' });
  expect(joinPictures([])).toBeNull();
});
