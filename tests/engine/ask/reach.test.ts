/** Which facts a question can rest on: checked against what its answers were in truth worked out from. */
import { describe, expect, test } from 'vitest';
import { demoLedger } from '../../../cli/demo/demo.ts';
import { factsBehind, openText } from '../../../engine/index.ts';
import { ask, shipped } from '../../helpers/flock-of.ts';

const today = '2026-05-14';
const flock = openText(shipped, 'demo', demoLedger(today));
const questions = Object.values(shipped.questions).filter(({ kind }) => kind !== 'about');
/** What answering itself looks up, whatever the question. */
const always = new Set(['look-ahead']);

describe.each(questions.map(({ id }) => id))('%s', (id) => {
  test('was worked out from nothing that is not behind it', async () => {
    const behind = factsBehind(shipped, id);
    const { workings } = await ask(flock, id, today);
    const others = workings.map(({ fact }) => fact).filter((fact) => !behind.has(fact) && !always.has(fact));
    expect([...new Set(others)]).toEqual([]);
  });
});

test('what has no part in a question is not behind it', () => {
  expect(factsBehind(shipped, 'go-out').has('bag-price')).toBe(false);
  expect(factsBehind(shipped, 'go-out').has('night-low')).toBe(true);
  expect(factsBehind(shipped, 'feed-buy').has('bag-price')).toBe(true);
});

test('a list rests on what the questions it gathers rest on; a question that is not there on nothing', () => {
  expect(factsBehind(shipped, 'today').has('night-low')).toBe(true);
  expect(factsBehind(shipped, 'no-such-question').size).toBe(0);
});
