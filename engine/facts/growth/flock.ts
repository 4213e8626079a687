/** How this flock grows beside the plan line: its own weighings, each for what it is worth, pull the line toward them. */
import type { Day } from '../../day.ts';
import type { Group } from '../../types.ts';
import { defineFact, type Reader } from '../define.ts';
import { settingNumber } from '../setting.ts';
import { type Belief, followLevel } from '../sums/follow-level.ts';
import { halfWidth } from '../sums/normal.ts';
import { standardError } from '../sums/sampling.ts';
import { planCurve, planFigures, planNeeds } from './plan.ts';
import { weighingDays } from './weighings.ts';

const followNeeds = [...planNeeds, 'bird-spread'];
const followFigures = [
  ...planFigures,
  'growth/between-flocks',
  'growth/undescribed-kind',
  'growth/drift',
  'growth/scale-error',
  'growth/odd-gate',
];

const daysInWeek = 7;

/** Variance that a day adds to the logarithm of weight over plan. The fact must declare `growth/drift`. */
export const driftADay = (read: Reader): number => read.figure('growth/drift') ** 2 / daysInWeek;

/** Birds alive as a day began, for how large a share of them a sample was. */
const aliveBefore = (group: Group, day: Day): number =>
  [...group.losses, ...group.processed]
    .filter((each) => each.on < day)
    .reduce((left, each) => left - each.count, group.boxed - group.dead);

/** How far flocks lie from their plan line before any is weighed; a kind nobody described may lie much further. */
const spreadBefore = (read: Reader): number => {
  const isDescribed =
    read.text('growth-line') !== 'own' || settingNumber(read, 'own-kind-weight') !== undefined;
  return read.figure(isDescribed ? 'growth/between-flocks' : 'growth/undescribed-kind');
};

interface BeliefOn extends Belief {
  readonly on: Day;
}

/**
 * What is believed of the logarithm of weight over plan after each day of weighing, oldest first. In logarithms a third
 * more and a third less weigh alike, and the curve's shape stays as it is.
 */
const followFlock = (read: Reader): readonly BeliefOn[] => {
  const { group } = read;
  const days = weighingDays(group);
  if (days.length === 0) return [];
  const plan = planCurve(read);
  const spread = read.number('bird-spread');
  const scale = read.figure('growth/scale-error');
  const readings = days.map(({ on, age, mean, count, entries }) => {
    read.from(...entries);
    const sampling = standardError(spread, count, aliveBefore(group, on));
    return { at: age, value: Math.log(mean / plan(age)), variance: sampling ** 2 + scale ** 2 };
  });
  const beliefs = followLevel(readings, {
    level: 0,
    variance: spreadBefore(read) ** 2,
    drift: driftADay(read),
    gate: halfWidth(read.figure('growth/odd-gate')),
  });
  return beliefs.map((belief, index) => ({ ...belief, on: days[index]?.on ?? read.asked }));
};

export const flockFacts = [
  defineFact({
    id: 'flock-ratio',
    unit: 'ratio',
    needs: followNeeds,
    figures: followFigures,
    compute: (read) => {
      const belief = followFlock(read).at(-1);
      if (belief === undefined) read.assume('grows-as-planned');
      return Math.exp(belief?.level ?? 0);
    },
  }),
  defineFact({
    id: 'flock-ratio-spread',
    unit: 'ratio',
    needs: [...followNeeds, 'age'],
    figures: followFigures,
    compute: (read) => {
      const belief = followFlock(read).at(-1);
      if (belief === undefined) return spreadBefore(read);
      return Math.sqrt(belief.variance + driftADay(read) * Math.max(0, read.number('age') - belief.at));
    },
  }),
  defineFact({
    id: 'odd-weighing',
    unit: null,
    needs: followNeeds,
    figures: followFigures,
    compute: (read) => followFlock(read).at(-1)?.odd ?? false,
  }),
  defineFact({
    id: 'behind-since',
    unit: 'date',
    needs: followNeeds,
    figures: [...followFigures, 'growth/behind-below'],
    compute: (read) => {
      const bound = Math.log(read.figure('growth/behind-below'));
      const beliefs = followFlock(read);
      const lastOnTrack = beliefs.findLastIndex(({ level }) => level >= bound);
      return beliefs[lastOnTrack + 1]?.on;
    },
  }),
];
