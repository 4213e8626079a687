/** What suppositions make of an answer: the differences, and the conditions behind another verdict. Reads recorded answers only. */
import type { Answer, Part, Reason, Turned, WhatIf } from '../types.ts';
import { differencesBetween, pointsOf } from './difference.ts';

type Compared = Omit<Reason, 'n'>;

const sameComparison = (one: Compared, other: Compared): boolean =>
  one.rule === other.rule &&
  one.fact.id === other.fact.id &&
  one.operator === other.operator &&
  one.figure?.id === other.figure?.id &&
  one.other?.id === other.other?.id &&
  one.says.template === other.says.template;

/** What kept a rule from deciding in a part. */
const stopsOf = (part: Part, rule: string | null): readonly Compared[] =>
  part.passedOver.find((each) => each.rule === rule)?.stoppedBy ?? [];

const turnedBetween = (before: Part, after: Part): readonly Turned[] => {
  if (before.rule === after.rule) return [];
  const stopped = stopsOf(before, after.rule);
  return [
    {
      group: after.group,
      from: before.rule,
      to: after.rule,
      now: after.reasons.filter((reason) => stopped.some((each) => sameComparison(each, reason))),
      noLonger: stopsOf(after, before.rule),
    },
  ];
};

/** Sets the answer without the suppositions beside the one under them. First days found by looking ahead are left aside. */
export const whatIf = (before: Answer, after: Answer): WhatIf => ({
  before,
  after,
  differences: differencesBetween(pointsOf(before, false), pointsOf(after, false)),
  turned: after.parts.flatMap((part) => {
    const old = before.parts.find((each) => each.group === part.group);
    return old === undefined ? [] : turnedBetween(old, part);
  }),
});
