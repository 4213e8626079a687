/** Signs seen in a group or in all birds. */
import type { Sign } from '../types.ts';
import type { Reader } from './define.ts';
import { byGroup } from './views.ts';

/** Those of the group asked about and of all birds, oldest first, up to the end of what is on record. */
export const signsFor = (read: Reader): readonly Sign[] =>
  read.see(byGroup<Sign>, read.state.signs)(read.group.name);
