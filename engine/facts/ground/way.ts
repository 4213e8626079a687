/** Where the pen of a group stands, where it goes next, and how a strip asked about lies. */
import { addDays } from '../../day.ts';
import { defineFact, type Reader } from '../define.ts';
import { nextLane, type Spot } from '../sums/path.ts';
import { fieldEach, fieldFigures, fieldOf, fieldWants, type Ground } from './field.ts';
import { toDay } from './happenings.ts';

const declared = { wants: fieldWants, each: fieldEach, figures: fieldFigures };

/** Strips of a group with more than one pen are named together. */
const named = (strips: readonly number[]): string => [...new Set(strips)].join(' and ');

const spotsOf = (read: Reader, { field, homes }: Ground): readonly Spot[] =>
  (homes.get(read.group.name) ?? []).flatMap((pen) => field.spots[pen] ?? []);

/** The strips into which the group's pens would turn, one after another; fewer where there is no room for all. */
const turnsOf = (read: Reader, { field, homes }: Ground): readonly number[] => {
  const taken: number[] = [];
  for (const pen of homes.get(read.group.name) ?? []) {
    const next = nextLane(field, pen, taken);
    if (next !== undefined) taken.push(next);
  }
  return taken;
};

export const wayFacts = [
  defineFact({
    id: 'strip-now',
    unit: null,
    ...declared,
    compute: (read) => {
      const ground = fieldOf(read);
      const spots = ground === undefined ? [] : spotsOf(read, ground);
      return spots.length === 0 ? undefined : named(spots.map(({ lane }) => lane));
    },
  }),
  defineFact({
    id: 'strip-left',
    unit: 'move',
    ...declared,
    compute: (read) => {
      const ground = fieldOf(read);
      const spots = ground === undefined ? [] : spotsOf(read, ground);
      return spots.length === 0 ? undefined : Math.min(...spots.map(({ ahead }) => ahead));
    },
  }),
  defineFact({
    id: 'strip-next',
    unit: null,
    ...declared,
    compute: (read) => {
      const ground = fieldOf(read);
      const turns = ground === undefined ? [] : turnsOf(read, ground);
      return turns.length === 0 ? undefined : named(turns);
    },
  }),
  defineFact({
    id: 'way-on',
    unit: null,
    ...declared,
    wants: [...fieldWants, 'strip-left', 'strip-next'],
    compute: (read) => {
      const ground = fieldOf(read);
      if (ground === undefined || !ground.homes.has(read.group.name)) return 'unmapped';
      const ahead = Number(read.maybe('strip-left') ?? 0);
      const canTurn = read.maybe('strip-next') !== undefined;
      if (ahead > 0) return canTurn ? 'along' : 'last';
      return canTurn ? 'turn' : 'none';
    },
  }),
  defineFact({
    id: 'strip-used-on',
    unit: 'date',
    per: 'flock',
    needs: ['strip-asked'],
    ...declared,
    compute: (read) => {
      const used = fieldOf(read)?.field.lanes[read.number('strip-asked') - 1]?.used;
      return used == null ? undefined : toDay(used);
    },
  }),
  defineFact({
    id: 'strip-free-on',
    unit: 'date',
    per: 'flock',
    needs: ['strip-used-on'],
    figures: fieldFigures,
    compute: (read) => addDays(read.text('strip-used-on'), read.figure('pasture/ground-rest')),
  }),
  defineFact({
    id: 'strip-state',
    unit: null,
    per: 'flock',
    needs: ['strip-asked', 'strips', 'strip-length', 'pen-length'],
    ...declared,
    wants: [...fieldWants, 'strip-free-on'],
    compute: (read) => {
      const ground = fieldOf(read);
      const asked = read.number('strip-asked');
      const lane = ground?.field.lanes[asked - 1];
      if (ground === undefined || lane === undefined) return 'not-there';
      if (Object.values(ground.field.spots).some((spot) => spot.lane === asked)) return 'in-use';
      const free = read.maybe('strip-free-on');
      return free === undefined || String(free) <= read.on ? 'free' : 'resting';
    },
  }),
];
