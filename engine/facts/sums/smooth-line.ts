/** A smooth line through points that neither overshoots nor turns where the points do not (piecewise cubic, Fritsch and Carlson 1980). */

export type Point = readonly [x: number, y: number];

/** Slope at an end of the line: three-point formula, held back so that the line stays monotone. */
const slopeAtEnd = (near: number, far: number, nearStep: number, farStep: number): number => {
  const slope = ((2 * nearStep + farStep) * near - nearStep * far) / (nearStep + farStep);
  if (slope * near <= 0) return 0;
  return near * far < 0 && Math.abs(slope) > Math.abs(3 * near) ? 3 * near : slope;
};

/** Slope at an inner point: weighted harmonic mean of its neighbours', level where they differ in sign. */
const slopeBetween = (left: number, right: number, leftStep: number, rightStep: number): number => {
  if (left * right <= 0) return 0;
  const first = 2 * rightStep + leftStep;
  const second = rightStep + 2 * leftStep;
  return (first + second) / (first / left + second / right);
};

interface Piece {
  readonly x: number;
  readonly y: number;
  readonly step: number;
  readonly rise: number;
}

const piecesOf = (points: readonly Point[]): Piece[] =>
  points.slice(1).map(([x, y], index) => {
    const [before, from] = points[index] as Point;
    return { x: before, y: from, step: x - before, rise: (y - from) / (x - before) };
  });

const slopesOf = (pieces: readonly Piece[]): number[] => {
  const first = pieces[0] as Piece;
  const last = pieces.at(-1) as Piece;
  const second = pieces[1] ?? first;
  const beforeLast = pieces.at(-2) ?? last;
  const inner = pieces.slice(1).map((piece, index) => {
    const before = pieces[index] as Piece;
    return slopeBetween(before.rise, piece.rise, before.step, piece.step);
  });
  return [
    slopeAtEnd(first.rise, second.rise, first.step, second.step),
    ...inner,
    slopeAtEnd(last.rise, beforeLast.rise, last.step, beforeLast.step),
  ];
};

/**
 * The line through at least two points given in rising order of x; level before the first and after the last.
 * Between two points it stays between their heights.
 * @throws when there are fewer than two points or x does not rise: the caller's bug
 */
export const smoothLine = (points: readonly Point[]): ((x: number) => number) => {
  const pieces = piecesOf(points);
  if (pieces.length === 0 || pieces.some((piece) => !(piece.step > 0)))
    throw new Error('a line wants points in rising order');
  const slopes = slopesOf(pieces);
  const [start, low] = points[0] as Point;
  const [end, high] = points.at(-1) as Point;
  return (x) => {
    if (x <= start) return low;
    if (x >= end) return high;
    const index = pieces.findLastIndex((piece) => piece.x <= x);
    const { x: from, y, step, rise } = pieces[index] as Piece;
    const [left, right] = [slopes[index] as number, slopes[index + 1] as number];
    const along = x - from;
    const bend = (3 * rise - 2 * left - right) / step;
    const twist = (left + right - 2 * rise) / (step * step);
    return y + along * (left + along * (bend + along * twist));
  };
};
