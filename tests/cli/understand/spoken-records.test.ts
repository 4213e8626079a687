/** Records as they are spoken: parts added up, totals and means, sized bags, prices in words, several groups in one breath. */
import { expect, test } from 'vitest';
import { finderFor } from '../../../cli/understand/finder.ts';
import { tell } from '../../../cli/understand/tell.ts';
import { listener } from '../../helpers/heard.ts';
import { lexiconFor } from '../../helpers/learned.ts';

const { about } = listener();
const find = finderFor(about, lexiconFor(about.book));

/** The fields of the drafts of one kind, whatever else the line might be about. */
const told = (kind: string, words: string): readonly object[] => {
  const draft = tell(kind, words, find(words), about, null);
  return draft === null ? [] : [draft.draft, ...draft.also].map(({ fields }) => fields);
};

test.each([
  ['keep', '2 roosters and 8 hens from the reds', [{ group: 'reds', count: 10 }]],
  ['keep', 'a trio of reds stays', [{ group: 'reds', count: 3 }]],
  ['process', '24 whites whole plus 6 cut in parts', [{ group: 'whites', count: 30 }]],
  ['loss', 'a white drowned', [{ group: 'whites', count: 1, cause: 'drowned' }]],
  ['loss', 'minus three of the reds', [{ group: 'reds', count: 3 }]],
  ['loss', '2 W dead', [{ group: 'whites', count: 2 }]],
  ['loss', 'four of the whites, not three', [{ group: 'whites', count: 4 }]],
  ['weigh', 'average of eight whites, 1.62 kg', [{ group: 'whites', mean: '1.62 kg', count: 8 }]],
  ['weigh', 'ten whites in a crate, 43 lb', [{ group: 'whites', mean: '4.3 lb', count: 10 }]],
  [
    'weigh',
    'hung three reds: 1 lb 2, 1 lb 4, 1 lb 1',
    [{ group: 'reds', weights: ['1.125 lb', '1.25 lb', '1.0625 lb'] }],
  ],
  ['feed', 'a stone of pellets to the big ones', [{ group: 'whites', amount: '1 stone' }]],
  ['feed', 'two buckets each 6 kg for the little ones', [{ group: 'reds', amount: '12 kg' }]],
  [
    'feed',
    '9 kilo whites, 3 kilo reds',
    [
      { group: 'whites', amount: '9 kg' },
      { group: 'reds', amount: '3 kg' },
    ],
  ],
  ['feed', 'half a 20 kg bag to the reds', [{ group: 'reds', amount: '10 kg' }]],
  [
    'buy',
    'bought 8 x 20 kg grower at $27.90',
    [{ what: 'feed', ration: 'grower', bags: '8 bag', amount: '160 kg', price: '223.20' }],
  ],
  [
    'buy',
    'three sacks of starter at twelve pound eighty',
    [{ what: 'feed', ration: 'starter', bags: '3 bag', amount: '150 lb', price: '38.40' }],
  ],
  ['buy', 'a new bulb, 11,90', [{ what: 'gear', price: '11.90' }]],
  ['weather', '97/63', [{ low: '63 F', high: '97 F' }]],
  ['weather', '88 saturday', [{ high: '88 F' }]],
  ['weather', 'gusted to 85 last night', [{ wind: '85 mph' }]],
  ['weather', 'frost, 31 at six this morning', [{ low: '31 F' }]],
  [
    'share',
    'Dilys collected her two, paid 24',
    [
      { who: 'Dilys', count: 2, step: 'handed' },
      { who: 'Dilys', count: 2, step: 'paid', paid: '24.00' },
    ],
  ],
  ['share', "barber's down for four", [{ who: 'barber', count: 4, step: 'promised' }]],
  [
    'arrive',
    'two boxes of whites, 25 in each, hatched on the 11th, 52 ordered',
    [{ group: 'whites', count: 50, bird: 'fast', hatched: '2026-05-11' }],
  ],
  ['out', 'the reds are out on the grass', [{ group: 'reds', to: 'pen' }]],
])('%s: %s', (kind, words, wanted) => {
  expect(told(kind, words)).toEqual(wanted);
});

test.each([
  ['feed', 'gave them some', ['amount']],
  ['loss', 'two dead', ['group']],
  ['weigh', 'two whites weighed 9 lb', ['weights']],
])('%s: %s lacks what it does not say', (kind, words, missing) => {
  expect(tell(kind, words, find(words), about, null)?.draft.missing).toEqual(missing);
});
