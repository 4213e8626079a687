/** The ground as a field of strips with the pens on it: what every fact about strips looks at. */
import type { Reader } from '../define.ts';
import { type Field, walkLanes } from '../sums/path.ts';
import { toTime } from './happenings.ts';
import { type PensOnGround, penEach, pensOnGround } from './pens.ts';

/** What a fact must declare to use `fieldOf`. */
export const fieldWants = ['strips', 'strip-length', 'pen-length'];
export const fieldEach = penEach;
export const fieldFigures = ['pasture/ground-rest'];

export interface Ground extends PensOnGround {
  readonly field: Field;
}

/** The ground with its strips and pens; undefined where the size of strips or pen is not on record. */
export const fieldOf = (read: Reader): Ground | undefined => {
  const [count, length, body] = ['strips', 'strip-length', 'pen-length'].map((id) => read.maybe(id));
  if (count === undefined || length === undefined || body === undefined) return undefined;
  const pens = pensOnGround(read);
  const lanes = {
    count: Number(count),
    length: Number(length),
    body: Number(body),
    rest: read.figure('pasture/ground-rest'),
  };
  return { ...pens, field: walkLanes(lanes, pens.strides, toTime(read.on)) };
};
