/** How much room birds take in the freezer, what is free, and over how many days they must be frozen. */
import { defineFact } from '../define.ts';
import { settingNumber } from '../setting.ts';
import { wholeDown, wholeUp } from '../sums/whole.ts';

/** Whether the question speaks of it. */
const asked = (id: string) => defineFact({ id, unit: null, per: 'flock', compute: () => 'no' });

export const freezerFacts = [
  asked('cut-up-said'),
  asked('half-cut-said'),
  asked('how-many-said'),
  defineFact({
    id: 'birds-to-freeze',
    unit: 'bird',
    per: 'flock',
    needs: ['promised'],
    each: ['alive', 'kept-back'],
    compute: (read) => {
      const kept = read.each('kept-back');
      const birds = read.each('alive').reduce((sum, { group, value }, index) => {
        if (read.named.length > 0 && !read.named.includes(group.name)) return sum;
        return sum + Math.max(0, Number(value ?? 0) - Number(kept[index]?.value ?? 0));
      }, 0);
      return read.named.length > 0 ? birds : Math.max(0, birds - read.number('promised'));
    },
  }),
  defineFact({
    id: 'meat-to-freeze',
    unit: 'kg',
    per: 'flock',
    needs: ['birds-to-freeze', 'wanted-carcass'],
    compute: (read) => read.number('birds-to-freeze') * read.number('wanted-carcass'),
  }),
  defineFact({
    id: 'share-cut-up',
    unit: 'ratio',
    per: 'flock',
    needs: ['cut-up-said', 'half-cut-said'],
    compute: (read) => {
      if (read.text('half-cut-said') === 'yes') return 0.5;
      return read.text('cut-up-said') === 'yes' ? 1 : 0;
    },
  }),
  defineFact({
    id: 'volume-needed',
    unit: 'l',
    per: 'flock',
    needs: ['meat-to-freeze', 'share-cut-up'],
    figures: ['freezer/whole-birds', 'freezer/parts'],
    compute: (read) => {
      const cut = read.number('share-cut-up');
      const each =
        cut / read.figure('freezer/parts') + (cut < 1 ? (1 - cut) / read.figure('freezer/whole-birds') : 0);
      return read.number('meat-to-freeze') * each;
    },
  }),
  defineFact({
    id: 'volume-in-parts',
    unit: 'l',
    per: 'flock',
    needs: ['meat-to-freeze'],
    figures: ['freezer/parts'],
    compute: (read) => read.number('meat-to-freeze') / read.figure('freezer/parts'),
  }),
  defineFact({
    id: 'birds-in-freezer',
    unit: 'bird',
    per: 'flock',
    each: ['processed'],
    compute: (read) => {
      const gone = [
        ...read.state.eaten,
        ...read.state.shares.filter((each) => each.step === 'handed'),
      ].filter((each) => each.on <= read.on);
      read.from(...gone);
      const processed = read.each('processed').reduce((sum, { value }) => sum + Number(value ?? 0), 0);
      return Math.max(0, processed - gone.reduce((sum, each) => sum + each.count, 0));
    },
  }),
  defineFact({
    id: 'freezer-size',
    unit: 'l',
    per: 'flock',
    compute: (read) => settingNumber(read, 'freezer'),
  }),
  defineFact({
    id: 'freezer-free',
    unit: 'l',
    per: 'flock',
    needs: ['birds-in-freezer', 'wanted-carcass'],
    wants: ['freezer-size'],
    figures: ['freezer/whole-birds'],
    compute: (read) => {
      const told = settingNumber(read, 'freezer-free');
      if (told !== undefined) return told;
      const size = read.maybe('freezer-size');
      if (typeof size !== 'number') return undefined;
      const birds = read.number('birds-in-freezer');
      if (birds > 0) read.assume('freezer-holds-only-birds', { birds: { value: birds, unit: 'bird' } });
      else read.assume('freezer-empty');
      const taken = (birds * read.number('wanted-carcass')) / read.figure('freezer/whole-birds');
      return Math.max(0, size - taken);
    },
  }),
  defineFact({
    id: 'volume-over',
    unit: 'l',
    per: 'flock',
    needs: ['volume-needed', 'freezer-free'],
    compute: (read) => Math.max(0, read.number('volume-needed') - read.number('freezer-free')),
  }),
  defineFact({
    id: 'birds-that-freeze',
    unit: 'bird',
    per: 'flock',
    needs: ['freezer-free', 'share-cut-up', 'wanted-carcass'],
    figures: ['freezer/whole-birds', 'freezer/parts'],
    compute: (read) => {
      const cut = read.number('share-cut-up');
      const each =
        cut / read.figure('freezer/parts') + (cut < 1 ? (1 - cut) / read.figure('freezer/whole-birds') : 0);
      return wholeDown(read.number('freezer-free') / (each * read.number('wanted-carcass')));
    },
  }),
  defineFact({
    id: 'freeze-a-day',
    unit: 'kg',
    per: 'flock',
    wants: ['freezer-size', 'freezer-free'],
    figures: ['freezer/rate'],
    compute: (read) => {
      const size = read.maybe('freezer-size');
      if (typeof size === 'number') return size * read.figure('freezer/rate');
      const free = read.maybe('freezer-free');
      if (typeof free !== 'number') return undefined;
      read.assume('freezer-as-large-as-free', { 'freezer-free': { value: free, unit: 'l' } });
      return free * read.figure('freezer/rate');
    },
  }),
  defineFact({
    id: 'freeze-days',
    unit: 'day',
    per: 'flock',
    needs: ['meat-to-freeze', 'freeze-a-day'],
    compute: (read) =>
      read.number('freeze-a-day') > 0
        ? wholeUp(read.number('meat-to-freeze') / read.number('freeze-a-day'))
        : undefined,
  }),
  defineFact({
    id: 'freezing-turns',
    unit: null,
    per: 'flock',
    needs: ['freeze-days'],
    figures: ['freezer/longest'],
    compute: (read) => wholeUp(read.number('freeze-days') / read.figure('freezer/longest')),
  }),
];
