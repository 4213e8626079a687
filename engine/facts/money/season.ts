/** Which batches are reckoned together, and which purchases were made for them. */
import { addDays, type Day } from '../../day.ts';
import type { Group, Purchase } from '../../types.ts';
import type { Reader } from '../define.ts';
import { aliveOn } from '../past.ts';

/** Batches without a long gap between them, in the order in which they came. */
export interface Run {
  readonly groups: readonly Group[];
  readonly from: Day;
  /** The last day with birds for the table; undefined while there are any. */
  readonly until: Day | undefined;
}

/** What a fact declares to use `ownRun` and `purchasesOf`; one that uses `seasonsOf` declares `seasonFigures` too. */
export const runFigures = ['money/bills-after'];
export const seasonFigures = [...runFigures, 'money/season-gap'];

/** The day the last bird for the table left; undefined while there are any. Birds kept back are not for the table. */
const lastDayOf = (group: Group, asked: Day): Day | undefined => {
  const kept = group.kept
    .filter((each) => each.until === null || each.until >= asked)
    .reduce((sum, each) => sum + each.count, 0);
  if (aliveOn(group, asked) > kept) return undefined;
  return [group.arrived, ...[...group.losses, ...group.processed].map((each) => each.on)].sort().at(-1);
};

/** Batches put together wherever no more than so many days without birds lie between them. */
const putTogether = (all: readonly Group[], asked: Day, gap: number): readonly Run[] => {
  const groups = all
    .filter((each) => each.arrived <= asked)
    .sort((a, b) => (a.arrived < b.arrived ? -1 : a.arrived > b.arrived ? 1 : a.line - b.line));
  const runs: Run[] = [];
  for (const group of groups) {
    const last = runs.at(-1);
    const until = lastDayOf(group, asked);
    if (last === undefined || (last.until !== undefined && group.arrived > addDays(last.until, gap))) {
      runs.push({ groups: [group], from: group.arrived, until });
      continue;
    }
    const isOpen = last.until === undefined || until === undefined;
    const later = isOpen ? undefined : [last.until, until].sort().at(-1);
    runs[runs.length - 1] = { ...last, groups: [...last.groups, group], until: later };
  }
  return runs;
};

/** The runs of some groups, for each day and gap once: every fact about money wants them. */
const runsOfGroups = (groups: readonly Group[]): ((asked: Day, gap: number) => readonly Run[]) => {
  const known = new Map<string, readonly Run[]>();
  return (asked, gap) => {
    const key = `${asked} ${gap}`;
    const runs = known.get(key) ?? putTogether(groups, asked, gap);
    known.set(key, runs);
    return runs;
  };
};

const runsWithin = (read: Reader, gap: number): readonly Run[] =>
  read.see(runsOfGroups, read.state.groups)(read.asked, gap);

/** Batches that were there at the same time, which share what was bought for them. */
export const runsOf = (read: Reader): readonly Run[] => runsWithin(read, 0);

/** Batches of one season, a longer gap without birds before and after it. */
export const seasonsOf = (read: Reader): readonly Run[] => runsWithin(read, read.figure('money/season-gap'));

const holding = (runs: readonly Run[], group: Group): Run => {
  const own = runs.find(({ groups }) => groups.some(({ name }) => name === group.name));
  if (own === undefined) throw new Error(`the ${group.name} are in no run of batches`);
  return own;
};

/** The batches that the group asked about was there with. */
export const ownRun = (read: Reader): Run => holding(runsOf(read), read.group);

/** The season of the group asked about. */
export const ownSeason = (read: Reader): Run => holding(seasonsOf(read), read.group);

/** What is paid for after it was used. */
const billed = ['processing', 'electricity'];

/** Whose chicks these were: the batch with just as many in the box, else the next to come, else the last that came. */
const ownerOfChicks = (runs: readonly Run[], { on, count }: Purchase): Group | undefined => {
  const groups = runs.flatMap((run) => run.groups);
  const next = groups.filter(({ arrived }) => arrived >= on);
  const near = next.length > 0 ? next : [...groups].reverse();
  return near.find(({ boxed }) => boxed === count) ?? near[0];
};

/** The groups that share a purchase: those of the first run that is not over, since people buy ahead; a bill may come a little late. */
const sharersOf = (read: Reader, runs: readonly Run[], purchase: Purchase): readonly Group[] => {
  const meant = runs.flatMap(({ groups }) => groups).filter(({ name }) => name === purchase.group);
  if (meant.length > 0) return meant;
  if (purchase.what === 'chicks') {
    const owner = ownerOfChicks(runs, purchase);
    return owner === undefined ? [] : [owner];
  }
  const late = billed.includes(purchase.what) ? read.figure('money/bills-after') : 0;
  return runs.find(({ until }) => until === undefined || purchase.on <= addDays(until, late))?.groups ?? [];
};

/** What was bought for a run or a season. */
export const purchasesOf = (read: Reader, { groups }: Run): readonly Purchase[] => {
  const runs = runsOf(read);
  const names = new Set(groups.map(({ name }) => name));
  return read.state.purchases.filter(
    (each) => each.on <= read.asked && sharersOf(read, runs, each).some(({ name }) => names.has(name)),
  );
};

/** Chicks bought for the group asked about. */
export const ownChicks = (read: Reader): readonly Purchase[] => {
  const runs = runsOf(read);
  return read.state.purchases.filter(
    (each) =>
      each.on <= read.asked &&
      each.what === 'chicks' &&
      sharersOf(read, runs, each).some(({ name }) => name === read.group.name),
  );
};

/** The batches that an answer about money is for: those named, else those of the season that is on or was last. */
export const countedGroups = (read: Reader): readonly string[] =>
  read.named.length > 0
    ? read.named
    : (seasonsOf(read)
        .at(-1)
        ?.groups.map(({ name }) => name) ?? []);
