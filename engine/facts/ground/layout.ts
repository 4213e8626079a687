/** How the ground is laid out for the pens: strips side by side, as told or as they fit on it. */
import { defineFact, type Reader } from '../define.ts';
import { settingNumber, settingOf } from '../setting.ts';

/** The sides of a setting told as a size, longer first, m; undefined when it was told as an area or not at all. */
const sidesOf = (read: Reader, what: string): readonly [number, number] | undefined => {
  const size = settingOf(read, what)?.size;
  return size == null ? undefined : [Math.max(...size), Math.min(...size)];
};

/** How many go into a length; one measured exactly that long counts. */
const fitting = (length: number, each: number): number => Math.floor(length / each + 1e-9);

export const layoutFacts = [
  defineFact({
    id: 'pen-length',
    unit: 'm',
    per: 'flock',
    compute: (read) => sidesOf(read, 'pen')?.[0],
  }),
  defineFact({
    id: 'pen-width',
    unit: 'm',
    per: 'flock',
    compute: (read) => sidesOf(read, 'pen')?.[1],
  }),
  defineFact({
    id: 'strip-width',
    unit: 'm',
    per: 'flock',
    wants: ['pen-width'],
    compute: (read) => {
      const told = settingNumber(read, 'strip-width');
      if (told !== undefined) return told;
      const pen = read.maybe('pen-width');
      return pen === undefined ? undefined : Number(pen);
    },
  }),
  defineFact({
    id: 'strip-length',
    unit: 'm',
    per: 'flock',
    compute: (read) => settingNumber(read, 'strip-length') ?? sidesOf(read, 'ground')?.[0],
  }),
  defineFact({
    id: 'ground-area',
    unit: 'm2',
    per: 'flock',
    wants: ['strip-width'],
    compute: (read) => {
      const told = settingNumber(read, 'ground');
      if (told !== undefined) return told;
      const sides = [settingNumber(read, 'strips'), settingNumber(read, 'strip-length')];
      const width = read.maybe('strip-width');
      const [strips, length] = sides;
      if (strips === undefined || length === undefined || width === undefined) return undefined;
      return strips * length * Number(width);
    },
  }),
  defineFact({
    id: 'strips',
    unit: null,
    per: 'flock',
    needs: ['ground-area', 'strip-length', 'strip-width'],
    compute: (read) => {
      const area = read.number('ground-area');
      const ground = settingNumber(read, 'ground');
      // Other ground than the one on record, as in a supposition, has its own number of strips.
      const isOnRecord = ground === undefined || Math.abs(ground - area) < 1e-6;
      const told = settingNumber(read, 'strips');
      if (told !== undefined && isOnRecord) return told;
      const sides = sidesOf(read, 'ground');
      const isAlong = settingNumber(read, 'strip-length') === undefined;
      return sides !== undefined && isOnRecord && isAlong
        ? fitting(sides[1], read.number('strip-width'))
        : fitting(area, read.number('strip-length') * read.number('strip-width'));
    },
  }),
];
