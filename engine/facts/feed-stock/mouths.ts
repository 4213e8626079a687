/** Who eats from the feed in hand, and until when. */
import { addDays, type Day } from '../../day.ts';
import type { Reader } from '../define.ts';
import { latestOf } from '../feed/days.ts';
import { type Eater, eaterEach, eaterFigures, eatersOf } from '../feed/eater.ts';
import { givenOn } from '../feed/given.ts';

/** A group that has birds to feed. */
export interface Mouth {
  readonly eater: Eater;
  /** First day on which they are not fed any more; undefined where it cannot be told. */
  readonly gone: Day | undefined;
  /** Share by which one flock in ten eats more than this one is expected to. */
  readonly over: number;
  /** Feed they still want on a day, kg: nothing today once today's is on record. */
  wanted(day: Day): number;
}

/** What a fact of the flock declares to use `mouthsOf`. */
export const mouthEach = [...eaterEach, 'table-day', 'feed-records', 'feed-days-recorded'];
export const mouthWants = ['loss-rate'];
export const mouthFigures = [...eaterFigures, 'feed/high-intake', 'feed/records-trust'];

/** The spread between flocks, as far as own feed records have not narrowed it (the root of what shrinkage leaves). */
const highIntake = (read: Reader, daysCounted: number): number => {
  const trust = read.figure('feed/records-trust');
  return read.figure('feed/high-intake') * Math.sqrt(trust / (trust + daysCounted));
};

/** Every group that has birds to feed; undefined when one of them is of a kind whose eating is not known. */
export const mouthsOf = (read: Reader): readonly Mouth[] | undefined => {
  const eaters = eatersOf(read, eaterEach);
  const given = givenOn(read, eaters);
  const alive = read.each('alive');
  const ready = read.each('table-day');
  const records = read.each('feed-records');
  const recorded = read.each('feed-days-recorded');
  const tomorrow = addDays(read.asked, 1);
  const mouths = eaters.flatMap((eater, index): (Mouth | undefined)[] => {
    if (Number(alive[index]?.value ?? 0) <= 0) return [];
    if (eater === undefined) return [undefined];
    const end = ready[index]?.value;
    const counted = records[index]?.value === 'used' ? Number(recorded[index]?.value) : 0;
    return [
      {
        eater,
        gone: end === undefined ? undefined : latestOf(String(end), tomorrow),
        over: highIntake(read, counted),
        wanted: (day) => (day === read.asked && given(eater, day) !== undefined ? 0 : eater.all(day)),
      },
    ];
  });
  return mouths.every((mouth) => mouth !== undefined) ? mouths : undefined;
};

/** Whether a group still eats on a day. Where a day was named, birds past their own day are taken to be there until then. */
export const isThere = (read: Reader, { gone }: Mouth, day: Day): boolean =>
  gone === undefined || day < gone || (read.until !== null && gone === addDays(read.asked, 1));

/** The day by which all are gone; undefined where there is nobody or it cannot be told of one of them. */
export const lastGone = (mouths: readonly Mouth[]): Day | undefined => {
  const [first, ...rest] = mouths.flatMap(({ gone }) => (gone === undefined ? [] : [gone]));
  return first === undefined || rest.length + 1 < mouths.length ? undefined : latestOf(first, ...rest);
};
