/** The same line twice, letter for letter: told twice, or joined from two copies of the file. */
import { type Check, problemOf } from './check.ts';

export const repeatedLine: Check = {
  name: 'repeated-line',
  find: (scene) => {
    const lines = new Map<string, number>();
    return scene.standing.flatMap((standing) => {
      const { raw, line } = standing.entry;
      const first = lines.get(raw);
      if (first === undefined) {
        lines.set(raw, line);
        return [];
      }
      const finding = {
        code: 'repeated-line',
        path: '',
        under: 'value',
        data: { 'first-line': first },
      } as const;
      return [problemOf(scene, standing, finding, [])];
    });
  },
};
