/** What is done with carcasses after the ice water: how long to chill and rest them, and how long they keep. */
import { defineFact } from '../define.ts';
import { onlyAsked } from '../told.ts';
import { chillClass, chillFigures, chillSpan } from './chill.ts';

/** What a question may be about besides chilling, by what its words say; the first that they say counts. */
const topics = [
  ['asks-to-cook', 'cooking'],
  ['asks-to-thaw', 'thawing'],
  ['asks-old-meat', 'old meat'],
  ['asks-to-keep', 'keeping'],
  ['asks-to-rest', 'resting'],
] as const;

export const storeFacts = [
  onlyAsked('asks-to-cook', null, 'no'),
  onlyAsked('asks-to-thaw', null, 'no'),
  onlyAsked('asks-to-keep', null, 'no'),
  onlyAsked('asks-to-rest', null, 'no'),
  onlyAsked('asks-old-meat', null, 'no'),
  onlyAsked('asks-giblets', null, 'no'),
  onlyAsked('asks-parts', null, 'no'),
  defineFact({
    id: 'meat-asked',
    unit: null,
    per: 'flock',
    needs: topics.map(([fact]) => fact),
    compute: (read) => topics.find(([fact]) => read.text(fact) === 'yes')?.[1] ?? 'chilling',
  }),
  // A weight that only the question can name.
  defineFact({ id: 'carcass-told', unit: 'kg', per: 'flock', compute: () => undefined }),
  defineFact({
    id: 'chill-weight',
    unit: 'kg',
    per: 'flock',
    wants: ['carcass-told', 'wanted-carcass'],
    compute: (read) => read.maybe('carcass-told') ?? read.maybe('wanted-carcass'),
  }),
  defineFact({
    id: 'chill-class',
    unit: null,
    per: 'flock',
    needs: ['chill-weight'],
    figures: chillFigures,
    compute: (read) => chillClass(read, read.number('chill-weight')),
  }),
  defineFact({
    id: 'chill-hours',
    unit: 'day',
    per: 'flock',
    needs: ['chill-weight'],
    figures: chillFigures,
    compute: (read) => chillSpan(read, read.number('chill-weight')),
  }),
  defineFact({
    id: 'thaw-days',
    unit: 'day',
    per: 'flock',
    needs: ['chill-weight'],
    figures: ['keep/thaw-a-day'],
    compute: (read) => Math.ceil(read.number('chill-weight') / read.figure('keep/thaw-a-day') - 1e-9),
  }),
  defineFact({
    id: 'rest-hours',
    unit: 'day',
    per: 'flock',
    figures: ['keep/rest'],
    compute: (read) => read.figure('keep/rest'),
  }),
  defineFact({
    id: 'keep-form',
    unit: null,
    per: 'flock',
    needs: ['asks-giblets', 'asks-parts'],
    compute: (read) => {
      if (read.text('asks-giblets') === 'yes') return 'giblets';
      return read.text('asks-parts') === 'yes' ? 'parts' : 'whole';
    },
  }),
  defineFact({
    id: 'keep-months',
    unit: 'day',
    per: 'flock',
    needs: ['keep-form'],
    figures: ['keep/months'],
    compute: (read) => read.figure('keep/months'),
  }),
  ...(['whole', 'parts', 'giblets'] as const).map((form) =>
    defineFact({
      id: `keep-${form}`,
      unit: 'day',
      per: 'flock',
      figures: ['keep/months'],
      compute: (read) => read.figure('keep/months', [form]),
    }),
  ),
];
