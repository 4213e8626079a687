/** Settings of the household that a line says in its own way: `a family of six`, `two adults and 3 kids`, `a chicken a week`. */
import { findHousehold } from '../find/household.ts';
import type { NumberSpan, TermSpan } from '../spans.ts';
import { numbers, type Told, terms } from './told.ts';

/** A setting said, and the number that says it, as one value. */
export interface HouseholdSaid {
  readonly term: TermSpan;
  readonly said: NumberSpan;
}

const settingAt = (id: string, from: number, to: number): TermSpan => ({
  kind: 'term',
  list: 'setting',
  id,
  from,
  to,
});

/** What the line says of how many eat, and of how many birds a week. */
export const householdIn = (told: Told): readonly HouseholdSaid[] => {
  const { eaters, birdsAWeek, spans } = findHousehold(told.line.tokens);
  const asSaid = (id: string, value: number, { from, to }: { from: number; to: number }): HouseholdSaid => {
    const number = numbers(told).find((span) => from <= span.from && span.to <= to);
    return {
      term: settingAt(id, from, to),
      said: number?.value === value ? number : { kind: 'number', from, to, value, digits: null },
    };
  };
  const pace = birdsAWeek === undefined ? undefined : spans.at(-1);
  const people = eaters === undefined ? undefined : spans[0];
  // "3 people helping us" speaks of hands and not of mouths
  const isOfHands = terms(told, 'setting').some(({ id }) => id === 'helpers');
  return [
    ...(people === undefined || eaters === undefined || isOfHands ? [] : [asSaid('eaters', eaters, people)]),
    ...(pace === undefined || birdsAWeek === undefined ? [] : [asSaid('birds-a-week', birdsAWeek, pace)]),
  ];
};
