/** Which lines of a reckoning move it most. */
import { defineFact, type Fact, type Reader } from '../define.ts';
import { costLines } from './sharing.ts';

const lineIds = costLines.map((line) => `all-${line}`);

interface Share {
  readonly line: string;
  /** Ratio of the whole. */
  readonly share: number;
}

/** Lines that cost anything, the dearest first. */
const byShare = (read: Reader): readonly Share[] => {
  const all = read.number('projected');
  return costLines
    .map((line) => ({ line, share: all > 0 ? read.number(`all-${line}`) / all : 0 }))
    .filter(({ share }) => share > 0)
    .sort((a, b) => b.share - a.share);
};

const needs = ['projected', ...lineIds];

const ranked = (name: string, at: number): readonly Fact[] => [
  defineFact({
    id: `${name}-line`,
    unit: null,
    per: 'flock',
    needs,
    compute: (read) => byShare(read)[at]?.line,
  }),
  defineFact({
    id: `${name}-line-share`,
    unit: 'ratio',
    per: 'flock',
    needs,
    compute: (read) => byShare(read)[at]?.share ?? 0,
  }),
];

export const largestFacts = [...ranked('first', 0), ...ranked('second', 1), ...ranked('third', 2)];
