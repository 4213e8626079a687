/** The pen's way over the ground: moves made and due, moves left, whether they last, and what the ground is given. */
import { addDays, type Day, daysBetween } from '../day.ts';
import type { PenMove } from '../types.ts';
import { defineFact, type Reader } from './define.ts';
import { settingNumber } from './setting.ts';

const movesOf = (read: Reader): PenMove[] =>
  read.state.moves.filter(
    (each) => each.on <= read.on && (each.group === null || each.group === read.group.name),
  );

/** The day they came out to stay, which is itself a day on fresh ground. */
const outSince = (read: Reader) =>
  read.group.whereabouts.findLast((each) => each.place === 'pen' && !each.daysOnly);

export const groundFacts = [
  defineFact({
    id: 'moves-a-day',
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
    id: 'moves-today',
    unit: 'move',
    compute: (read) => {
      const today = movesOf(read).filter((each) => each.on === read.on);
      const out = outSince(read);
      read.from(...today);
      return today.length + (out?.on === read.on ? 1 : 0);
    },
  }),
  defineFact({
    id: 'moves-made',
    unit: 'move',
    compute: (read) => {
      const out = outSince(read);
      if (out === undefined) return 0;
      const made = movesOf(read).filter((each) => each.on >= out.on);
      read.from(out, ...made);
      return made.length;
    },
  }),
  defineFact({
    id: 'pen-length',
    unit: 'm',
    per: 'flock',
    compute: (read) => {
      const size = read.state.settings.pen?.at(-1);
      if (size === undefined || size.size === null) return undefined;
      read.from(size);
      return Math.max(...size.size);
    },
  }),
  defineFact({
    id: 'ground-area',
    unit: 'm2',
    per: 'flock',
    compute: (read) => settingNumber(read, 'ground'),
  }),
  defineFact({
    id: 'ground-used',
    unit: 'm2',
    per: 'flock',
    needs: ['pen-area'],
    figures: ['pasture/ground-rest'],
    compute: (read) => {
      const since = addDays(read.on, -read.figure('pasture/ground-rest'));
      const moves = read.state.moves.filter((each) => each.on > since && each.on <= read.on);
      const stands = read.state.groups.flatMap((group) =>
        group.whereabouts.filter(
          (each) => each.place === 'pen' && !each.daysOnly && each.on > since && each.on <= read.on,
        ),
      );
      read.from(...stands, ...moves);
      // Each coming out lays the pen on one piece of ground, each move on one more.
      return (moves.length + stands.length) * read.number('pen-area');
    },
  }),
  defineFact({
    id: 'moves-left',
    unit: 'move',
    per: 'flock',
    needs: ['ground-area', 'ground-used', 'pen-area'],
    compute: (read) =>
      Math.max(
        0,
        Math.floor(
          (read.number('ground-area') - read.number('ground-used')) / read.number('pen-area') + 1e-9,
        ),
      ),
  }),
  defineFact({
    id: 'fresh-moves',
    unit: 'move',
    per: 'flock',
    wants: ['moves-left'],
    compute: (read) => {
      const left = read.maybe('moves-left');
      if (typeof left === 'number') return left;
      // Nobody measures a meadow before the birds may go out; where it is measured, it counts.
      read.assume('ground-is-fresh');
      return 1;
    },
  }),
  defineFact({
    id: 'moves-needed',
    unit: 'move',
    needs: ['kind', 'age', 'ready-on', 'moves-today'],
    figures: ['pasture/moves-a-day'],
    compute: (read) => {
      const ready: Day = read.text('ready-on');
      const days = Math.max(0, daysBetween(read.on, ready));
      const perDay = read.along('pasture/moves-a-day', [read.text('kind')]);
      let moves = 0;
      for (let ahead = 0; ahead < days; ahead += 1) moves += perDay(read.number('age') + ahead);
      return Math.max(0, moves - Math.min(moves, read.number('moves-today')));
    },
  }),
  defineFact({
    id: 'ground-needed',
    unit: 'm2',
    needs: ['moves-needed', 'pen-area'],
    compute: (read) => read.number('moves-needed') * read.number('pen-area'),
  }),
  defineFact({
    id: 'nitrogen-load',
    unit: 'kg/ha',
    needs: ['alive', 'moves-made', 'moves-needed', 'pen-area', 'pens'],
    figures: ['pasture/nitrogen-per-bird'],
    compute: (read) => {
      const positions = read.number('moves-made') + read.number('moves-needed') + 1;
      const hectares = (positions * read.number('pen-area')) / 10_000;
      return hectares === 0
        ? undefined
        : (read.number('alive') * read.figure('pasture/nitrogen-per-bird')) / hectares;
    },
  }),
  defineFact({
    id: 'ground-free-on',
    unit: 'date',
    figures: ['pasture/ground-rest'],
    compute: (read) => {
      const last = movesOf(read).at(-1) ?? outSince(read);
      if (last === undefined) return undefined;
      read.from(last);
      return addDays(last.on, read.figure('pasture/ground-rest'));
    },
  }),
];
