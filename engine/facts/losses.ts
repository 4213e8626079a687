/** How many birds were lost of late and to what, and whether the rest look sick. */
import { addDays, type Day, daysBetween } from '../day.ts';
import type { Loss } from '../types.ts';
import { defineFact, type Reader } from './define.ts';
import { asCounted, idsIn } from './named-list.ts';
import { signsFor } from './signs-for.ts';

/** Classes of causes that were seen for what they were, so that they say nothing about sickness. */
const accidents = ['hunter', 'crush', 'weather', 'shipping'];

const countOf = (read: Reader, losses: readonly Loss[]): number => {
  read.from(...losses);
  return losses.reduce((sum, each) => sum + each.count, 0);
};

/** Birds by what their loss was put down to, the most frequent first. */
export const lostByCause = (read: Reader, losses: readonly Loss[]): string => {
  const byCause = new Map<string, number>();
  for (const { cause, count } of losses) byCause.set(cause, (byCause.get(cause) ?? 0) + count);
  read.from(...losses);
  return asCounted(byCause);
};

/** Losses of the group between two days, both included, that may have come of sickness. */
const unexplained = (read: Reader, from: Day, to: Day): readonly Loss[] =>
  read.group.losses.filter(
    (each) => each.on >= from && each.on <= to && !accidents.includes(read.causeClass(each.cause)),
  );

/** Different signs of sickness in the words of the question, or seen in the group or in all birds, that still count. */
export const signsOfSickness = (read: Reader): readonly string[] => {
  const since = addDays(read.on, -read.figure('health/signs-stand'));
  const ill = signsFor(read).filter(
    (each) => each.on > since && each.on <= read.on && read.signClass(each.sign) === 'illness',
  );
  read.from(...ill);
  const told = idsIn(read.text('signs-told')).filter((sign) => read.signClass(sign) === 'illness');
  return [...new Set([...ill.map((each) => each.sign), ...told])];
};

/** Birds as a share of those alive now and themselves: of how many that were there at the beginning they were lost. */
const shareOf = (lost: number, alive: number): number | undefined =>
  lost + alive > 0 ? lost / (lost + Math.max(0, alive)) : undefined;

export const lossFacts = [
  defineFact({
    id: 'days-here',
    unit: 'day',
    compute: (read) => {
      read.from({ on: read.group.arrived, line: read.group.line });
      return daysBetween(read.group.arrived, read.on);
    },
  }),
  defineFact({
    id: 'loss-share',
    unit: 'ratio',
    needs: ['lost', 'arrived-alive'],
    compute: (read) => {
      const birds = read.number('arrived-alive');
      return birds > 0 ? read.number('lost') / birds : undefined;
    },
  }),
  defineFact({
    id: 'lost-today-and-yesterday',
    unit: 'bird',
    compute: (read) => countOf(read, unexplained(read, addDays(read.on, -1), read.on)),
  }),
  defineFact({
    id: 'share-in-day',
    unit: 'ratio',
    needs: ['lost-today-and-yesterday', 'alive'],
    compute: (read) => shareOf(read.number('lost-today-and-yesterday'), read.number('alive')),
  }),
  defineFact({
    id: 'lost-in-week',
    unit: 'bird',
    compute: (read) => countOf(read, unexplained(read, addDays(read.on, -6), read.on)),
  }),
  defineFact({
    id: 'share-in-week',
    unit: 'ratio',
    needs: ['lost-in-week', 'alive'],
    compute: (read) => shareOf(read.number('lost-in-week'), read.number('alive')),
  }),
  defineFact({
    id: 'lost-first-week',
    unit: 'bird',
    figures: ['losses/first-week'],
    compute: (read) => {
      const end = addDays(read.group.hatched, read.figure('losses/first-week'));
      return countOf(read, unexplained(read, read.group.arrived, end));
    },
  }),
  defineFact({
    id: 'share-first-week',
    unit: 'ratio',
    needs: ['lost-first-week', 'arrived-alive'],
    compute: (read) => {
      const birds = read.number('arrived-alive');
      return birds > 0 ? read.number('lost-first-week') / birds : undefined;
    },
  }),
  defineFact({
    id: 'lost-by-cause',
    unit: 'named',
    wants: ['span-from'],
    compute: (read) => {
      const from = read.maybe('span-from');
      const losses = read.group.losses.filter((each) => typeof from !== 'string' || each.on >= from);
      return losses.length === 0 ? undefined : lostByCause(read, losses);
    },
  }),
  defineFact({
    id: 'sick-signs',
    unit: 'sign',
    needs: ['signs-told'],
    figures: ['health/signs-stand'],
    compute: (read) => {
      const signs = signsOfSickness(read);
      if (signs.length === 0) read.assume('no-sign-no-sickness');
      return signs.length;
    },
  }),
  defineFact({
    id: 'sign-of-sickness',
    unit: 'named',
    needs: ['signs-told'],
    figures: ['health/signs-stand'],
    compute: (read) => signsOfSickness(read).at(-1),
  }),
  defineFact({
    id: 'reportable-signs',
    unit: 'sign',
    needs: ['sick-signs', 'signs-told'],
    figures: ['health/signs-stand', 'health/reportable-sign'],
    compute: (read) =>
      signsOfSickness(read).reduce((sum, sign) => sum + read.figure('health/reportable-sign', [sign]), 0),
  }),
];
