/** What is said in a record and taken by none of its fields is kept, to be said back. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { draftsBy, listener } from '../../helpers/heard.ts';
import { readLabelled } from '../../understanding/score.ts';

const { hear } = listener();
const draftsOf = draftsBy(hear);
const today = '2026-05-14';

/** What is left of a line, as a record, beside a question or by a question. */
const leftOf = (words: string): readonly string[] => {
  const heard = hear(words);
  return heard.told?.reading.leftOut ?? heard.readings[0]?.leftOut ?? [];
};

test.each([
  ['we ate 1 last night and 2 on sunday', ['2 on sunday']],
  ['40 slow reds came last night, hatched on the 12th, $3.10 each', ['$3.10 each']],
  ['put 15 of the reds out on grass today, the other 9 go on friday', ['the other 9 go on friday']],
  ['slaughtered 15 whites yesterday, 1.6 to 1.9 kilo', ['1.6 to 1.9 kilo']],
  ['bought 4 bags of grower for 96, delivery 12', ['delivery 12']],
  ['fed the whites and gave them 3 pounds, is that about right?', ['fed the whites and gave them 3 pounds']],
])('"%s" leaves a part that no record took', (words, left) => {
  expect(leftOf(words)).toEqual(left);
});

test('a purchase told beside a question that takes nothing of it is said back', () => {
  expect(leftOf('I buy 4 bag grower, 78 euro all. for how many days is enough?')).toEqual([
    'I buy 4 bag grower, 78 euro all',
  ]);
});

test.each([
  'weighed 5 reds today: 4.1, 4.3, 4.0, 3.9 and 4.4 lb',
  'lost 2 reds and 1 white to a hawk',
  'bought 10 bags of grower at 24, 240 in all',
  'fed the whites 10 lb and the reds 8, moved the pen and it was 46 last night',
  'gave the whites 12 lb five minutes before church, and the dog was good',
  'moved the pen, no coughing, all fine',
  'lost a red to the hawk on sunday, right?',
  'fed the reds 3 lb, not 4',
  'it went down to 38 last night, 71 by noon',
])('"%s" leaves nothing', (words) => {
  expect(leftOf(words)).toEqual([]);
});

test('birds promised behind birds handed over are a record of their own', () => {
  expect(draftsOf('the Pruitts came for their 4 and paid 92, and the Alders would like 3')).toEqual([
    { kind: 'share', on: today, who: 'the Pruitts', count: 4, step: 'handed' },
    { kind: 'share', on: today, who: 'the Pruitts', count: 4, step: 'paid', paid: '92.00' },
    { kind: 'share', on: today, who: 'the Alders', count: 3, step: 'promised' },
  ]);
});

test('one thing after another bought for its own price is a purchase each', () => {
  expect(draftsOf('bought 10 bags of grower for 240, bedding for 18 and a drum plucker for 200')).toEqual([
    {
      kind: 'buy',
      on: today,
      what: 'feed',
      ration: 'grower',
      bags: '10 bag',
      amount: '500 lb',
      price: '240.00',
    },
    { kind: 'buy', on: today, what: 'bedding', price: '18.00' },
    { kind: 'buy', on: today, what: 'gear', price: '200.00' },
  ]);
});

test('a loss beside a sign on another bird is a loss, and the sign is of that bird', () => {
  expect(draftsOf('two whites perished, and blood in the droppings of a red one')).toEqual([
    { kind: 'loss', on: today, group: 'whites', count: 2 },
    {
      kind: 'sign',
      on: today,
      sign: 'bloody-droppings',
      group: 'reds',
      count: 1,
      words: 'blood in the droppings of a red one',
    },
  ]);
});

test('one of the others, dead beside those that were processed, is of the group that is left', () => {
  expect(
    draftsOf('Done, 30 whites slaughtered, 63,5 kg dressed all together, and 1 of the others was dead'),
  ).toEqual([
    { kind: 'process', on: today, group: 'whites', count: 30, dressed: '63.5 kg' },
    { kind: 'loss', on: today, group: 'reds', count: 1 },
  ]);
});

test.each(['vicar', 'shearer', 'cook'])(
  'of what the %s tells, little is left: some, and less than 6 %%',
  (voice) => {
    const path = new URL(`../../../rules/voices/${voice}.jsonl`, import.meta.url);
    const told = readLabelled(readFileSync(path, 'utf8')).filter(({ topic }) => topic.startsWith('tell:'));
    const share = told.filter(({ text }) => leftOf(text).length > 0).length / told.length;
    expect(share).toBeGreaterThan(0);
    expect(share).toBeLessThan(0.06);
  },
);
