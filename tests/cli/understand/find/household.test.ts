import { expect, test } from 'vitest';
import { findHousehold } from '../../../../cli/understand/find/household.ts';
import { tokenise } from '../../../../cli/understand/tokens.ts';

const heard = (words: string) => {
  const { eaters, birdsAWeek } = findHousehold(tokenise(words));
  return [eaters, birdsAWeek];
};

test.each([
  ['how many birds for 4 people', 4, undefined],
  ['two adults and three kids', 5, undefined],
  ['a family of six', 6, undefined],
  ['there are five of us', 5, undefined],
  ['we eat a chicken a week', undefined, 1],
  ['2 birds per week for 3 people', 3, 2],
  ['1.5 birds weekly', undefined, 1.5],
  ['one every other week', undefined, 0.5],
  ['three chickens every 2 weeks', undefined, 1.5],
  ['one most weeks', undefined, 1],
  ['me, my wife and two kids', 4, undefined],
  ['me and my husband', 2, undefined],
  ['my wife put a bird in the freezer', undefined, undefined],
  ['how many chicks for 25 birds', undefined, undefined],
  ['20 birds in the pen', undefined, undefined],
  ['feed for 2 weeks', undefined, undefined],
])('%s: %s eaters, %s birds a week', (words, eaters, pace) => {
  expect(heard(words)).toEqual([eaters, pace]);
});
