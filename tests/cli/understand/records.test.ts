import { expect, test } from 'vitest';
import { draftsBy, listener } from '../../helpers/heard.ts';

const { hear } = listener();

const draftsOf = draftsBy(hear);

const today = '2026-05-14';
const lastNight = '2026-05-13';
const tomorrow = '2026-05-15';

test.each([
  [
    'lost 2 reds to a hawk last night',
    [{ kind: 'loss', on: lastNight, group: 'reds', count: 2, cause: 'hawk' }],
  ],
  [
    'lost another chick, no idea why',
    [{ kind: 'loss', on: today, count: 1, cause: 'unknown', missing: ['group'] }],
  ],
  ['fed 25 lb', [{ kind: 'feed', on: today, amount: '25 lb' }]],
  ['fed the whites half a bag', [{ kind: 'feed', on: today, group: 'whites', amount: '25 lb' }]],
  ['fed the reds 3 scoops', [{ kind: 'feed', on: today, group: 'reds', amount: '9 lb' }]],
  ['gave the reds two buckets', [{ kind: 'feed', on: today, group: 'reds', missing: ['amount'] }]],
  ['low of 38 tonight', [{ kind: 'weather', on: today, low: '38 F', forecast: true }]],
  ["it's going to be 92 on saturday", [{ kind: 'weather', on: '2026-05-16', high: '92 F', forecast: true }]],
  ['forecast low of 34 saturday', [{ kind: 'weather', on: '2026-05-16', low: '34 F', forecast: true }]],
  ['it hit 93 on tuesday', [{ kind: 'weather', on: '2026-05-12', high: '93 F' }]],
  ['the low on tuesday was 34', [{ kind: 'weather', on: '2026-05-12', low: '34 F' }]],
  // Either saturday may be meant, so it is asked which.
  ['a high of 88 on saturday', [{ kind: 'weather', on: '2026-05-09', high: '88 F', missing: ['on'] }]],
  ['low of 34 last saturday', [{ kind: 'weather', on: '2026-05-09', low: '34 F' }]],
  ['our currency is pounds', [{ kind: 'setting', on: today, what: 'currency', value: '£' }]],
  ['currency is euros', [{ kind: 'setting', on: today, what: 'currency', value: '€' }]],
  // What one chick costs is no sum until it is known how many there are.
  ['bought chicks at 2.20 each', [{ kind: 'buy', on: today, what: 'chicks', missing: ['count'] }]],
  ['it was 46 last night', [{ kind: 'weather', on: lastNight, low: '46 F' }]],
  [
    'high of 79 tomorrow, low of 66',
    [{ kind: 'weather', on: tomorrow, low: '66 F', high: '79 F', forecast: true }],
  ],
  [
    '46 last night, high of 80',
    [
      { kind: 'weather', on: lastNight, low: '46 F' },
      { kind: 'weather', on: today, high: '80 F' },
    ],
  ],
  [
    'weighed 10 whites, 42 lb in all',
    [{ kind: 'weigh', on: today, group: 'whites', mean: '4.2 lb', count: 10 }],
  ],
  [
    'heat off for the whites since may 4',
    [
      {
        kind: 'sign',
        on: '2026-05-04',
        sign: 'heat-off',
        group: 'whites',
        words: 'heat off for the whites since may 4',
      },
    ],
  ],
  ['the pen is not covered', [{ kind: 'setting', on: today, what: 'pen-cover', value: 'no' }]],
  ['we are five people', [{ kind: 'setting', on: today, what: 'eaters', value: '5' }]],
  [
    'two 3 gallon waterers',
    [
      { kind: 'setting', on: today, what: 'drinker-size', value: '3 gal' },
      { kind: 'setting', on: today, what: 'drinkers', value: '2' },
    ],
  ],
  [
    'we expect 50 chicks on Monday',
    [
      { kind: 'setting', on: today, what: 'chicks-coming', value: '50' },
      { kind: 'setting', on: today, what: 'chicks-on', value: '2026-05-18' },
    ],
  ],
  [
    'we have 2 lamps of 250 watts',
    [
      { kind: 'setting', on: today, what: 'lamps', value: '2' },
      { kind: 'setting', on: today, what: 'lamp-watts', value: '250' },
    ],
  ],
  ['high 75 low 50', [{ kind: 'weather', on: today, high: '75 F', low: '50 F' }]],
  ['it rained 12 mm', [{ kind: 'weather', on: today, rain: '12 mm' }]],
  [
    'weighed five: 3.1 3.4 2.9 3.3 3.6',
    [
      {
        kind: 'weigh',
        on: today,
        weights: ['3.1 lb', '3.4 lb', '2.9 lb', '3.3 lb', '3.6 lb'],
        missing: ['group'],
      },
    ],
  ],
  [
    'five whites averaged 2.31 kg',
    [{ kind: 'weigh', on: today, group: 'whites', mean: '2.31 kg', count: 5 }],
  ],
  ['the biggest white is 6 lb 2 oz', [{ kind: 'weigh', on: today, group: 'whites', weights: ['6.125 lb'] }]],
  ['moved the pen', [{ kind: 'move', on: today }]],
  ['moved the whites 10 ft', [{ kind: 'move', on: today, group: 'whites', distance: '10 ft' }]],
  ['put the whites out', [{ kind: 'out', on: today, group: 'whites', to: 'pen' }]],
  ['put them on pasture yesterday', [{ kind: 'out', on: lastNight, group: 'reds', to: 'pen' }]],
  [
    'took the reds outside for the day',
    [{ kind: 'out', on: today, group: 'reds', to: 'pen', 'days-only': true }],
  ],
  ['brought the whites back in to the brooder', [{ kind: 'out', on: today, group: 'whites', to: 'brooder' }]],
  [
    'bought 6 bags at 19.50',
    [{ kind: 'buy', on: today, what: 'feed', bags: '6 bag', amount: '300 lb', price: '117.00' }],
  ],
  [
    'bought 4 bags of grower for the reds at 20',
    [
      {
        kind: 'buy',
        on: today,
        what: 'feed',
        ration: 'grower',
        bags: '4 bag',
        amount: '200 lb',
        price: '80.00',
        group: 'reds',
      },
    ],
  ],
  ['new waterer was 25 bucks', [{ kind: 'buy', on: today, what: 'gear', price: '25.00' }]],
  [
    '50 whites hatched tuesday came this morning, 1 dead',
    [{ kind: 'arrive', on: today, group: 'whites', count: 50, dead: 1, bird: 'fast', hatched: '2026-05-12' }],
  ],
  [
    'box came, 26 in it and one dead',
    [{ kind: 'arrive', on: today, count: 26, dead: 1, missing: ['group', 'bird', 'hatched'] }],
  ],
  ['brooder is 4 by 6 ft', [{ kind: 'setting', on: today, what: 'brooder', value: '4 ft x 6 ft' }]],
  ['pen is 10x12', [{ kind: 'setting', on: today, what: 'pen', value: '10 ft x 12 ft' }]],
  ['we want 5 lb birds', [{ kind: 'setting', on: today, what: 'wanted-carcass', value: '5 lb' }]],
  ['there is 80 lb of feed left', [{ kind: 'setting', on: today, what: 'feed-in-stock', value: '80 lb' }]],
  ['feed is 22.50 a bag', [{ kind: 'setting', on: today, what: 'feed-price', value: '22.50' }]],
  ['bags are 40 lb now', [{ kind: 'setting', on: today, what: 'bag', value: '40 lb' }]],
  ['the lamps are 250 watts', [{ kind: 'setting', on: today, what: 'lamp-watts', value: '250' }]],
  ['there are 5 of us eating', [{ kind: 'setting', on: today, what: 'eaters', value: '5' }]],
  ['pen is open on top', [{ kind: 'setting', on: today, what: 'pen-cover', value: 'no' }]],
  [
    'processing is booked for 12 june',
    [{ kind: 'setting', on: today, what: 'process-on', value: '2026-06-12' }],
  ],
  [
    'heat off for the reds',
    [{ kind: 'sign', on: today, sign: 'heat-off', group: 'reds', words: 'heat off for the reds' }],
  ],
  [
    'whites are fully feathered',
    [{ kind: 'sign', on: today, sign: 'feathered', group: 'whites', words: 'whites are fully feathered' }],
  ],
  [
    'slaughtered 4 whites, 4.8 5.1 5.0 and 4.6 lb',
    [
      {
        kind: 'process',
        on: today,
        group: 'whites',
        count: 4,
        weights: ['4.8 lb', '5.1 lb', '5 lb', '4.6 lb'],
      },
    ],
  ],
  [
    'processed 20 whites 98 lb dressed',
    [{ kind: 'process', on: today, group: 'whites', count: 20, dressed: '98 lb' }],
  ],
  [
    'holding two small whites back until 8 july',
    [{ kind: 'keep', on: today, group: 'whites', count: 2, until: '2026-07-08', why: 'small' }],
  ],
  [
    'my sister paid for her two birds, 40 dollars',
    [{ kind: 'share', on: today, who: 'my sister', count: 2, step: 'paid', paid: '40.00' }],
  ],
  [
    'my sister paid 60 for 4',
    [{ kind: 'share', on: today, who: 'my sister', count: 4, step: 'paid', paid: '60.00' }],
  ],
  ['the Millers want 6', [{ kind: 'share', on: today, who: 'the Millers', count: 6, step: 'promised' }]],
  ['paid the butcher 90', [{ kind: 'buy', on: today, what: 'processing', price: '90.00' }]],
  ['our country is the USA', [{ kind: 'setting', on: today, what: 'country', value: 'the USA' }]],
  ['my time is 12 an hour', [{ kind: 'setting', on: today, what: 'labour-price', value: '12.00' }]],
  ['electricity is 0.15', [{ kind: 'setting', on: today, what: 'electricity-price', value: '0.15' }]],
  ['we ask 18 a bird', [{ kind: 'setting', on: today, what: 'bird-price', value: '18.00' }]],
  ['mr lopez took his 4', [{ kind: 'share', on: today, who: 'mr lopez', count: 4, step: 'handed' }]],
  ['ate one of ours on sunday', [{ kind: 'eat', on: '2026-05-10', count: 1 }]],
  ['note the gate hinge needs oil', [{ kind: 'note', on: today, words: 'the gate hinge needs oil' }]],
])('%s', (words, drafts) => {
  expect(draftsOf(words)).toEqual(drafts);
});

test('what was taken for granted is said aloud', () => {
  expect(hear('bought 6 bags at 19.50').readings[0]?.assumed).toEqual(['taking a bag as 50 lb']);
  expect(hear('ate one of ours on sunday').readings[0]?.assumed).toEqual(['taking sunday as Sunday 10 May']);
  expect(hear('put them on pasture').readings[0]?.assumed).toEqual([
    'taking the reds, the only group it can be',
  ]);
});

test('an asked field is filled by its answer', () => {
  const draft = { kind: 'loss', on: lastNight, fields: { count: 2, cause: 'hawk' }, missing: ['group'] };
  const heard = hear('the reds', { asking: { draft, field: 'group' } });
  expect(heard.readings[0]?.entries).toEqual([
    { kind: 'loss', on: lastNight, fields: { count: 2, cause: 'hawk', group: 'reds' }, missing: [] },
  ]);
});

test.each([
  ['arrive', 'hatched', 'tuesday', '2026-05-12'],
  ['arrive', 'bird', 'slow', 'slow'],
  ['arrive', 'group', 'the late reds', 'late reds'],
  ['arrive', 'count', '26', 26],
  ['feed', 'amount', '25', '25 lb'],
  ['share', 'who', 'my aunt Jo', 'my aunt Jo'],
  ['figure', 'reason', 'our mill packs smaller bags', 'our mill packs smaller bags'],
])('the answer to %s: %s', (kind, field, words, value) => {
  const draft = { kind, on: today, fields: {}, missing: [field] };
  expect(hear(words, { asking: { draft, field } }).readings[0]?.entries[0]).toEqual({
    kind,
    on: today,
    fields: expect.objectContaining({ [field]: value }),
    missing: [],
  });
});

test('a question in place of an answer is heard as the question', () => {
  const draft = { kind: 'loss', on: today, fields: { count: 2 }, missing: ['group'] };
  expect(hear('how much feed this week', { asking: { draft, field: 'group' } }).readings[0]?.topic).toBe(
    'feed-amount',
  );
});
