/** How many birds a household eats its way through, and how long so many last. */
import { addDays, daysBetween } from '../../day.ts';
import { defineFact } from '../define.ts';
import { settingNumber } from '../setting.ts';
import { wholeUp } from '../sums/whole.ts';

const daysInWeek = 7;

export const householdFacts = [
  defineFact({
    id: 'eaters',
    unit: 'person',
    per: 'flock',
    figures: ['household/usual-eaters'],
    compute: (read) => {
      const set = settingNumber(read, 'eaters');
      if (set !== undefined) return set;
      const usual = read.figure('household/usual-eaters');
      read.assume('usual-eaters', { eaters: { value: usual, unit: 'person' } });
      return usual;
    },
  }),
  defineFact({
    id: 'birds-a-week',
    unit: 'a-week',
    per: 'flock',
    needs: ['eaters'],
    figures: ['household/eaters-of-a-bird'],
    compute: (read) => {
      const set = settingNumber(read, 'birds-a-week');
      if (set !== undefined) return set;
      const each = read.figure('household/eaters-of-a-bird');
      read.assume('bird-a-week', { eaters: { value: each, unit: 'person' } });
      return read.number('eaters') / each;
    },
  }),
  defineFact({
    id: 'eating-time',
    unit: 'day',
    per: 'flock',
    figures: ['household/year'],
    compute: (read) =>
      read.until === null ? read.figure('household/year') : daysBetween(read.asked, read.until) + 1,
  }),
  defineFact({
    id: 'birds-for-eating',
    unit: 'bird',
    per: 'flock',
    needs: ['birds-a-week', 'eating-time'],
    compute: (read) => wholeUp((read.number('birds-a-week') * read.number('eating-time')) / daysInWeek),
  }),
  defineFact({
    id: 'meat-for-eating',
    unit: 'kg',
    per: 'flock',
    needs: ['birds-for-eating', 'wanted-carcass'],
    compute: (read) => read.number('birds-for-eating') * read.number('wanted-carcass'),
  }),
  defineFact({
    id: 'birds-to-last',
    unit: 'bird',
    per: 'flock',
    // Only a question names them: "how long do 20 birds last".
    compute: () => 0,
  }),
  defineFact({
    id: 'birds-counted',
    unit: 'bird',
    per: 'flock',
    needs: ['birds-to-last', 'birds-to-hand', 'birds-for-eating'],
    compute: (read) =>
      read.number('birds-to-last') || read.number('birds-to-hand') || read.number('birds-for-eating'),
  }),
  defineFact({
    id: 'birds-last',
    unit: 'day',
    per: 'flock',
    needs: ['birds-counted', 'birds-a-week'],
    compute: (read) =>
      read.number('birds-a-week') > 0
        ? (read.number('birds-counted') / read.number('birds-a-week')) * daysInWeek
        : undefined,
  }),
  defineFact({
    id: 'birds-last-until',
    unit: 'date',
    per: 'flock',
    needs: ['birds-last'],
    compute: (read) => addDays(read.on, Math.floor(read.number('birds-last'))),
  }),
  defineFact({
    id: 'boneless-each',
    unit: 'kg',
    per: 'flock',
    needs: ['birds-a-week', 'eaters', 'wanted-carcass'],
    figures: ['household/year', 'household/boneless-share'],
    compute: (read) => {
      if (read.number('eaters') <= 0) return undefined;
      const birds = (read.number('birds-a-week') * read.figure('household/year')) / daysInWeek;
      return (
        (birds * read.number('wanted-carcass') * read.figure('household/boneless-share')) /
        read.number('eaters')
      );
    },
  }),
  defineFact({
    id: 'cooked-each',
    unit: 'kg',
    per: 'flock',
    needs: ['birds-a-week', 'eaters', 'wanted-carcass'],
    figures: ['household/cooked-share'],
    compute: (read) => {
      if (read.number('eaters') <= 0) return undefined;
      const meat = read.number('birds-a-week') * read.number('wanted-carcass');
      return (meat * read.figure('household/cooked-share')) / read.number('eaters');
    },
  }),
];
