import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readRules } from '../helpers/read-rules.ts';
import { placeFor } from './place.ts';
import { countOutcomes, readLabelled, scoreLines } from './score.ts';

const about = placeFor(readRules());

const score = (voice: string) => {
  const path = new URL(`./${voice}.jsonl`, import.meta.url);
  const scored = scoreLines(readLabelled(readFileSync(path, 'utf8')), about).filter((each) => each.askable);
  const { right, asked, wrong } = countOutcomes(scored);
  const share = (count: number): number => count / scored.length;
  return { right: share(right), reached: share(right + asked), wrong: share(wrong) };
};

// The levels are those reached, a little rounded down; raise them when a voice is understood better.
test.each([
  ['smallholder', 0.73, 0.84, 0.07],
  ['newcomer', 0.79, 0.95, 0.05],
  ['nurse', 0.86, 0.97, 0.02],
  ['incomer', 0.76, 0.9, 0.05],
])('a voice that nothing was tuned on: %s', (voice, right, reached, wrong) => {
  const level = score(voice);
  expect(level.right).toBeGreaterThanOrEqual(right);
  expect(level.reached).toBeGreaterThanOrEqual(reached);
  expect(level.wrong).toBeLessThanOrEqual(wrong);
});

test.each([
  ['foreman', 0.82, 0.95, 0.03],
  ['teenager', 0.91, 0.97, 0.02],
])('a voice of the workbench: %s', (voice, right, reached, wrong) => {
  const level = score(voice);
  expect(level.right).toBeGreaterThanOrEqual(right);
  expect(level.reached).toBeGreaterThanOrEqual(reached);
  expect(level.wrong).toBeLessThanOrEqual(wrong);
});
