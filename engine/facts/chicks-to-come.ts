/** Chicks that are on their way or have just come: how many, when, and what those that came were like. */
import { daysBetween } from '../day.ts';
import type { Group, Setting } from '../types.ts';
import { addHours, hoursBetween, timeOn } from './clock.ts';
import { defineFact, type Reader } from './define.ts';

const hoursInDay = 24;

/** A setting about chicks to come; it has had its time once birds arrived after it was told. */
const pending = (read: Reader, what: string): Setting | undefined => {
  const set = read.state.settings[what]?.at(-1);
  if (set === undefined || read.state.groups.some((each) => each.line > set.line && each.arrived <= read.on))
    return undefined;
  read.from(set);
  return set;
};

/** Groups that came within the days in which chicks settle. */
export const newcomersIn = (read: Reader): readonly Group[] =>
  read.state.groups.filter(
    (each) =>
      each.arrived <= read.on && daysBetween(each.arrived, read.on) < read.figure('arrival/settling-days'),
  );

/** The earliest hatch among them; its hour only where that is on record. */
const firstHatch = (groups: readonly Group[]): Group | undefined =>
  [...groups].sort((a, b) =>
    `${a.hatched}${a.hatchHour ?? ''}` < `${b.hatched}${b.hatchHour ?? ''}` ? -1 : 1,
  )[0];

const postHour = (read: Reader): number => read.figure('arrival/post-hour') * hoursInDay;

const sumOf = (groups: readonly Group[], of: (group: Group) => number): number =>
  groups.reduce((sum, each) => sum + of(each), 0);

export const chicksToComeFacts = [
  defineFact({
    id: 'chicks-expected',
    unit: null,
    per: 'flock',
    compute: (read) => ((pending(read, 'chicks-coming') ?? pending(read, 'chicks-on')) ? 'yes' : 'no'),
  }),
  defineFact({
    id: 'chicks-here',
    unit: null,
    per: 'flock',
    needs: ['chicks-expected'],
    figures: ['arrival/settling-days'],
    compute: (read) => {
      const here = newcomersIn(read);
      read.from(...here.map((each) => ({ on: each.arrived, line: each.line })));
      return here.length > 0 && read.text('chicks-expected') === 'no' ? 'yes' : 'no';
    },
  }),
  defineFact({
    id: 'chicks-coming',
    unit: 'bird',
    per: 'flock',
    each: ['alive'],
    figures: ['arrival/settling-days'],
    compute: (read) => {
      const told = pending(read, 'chicks-coming')?.value;
      if (typeof told === 'number') return told;
      const here = newcomersIn(read).map((each) => each.name);
      return here.length === 0
        ? undefined
        : read
            .each('alive')
            .filter(({ group }) => here.includes(group.name))
            .reduce((sum, { value }) => sum + Number(value ?? 0), 0);
    },
  }),
  defineFact({
    id: 'chicks-due',
    unit: 'date',
    per: 'flock',
    figures: ['arrival/settling-days'],
    compute: (read) => {
      const told = pending(read, 'chicks-on')?.value;
      return typeof told === 'string' ? told : newcomersIn(read).at(-1)?.arrived;
    },
  }),
  defineFact({
    id: 'chicks-due-soon',
    unit: null,
    per: 'flock',
    needs: ['chicks-expected'],
    wants: ['chicks-due'],
    figures: ['brooder/ready-ahead'],
    compute: (read) => {
      const due = read.maybe('chicks-due');
      const isSoon =
        typeof due !== 'string' || daysBetween(read.on, due) <= read.figure('brooder/ready-ahead');
      return isSoon ? read.text('chicks-expected') : 'no';
    },
  }),
  defineFact({
    id: 'days-since-come',
    unit: 'day',
    per: 'flock',
    figures: ['arrival/settling-days'],
    compute: (read) => {
      const last = newcomersIn(read).at(-1);
      return last === undefined ? undefined : daysBetween(last.arrived, read.on);
    },
  }),
  defineFact({
    id: 'newcomers',
    unit: null,
    per: 'flock',
    figures: ['arrival/settling-days'],
    compute: (read) => {
      const names = newcomersIn(read).map((each) => each.name);
      return names.length === 0 ? 'chicks' : names.join(' and ');
    },
  }),
  defineFact({
    id: 'boxed-chicks',
    unit: 'bird',
    per: 'flock',
    figures: ['arrival/settling-days'],
    compute: (read) => sumOf(newcomersIn(read), (each) => each.boxed),
  }),
  defineFact({
    id: 'dead-in-box',
    unit: 'bird',
    per: 'flock',
    figures: ['arrival/settling-days'],
    compute: (read) => sumOf(newcomersIn(read), (each) => each.dead),
  }),
  defineFact({
    id: 'dead-in-box-share',
    unit: 'ratio',
    per: 'flock',
    needs: ['boxed-chicks', 'dead-in-box'],
    compute: (read) =>
      read.number('boxed-chicks') === 0 ? 0 : read.number('dead-in-box') / read.number('boxed-chicks'),
  }),
  defineFact({
    id: 'drink-by',
    unit: 'date-time',
    per: 'flock',
    needs: ['chicks-here'],
    figures: ['arrival/settling-days', 'arrival/longest-without-water'],
    compute: (read) => {
      const first = firstHatch(newcomersIn(read));
      if (first === undefined || read.text('chicks-here') === 'no') return undefined;
      if (first.hatchHour === null) read.assume('hatched-at-midnight');
      const hatched = `${first.hatched}T${first.hatchHour ?? '00:00'}`;
      return addHours(hatched, read.figure('arrival/longest-without-water') * hoursInDay);
    },
  }),
  defineFact({
    id: 'hours-left',
    unit: 'day',
    per: 'flock',
    needs: ['drink-by'],
    figures: ['arrival/post-hour'],
    compute: (read) => {
      const now = timeOn(read.on, postHour(read));
      read.assume('counted-from-the-post', { from: { value: now, unit: 'date-time' } });
      return hoursBetween(now, read.text('drink-by')) / hoursInDay;
    },
  }),
  defineFact({
    id: 'warm-by',
    unit: 'date-time',
    per: 'flock',
    needs: ['chicks-due'],
    figures: ['arrival/post-hour', 'brooder/preheat'],
    compute: (read) => {
      const comes = timeOn(read.text('chicks-due'), postHour(read));
      read.assume('chicks-by-morning-post', { at: { value: comes, unit: 'date-time' } });
      return addHours(comes, -read.figure('brooder/preheat') * hoursInDay);
    },
  }),
];
