import { expect, test } from 'vitest';
import { findOften } from '../../../../cli/understand/find/often.ts';
import { tokenise } from '../../../../cli/understand/tokens.ts';
import { listener } from '../../../helpers/heard.ts';

test.each([
  ['every other day', 1 / 2],
  ['only every third day', 1 / 3],
  ['every 4 days', 1 / 4],
  ['twice a day', 2],
  ['once a week', 1 / 7],
  ['daily', 1],
  ['tomorrow', null],
])('%s', (words, often) => {
  expect(findOften(tokenise(words))).toBe(often);
});

const { hear } = listener();
const supposed = (words: string) =>
  hear(words).readings[0]?.supposing.map(({ fact, value, unit }) => [fact, value, unit]);

test('a supposed rhythm is that of the pen, unless something else is done so often', () => {
  expect(supposed('will the ground last if I just did every other day')).toEqual([
    ['moves-a-day', 0.5, null],
  ]);
  expect(supposed('how much feed if I fed them every other day')).not.toContainEqual([
    'moves-a-day',
    0.5,
    null,
  ]);
});

test('a supposed size is that of the pen or of the ground', () => {
  expect(supposed('would the grass last if the ground was 30 by 60 ft')).toEqual([
    ['ground-area', 1800, 'ft2'],
  ]);
  expect(supposed('how many moves left if the pen was 8 by 10 ft')).toEqual([
    ['pen-area', 80, 'ft2'],
    ['pen-length', 10, 'ft'],
    ['pen-width', 8, 'ft'],
  ]);
});

test('ground named in a question is a slot of its own', () => {
  expect(hear('is half an acre of grass enough until processing').readings[0]?.slots).toMatchObject({
    ground: 0.5,
    unit: 'ac',
  });
  expect(hear('would 60 by 50 ft of ground do').readings[0]?.slots).toMatchObject({
    ground: 3000,
    unit: 'ft2',
  });
});
