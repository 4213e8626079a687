/** Where a group is when: in the brooder, on grass, in the freezer. For groups on record and for those only planned. */
import { addDays, type Day } from '../../day.ts';
import type { Group } from '../../types.ts';
import type { Reader } from '../define.ts';
import { latestOf } from '../feed/days.ts';
import { aliveOn, livedOutOn } from '../past.ts';
import { readyAge, readyFigures, readyNeeds, usualKind } from '../planning/kind-ready.ts';
import { bookedDay } from '../process-day/day.ts';
import { normalFigures, normalsOf } from './normals.ts';

/** What a fact must declare to use `stayOf`. */
export const stayNeeds = [...readyNeeds, 'usual-nights'];
/** What going out alone reads. */
export const outFigures = [
  'growth/derived-weight',
  'pasture/feathered-by',
  'pasture/lowest-night',
  'season/longest-in-brooder',
  ...normalFigures,
];
export const stayFigures = [...readyFigures, ...outFigures];

export interface Stay {
  readonly group: Group;
  readonly kind: string;
  readonly birds: number;
  readonly arrives: Day;
  readonly out: Day;
  readonly process: Day;
}

/** A kind whose growth is not on file is planned as the usual one. */
export const kindOf = (read: Reader, group: Group): string =>
  read.namesOf('growth/derived-weight').includes(group.kind) ? group.kind : usualKind;

/** The coldest night, °C, that birds of an age in days stand; undefined for an age that stands none. */
export const nightFloors = (read: Reader): ((age: number) => number | undefined) => {
  const [youngest] = read.spanOf('pasture/lowest-night');
  const floor = read.along('pasture/lowest-night');
  return (age) => (age < youngest ? undefined : floor(age));
};

/** The first age with feathers at which the usual nights are warm enough, at most the longest stay in the brooder. */
const outAge = (read: Reader, kind: string, hatched: Day): number => {
  const low = normalsOf(read, 'usual-nights');
  const floorAt = nightFloors(read);
  const last = read.figure('season/longest-in-brooder');
  for (let age = read.figure('pasture/feathered-by', [kind]); age < last; age += 1) {
    const floor = floorAt(age);
    if (floor !== undefined && low(addDays(hatched, age)) >= floor) return age;
  }
  return last;
};

/** The day the birds of a group go out: as on record, else as feathers and the usual nights let them. */
export const outDay = (read: Reader, group: Group, kind: string): Day => {
  const moved = group.whereabouts.find((each) => each.place === 'pen' && !each.daysOnly);
  if (moved !== undefined && livedOutOn(group, read.asked)) return moved.on;
  const expected = addDays(group.hatched, outAge(read, kind, group.hatched));
  return group.arrived > read.asked ? expected : latestOf(expected, read.asked);
};

/** The day the last birds of a group are processed: as on record, as set, else when the kind's plan line is heavy enough. */
export const processDay = (read: Reader, group: Group, kind: string): Day => {
  const expected = addDays(group.hatched, readyAge(read, kind));
  const gone = group.processed.at(-1);
  if (gone !== undefined && aliveOn(group, read.asked) <= 0) return gone.on;
  if (group.arrived > read.asked) return expected;
  const opens = addDays(group.hatched, read.figure('process/window-opens', [kind]));
  return bookedDay(read, opens, expected) ?? latestOf(expected, read.asked);
};

/** The stay of one group; birds are those alive on the day asked about, all of them for a planned group. */
export const stayOf = (read: Reader, group: Group): Stay => {
  const kind = kindOf(read, group);
  return {
    group,
    kind,
    birds: group.arrived > read.asked ? group.boxed : Math.max(0, aliveOn(group, read.asked)),
    arrives: group.arrived,
    out: outDay(read, group, kind),
    process: processDay(read, group, kind),
  };
};

/** The stays of all other groups, planned ones too. */
export const otherStays = (read: Reader): readonly Stay[] =>
  read.state.groups.filter((group) => group.name !== read.group.name).map((group) => stayOf(read, group));
