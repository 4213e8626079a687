/** The same line twice, letter for letter: told twice, or joined from two copies of the file. */
import type { Finding } from '../finding.ts';
import { type Check, problemOf } from './check.ts';

/** With its writing time a repeated line is a copy and counts once; without, it counts each time. */
const findingOf = (first: number, counted: 'once' | 'each'): Finding => ({
  code: 'repeated-line',
  path: '',
  under: 'value',
  data: { 'first-line': first, counted },
});

export const repeatedLine: Check = {
  name: 'repeated-line',
  find: (scene) => {
    const lines = new Map<string, number>();
    const told = scene.standing.flatMap((standing) => {
      const { raw, line } = standing.entry;
      const first = lines.get(raw);
      if (first !== undefined) return [problemOf(scene, standing, findingOf(first, 'each'), [])];
      lines.set(raw, line);
      return [];
    });
    const copied = scene.copies.map(({ entry, first }) =>
      problemOf(scene, { entry, corrections: [] }, findingOf(first, 'once'), []),
    );
    return [...told, ...copied];
  },
};
