/** The order in which tasks are worked through: by the time of day, then as declared. */
import type { StepToDo } from '../types.ts';

const timesOfDay = ['now', 'morning', 'midday', 'evening', 'soon', 'dated'];

/** When a dated task falls; the others are placed by their time of day. */
const dateOf = ({ at, by }: StepToDo): string => (at === 'dated' ? (by ?? '') : '');

export const inOrder = (a: StepToDo, b: StepToDo): number =>
  timesOfDay.indexOf(a.at) - timesOfDay.indexOf(b.at) ||
  (dateOf(a) < dateOf(b) ? -1 : dateOf(a) > dateOf(b) ? 1 : 0) ||
  a.order - b.order ||
  (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);
