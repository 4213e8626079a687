/** How much room birds take in the freezer, what is free, and over how many days they must be frozen. */
import type { FromEntry } from '../../types.ts';
import { defineFact } from '../define.ts';
import { isAfter } from '../feed/bags.ts';
import { settingNumber, settingOf } from '../setting.ts';
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
    id: 'carcass-to-freeze',
    unit: 'kg',
    per: 'flock',
    needs: ['wanted-carcass'],
    each: ['birds-for-table', 'carcass-on-the-day'],
    compute: (read) => {
      const carcasses = read.each('carcass-on-the-day');
      const groups = read.each('birds-for-table').flatMap(({ group, value }, index) => {
        const isMeant = read.named.length === 0 || read.named.includes(group.name);
        const each = Number(carcasses[index]?.value ?? read.number('wanted-carcass'));
        return isMeant ? [{ birds: Number(value ?? 0), each }] : [];
      });
      const birds = groups.reduce((sum, group) => sum + group.birds, 0);
      return birds > 0
        ? groups.reduce((sum, group) => sum + group.birds * group.each, 0) / birds
        : read.number('wanted-carcass');
    },
  }),
  defineFact({
    id: 'meat-to-freeze',
    unit: 'kg',
    per: 'flock',
    needs: ['birds-to-freeze', 'carcass-to-freeze'],
    compute: (read) => read.number('birds-to-freeze') * read.number('carcass-to-freeze'),
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
    id: 'freezer-size',
    unit: 'l',
    per: 'flock',
    compute: (read) => settingNumber(read, 'freezer'),
  }),
  defineFact({
    id: 'frozen-since-told',
    unit: 'bird',
    per: 'flock',
    compute: (read) => {
      const told = settingOf(read, 'freezer-free');
      const since = <T extends FromEntry & { readonly count: number }>(entries: readonly T[]): number => {
        const counted = entries.filter(
          (each) => told !== undefined && isAfter(each, told) && each.on <= read.on,
        );
        read.from(...counted);
        return counted.reduce((sum, { count }) => sum + count, 0);
      };
      const { groups, eaten, shares } = read.state;
      const out = since(eaten) + since(shares.filter(({ step }) => step === 'handed'));
      return since(groups.flatMap(({ processed }) => processed)) - out;
    },
  }),
  defineFact({
    id: 'freezer-free',
    unit: 'l',
    per: 'flock',
    needs: ['freezer-left', 'frozen-since-told', 'wanted-carcass'],
    wants: ['freezer-size'],
    figures: ['freezer/whole-birds'],
    compute: (read) => {
      const size = read.maybe('freezer-size');
      const of = (birds: number): number =>
        (birds * read.number('wanted-carcass')) / read.figure('freezer/whole-birds');
      const told = settingNumber(read, 'freezer-free');
      if (told !== undefined) {
        const free = Math.max(0, told - of(read.number('frozen-since-told')));
        return typeof size === 'number' ? Math.min(size, free) : free;
      }
      if (typeof size !== 'number') return undefined;
      const birds = read.number('freezer-left');
      if (birds > 0) read.assume('freezer-holds-only-birds', { birds: { value: birds, unit: 'bird' } });
      else read.assume('freezer-empty');
      return Math.max(0, size - of(birds));
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
    needs: ['freezer-free', 'share-cut-up', 'carcass-to-freeze'],
    figures: ['freezer/whole-birds', 'freezer/parts'],
    compute: (read) => {
      const cut = read.number('share-cut-up');
      const each =
        cut / read.figure('freezer/parts') + (cut < 1 ? (1 - cut) / read.figure('freezer/whole-birds') : 0);
      return wholeDown(read.number('freezer-free') / (each * read.number('carcass-to-freeze')));
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
