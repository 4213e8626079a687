/** Moves of the pen: how many are wanted, made, missed and still to come. */
import { addDays, type Day, daysBetween } from '../../day.ts';
import type { PenMove, Whereabouts } from '../../types.ts';
import { defineFact, type Reader } from '../define.ts';
import { byGroup } from '../views.ts';

const movesOf = (read: Reader): readonly PenMove[] =>
  read
    .see(
      byGroup<PenMove>,
      read.state.moves,
    )(read.group.name)
    .filter((each) => each.on <= read.on);

/** The day they came out to stay, which is itself a day on fresh ground. */
export const outSince = (read: Reader): Whereabouts | undefined =>
  read.group.whereabouts.findLast((each) => each.place === 'pen' && !each.daysOnly);

/** Moves since they came out; the fact records them. */
export const movesSinceOut = (read: Reader): readonly PenMove[] => {
  const out = outSince(read);
  if (out === undefined) return [];
  const made = movesOf(read).filter((each) => each.on >= out.on);
  read.from(out, ...made);
  return made;
};

/** Moves that the table wants over days from a first one on. The fact declares `kind` and `pasture/moves-a-day`. */
const wantedOver = (read: Reader, first: Day, days: number): number => {
  const perDay = read.along('pasture/moves-a-day', [read.text('kind')]);
  const age = daysBetween(read.group.hatched, first);
  return Array.from({ length: Math.max(0, days) }, (_, ahead) => perDay(age + ahead)).reduce(
    (sum, each) => sum + each,
    0,
  );
};

export const moveFacts = [
  defineFact({
    id: 'moves-wanted',
    unit: 'move',
    needs: ['kind', 'age', 'rain-lately'],
    figures: ['pasture/moves-a-day', 'pasture/moves-a-day-wet', 'pasture/rain-that-wets'],
    compute: (read) => {
      const usual = read.figure('pasture/moves-a-day');
      const wet = read.number('rain-lately') >= read.figure('pasture/rain-that-wets');
      return wet ? Math.max(usual, read.figure('pasture/moves-a-day-wet')) : usual;
    },
  }),
  defineFact({
    id: 'moves-a-day',
    unit: 'move',
    needs: ['moves-wanted'],
    compute: (read) => read.number('moves-wanted'),
  }),
  defineFact({
    id: 'last-move-on',
    unit: 'date',
    compute: (read) => {
      const last = movesOf(read).at(-1) ?? outSince(read);
      if (last === undefined) return undefined;
      read.from(last);
      return last.on;
    },
  }),
  defineFact({
    id: 'moves-due',
    unit: 'move',
    needs: ['moves-a-day'],
    wants: ['last-move-on'],
    compute: (read) => {
      const rhythm = read.number('moves-a-day');
      const last = read.maybe('last-move-on');
      if (rhythm >= 1 || last === undefined) return rhythm;
      // Less than one a day: due when as many days as belong to one move have gone by.
      return daysBetween(String(last), read.on) * rhythm >= 1 - 1e-9 ? 1 : 0;
    },
  }),
  defineFact({
    id: 'moves-today',
    unit: 'move',
    compute: (read) => {
      const out = outSince(read);
      const cameOut = out?.on === read.on ? [out] : [];
      const today = [...cameOut, ...movesOf(read).filter((each) => each.on === read.on)];
      read.from(...today);
      return today.length;
    },
  }),
  defineFact({
    id: 'moves-made',
    unit: 'move',
    compute: (read) => movesSinceOut(read).length,
  }),
  defineFact({
    id: 'moves-missed',
    unit: 'move',
    needs: ['kind'],
    figures: ['pasture/moves-a-day'],
    compute: (read) => {
      const out = outSince(read);
      if (out === undefined) return 0;
      // The day they came out was on fresh ground, and today is not over.
      const wanted = wantedOver(read, addDays(out.on, 1), daysBetween(out.on, read.on) - 1);
      const made = movesSinceOut(read).filter((each) => each.on < read.on).length;
      return Math.max(0, wanted - made);
    },
  }),
  defineFact({
    id: 'moves-needed',
    unit: 'move',
    needs: ['kind', 'table-day', 'moves-today', 'moves-wanted', 'moves-a-day'],
    figures: ['pasture/moves-a-day'],
    compute: (read) => {
      const days = Math.max(0, daysBetween(read.on, read.text('table-day')));
      const rhythm = read.number('moves-a-day');
      // A rhythm other than the table's is kept up to the end.
      const moves =
        rhythm === read.number('moves-wanted') ? wantedOver(read, read.on, days) : Math.ceil(rhythm * days);
      return Math.max(0, moves - read.number('moves-today'));
    },
  }),
];
