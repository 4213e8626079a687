/** Words too far off to be mended unasked: what they were likely meant to be, and which are left alone. */
import { expect, test } from 'vitest';
import { mendFarSlips } from '../../../cli/understand/far-slips.ts';

const candidates = ['brooder', 'temperature', 'weather', 'chickens', 'chicks', 'freezer', 'process', 'feed'];
const known = { words: new Set([...candidates, 'warm', 'hinge']), stems: new Set(['waterer']) };
const mend = (line: string): string | null => mendFarSlips(line, known, candidates);

test.each([
  ['how warm is the brudr', 'how warm is the brooder'],
  ['tempratur of the BRUDR?', 'temperature of the brooder?'],
  ['how many chikns', 'how many chickens'],
  ['the wether, and the freezr.', 'the weather, and the freezer.'],
])('%j may mean %j', (line, meant) => {
  expect(mend(line)).toBe(meant);
});

test.each([
  ['words that are known', 'how warm is the brooder'],
  ['a known word of another form', 'the waterers'],
  ['everyday words, however near', 'the father went there'],
  ['short words', 'how wrm is it'],
  ['numbers and units', '50 lb at 10x12'],
  ['what is like nothing', 'the presidential xylophone'],
])('%s are left alone', (_what, line) => {
  expect(mend(line)).toBeNull();
});
