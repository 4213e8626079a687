/** Lines that tell how the place is and ask something in the same breath: which settings they tell, and what they ask. */
import { describe, expect, test } from 'vitest';
import { listener } from '../../helpers/heard.ts';

const { hear } = listener();

const bothIn = (words: string) => {
  const { told, readings } = hear(words);
  const settings = told?.reading.entries.map(({ fields }) => [fields.what, fields.value]);
  return { asked: readings[0]?.topic, told: Object.fromEntries(settings ?? []) };
};

describe('an idea told in one breath', () => {
  test.each([
    [
      'four of us, we eat about a chicken a week, 7 cubic feet free in the freezer, one pen 10 by 12, when do I order?',
      { eaters: '4', 'birds-a-week': '1', 'freezer-free': '7 ft3', pen: '10 ft x 12 ft', pens: '1' },
    ],
    [
      "uh so it's a family of five, we eat say 3 chickens every 2 weeks... there is 200 litres free in the freezer. pen's 3 by 3.6 m. when should I order chicks then",
      { eaters: '5', 'birds-a-week': '1.5', 'freezer-free': '200 l', pen: '3 m x 3.6 m' },
    ],
    [
      'when do we have to order? there are 2 adults and 3 kids, one pen 3 by 3.6 metres, 200 l free in the freezer and we eat a bird a week',
      { eaters: '5', 'birds-a-week': '1', 'freezer-free': '200 l', pen: '3 m x 3.6 m', pens: '1' },
    ],
    [
      '4 people, 1 chicken per week, 7 cu ft of freezer, single pen 10x12 ft - plan the year',
      { eaters: '4', 'birds-a-week': '1', freezer: '7 ft3', pen: '10 ft x 12 ft' },
    ],
    [
      "there's me, my wife and two kids, we get through a chicken a week. the freezer has 7 cubic feet to spare and I've a pen that's ten foot by twelve. when would I need to order?",
      { eaters: '4', 'birds-a-week': '1', 'freezer-free': '7 ft3', pen: '10 ft x 12 ft' },
    ],
  ])('%s', (words, told) => {
    expect(bothIn(words)).toEqual({ asked: 'season-plan', told });
  });
});

test('two volumes of one freezer are its size and what is free of it', () => {
  const line = 'we have a 14 cu ft freezer with 9 cubic feet free and 5 of us eating, when do I order chicks';
  expect(bothIn(line).told).toEqual({ freezer: '14 ft3', 'freezer-free': '9 ft3', eaters: '5' });
});

test.each([
  // A what-if tells nothing.
  'what if there were 6 of us and a chicken a week, when would I order',
  // Numbers of the question itself are no settings.
  'two 10-litre drinkers, filled each morning, for 48: does that cover it?',
  'one pen, 48 birds, is that too many',
  // What a question takes itself it supposes for one answer.
  'for 4 people and one bird a week, how many birds a year',
])('%s tells nothing', (words) => {
  expect(hear(words).told).toBeUndefined();
});
