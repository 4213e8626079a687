/** A wording of the rulebook with the values that fill it; the words themselves are put together elsewhere. */
import type { FigureUse, Sentence, Shown } from '../types.ts';

/** Where the values of a wording come from. */
export interface Filling {
  fact(id: string): Shown;
  figure(id: string): FigureUse | undefined;
  readonly group: string | null;
  readonly on: string;
  readonly until: string | null;
}

const shownFor = (name: string, filling: Filling): Shown => {
  if (name === 'group') return { value: filling.group, unit: null };
  if (name === 'on') return { value: filling.on, unit: 'date' };
  if (name === 'until') return { value: filling.until, unit: 'date' };
  if (!name.includes('/')) return filling.fact(name);
  const use = filling.figure(name);
  return use === undefined ? { value: null, unit: null } : { value: use.value, unit: use.unit, figure: use };
};

/** The template with a value for every {name} in it. */
export const sentence = (template: string, filling: Filling): Sentence => ({
  template,
  values: Object.fromEntries(
    [...template.matchAll(/\{([^}]+)\}/g)].map(([, name = '']) => [name, shownFor(name, filling)]),
  ),
});
