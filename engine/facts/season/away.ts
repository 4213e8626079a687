/** Days on which the keeper is away while a batch needs hands. */
import { addDays, type Day } from '../../day.ts';
import { defineFact, type Reader } from '../define.ts';
import { stayFigures, stayNeeds, stayOf } from './stay.ts';

interface Absence {
  readonly from: Day;
  readonly to: Day;
}

/** Every "away from" with the "back on" told next after it; a day alone where none was. */
const absencesIn = (read: Reader): readonly Absence[] => {
  const backs = read.state.settings['back-on'] ?? [];
  return (read.state.settings['away-from'] ?? []).map((away) => {
    const back = backs.find((each) => each.line > away.line && String(each.value) >= String(away.value));
    read.from(away, ...(back === undefined ? [] : [back]));
    return { from: String(away.value), to: String(back?.value ?? addDays(String(away.value), 1)) };
  });
};

/** Days away inside a stretch, its end left out. */
const awayWithin = (absences: readonly Absence[], first: Day, last: Day): number => {
  let days = 0;
  for (const { from, to } of absences)
    for (let day = from > first ? from : first; day < to && day < last; day = addDays(day, 1)) days += 1;
  return days;
};

export const batchAwayFacts = [
  defineFact({
    id: 'batch-away-at-worst',
    unit: 'day',
    needs: stayNeeds,
    figures: [...stayFigures, 'season/first-days'],
    compute: (read) => {
      const { arrives, process } = stayOf(read, read.group);
      const absences = absencesIn(read);
      const firstDays = awayWithin(absences, arrives, addDays(arrives, read.figure('season/first-days')));
      // The day of processing, the one before for taking feed off, and the one after for freezing.
      return firstDays + awayWithin(absences, addDays(process, -1), addDays(process, 2));
    },
  }),
  defineFact({
    id: 'batch-away',
    unit: 'day',
    needs: stayNeeds,
    figures: stayFigures,
    compute: (read) => {
      const { arrives, process } = stayOf(read, read.group);
      return awayWithin(absencesIn(read), arrives, process);
    },
  }),
];
