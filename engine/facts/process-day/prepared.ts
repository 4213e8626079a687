/** Whether freezer and hands are enough for the birds of a group on their processing day. */
import { daysBetween } from '../../day.ts';
import { defineFact } from '../define.ts';
import { wholeUp } from '../sums/whole.ts';

export const preparedFacts = [
  defineFact({
    id: 'days-to-table',
    unit: 'day',
    needs: ['process-due'],
    compute: (read) => daysBetween(read.on, read.text('process-due')),
  }),
  defineFact({
    id: 'room-on-the-day',
    unit: 'l',
    needs: ['birds-on-the-day', 'carcass-on-the-day'],
    figures: ['freezer/whole-birds'],
    compute: (read) =>
      (read.number('birds-on-the-day') * read.number('carcass-on-the-day')) /
      read.figure('freezer/whole-birds'),
  }),
  defineFact({
    id: 'room-by-then',
    unit: 'l',
    needs: ['freezer-free', 'process-due'],
    each: ['process-due', 'room-on-the-day'],
    compute: (read) => {
      const rooms = read.each('room-on-the-day');
      const own = rooms.findIndex(({ group }) => group.name === read.group.name);
      const isBefore = (day: string, place: number): boolean =>
        day < read.text('process-due') || (day === read.text('process-due') && place < own);
      const taken = read
        .each('process-due')
        .map(({ value }, place) =>
          value !== undefined && isBefore(String(value), place) ? Number(rooms[place]?.value ?? 0) : 0,
        );
      return Math.max(0, read.number('freezer-free') - taken.reduce((sum, each) => sum + each, 0));
    },
  }),
  defineFact({
    id: 'room-lacking',
    unit: 'kg',
    needs: ['room-on-the-day', 'room-by-then'],
    figures: ['freezer/whole-birds'],
    compute: (read) =>
      Math.max(0, read.number('room-on-the-day') - read.number('room-by-then')) *
      read.figure('freezer/whole-birds'),
  }),
  defineFact({
    id: 'freeze-days-then',
    unit: 'day',
    needs: ['birds-on-the-day', 'carcass-on-the-day', 'freeze-a-day'],
    compute: (read) =>
      read.number('freeze-a-day') > 0
        ? wholeUp(
            (read.number('birds-on-the-day') * read.number('carcass-on-the-day')) /
              read.number('freeze-a-day'),
          )
        : undefined,
  }),
  defineFact({
    id: 'hands-wanted',
    unit: 'person',
    needs: ['process-span', 'hands'],
    figures: ['process/longest-day'],
    compute: (read) =>
      wholeUp((read.number('process-span') * read.number('hands')) / read.figure('process/longest-day')),
  }),
  defineFact({
    id: 'hands-lacking',
    unit: 'person',
    needs: ['hands-wanted', 'hands'],
    compute: (read) => Math.max(0, read.number('hands-wanted') - read.number('hands')),
  }),
];
