/** What was taken for granted: one and the same thing for several groups is one, in the list and in the count. */
import { expect, test } from 'vitest';
import { sayAllAssumed, sayHowManyAssumed } from '../../../cli/say/assumed.ts';
import type { Assumed } from '../../../engine/types.ts';
import { shipped } from '../../helpers/flock-of.ts';

const speech = { book: shipped, system: 'us', currency: '$', today: '2026-05-14' } as const;
const carcass: Assumed = { id: 'usual-carcass', group: null, values: { weight: { value: 2, unit: 'kg' } } };
const byAge = (group: string): Assumed => ({ id: 'feathered-by-age', group, values: {} });

test.each([
  { assumed: [], count: null, list: null },
  {
    assumed: [byAge('whites')],
    count: 'One thing is taken for granted here',
    list: 'Taken for granted: for the whites, feathers are judged by age, as nobody has noted them.',
  },
  {
    assumed: [byAge('whites'), carcass, byAge('reds'), byAge('whites')],
    count: '2 things are taken for granted here',
    list: 'Taken for granted: for the whites and the reds, feathers are judged by age, as nobody has noted them; the wanted carcass is taken to be 4.4 lb, as none is set.',
  },
])('$count', ({ assumed, count, list }) => {
  expect([sayHowManyAssumed(speech, assumed), sayAllAssumed(speech, assumed)]).toEqual([count, list]);
});
