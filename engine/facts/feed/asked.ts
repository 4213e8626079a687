/** What a question about feed speaks of, and how little of anything but feed they should have. */
import { defineFact, type Fact } from '../define.ts';

/** Whether the question speaks of it: laid over this for that one answer. */
const said = (id: string): Fact => defineFact({ id, unit: null, per: 'flock', compute: () => 'no' });

/** What may be asked about in place of the ration for their age. */
const besides = ['treats-said', 'grain-said', 'grit-said', 'layer-feed-said', 'medicated-said'];

export const askedFacts = [
  ...besides.map(said),
  defineFact({
    id: 'asks-for-ration',
    unit: null,
    per: 'flock',
    needs: besides,
    compute: (read) => besides.every((each) => read.text(each) === 'no'),
  }),
  defineFact({
    id: 'protein-in-hand',
    unit: 'ratio',
    needs: ['protein'],
    // Where no feed is named, it is taken to be what their age wants.
    compute: (read) => read.number('protein'),
  }),
  defineFact({
    id: 'treats-a-day',
    unit: 'kg',
    needs: ['feed-today'],
    figures: ['feed/treat-share'],
    compute: (read) => read.number('feed-today') * read.figure('feed/treat-share'),
  }),
];
