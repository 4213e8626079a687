import { expect, test } from 'vitest';
import { inRuns } from '../../../cli/chat/in-runs.ts';
import type { Token } from '../../../cli/say/tokens.ts';

const claim: Token = { t: 'claim', text: 'Yes.' };
const first: Token = { t: 'reason', n: 1, text: 'they are feathered', outcome: 'held' };
const second: Token = { t: 'reason', n: 2, text: 'it is dry', outcome: 'held' };
const choice: Token = { t: 'choice', n: 1, text: 'the reds' };

test('neighbours of one kind are one list; kinds and other words part them', () => {
  expect(inRuns([claim, claim, first, second, choice, { t: 'blank' }, first])).toEqual([
    { at: 0, isList: false, tokens: [claim] },
    { at: 1, isList: false, tokens: [claim] },
    { at: 2, isList: true, tokens: [first, second] },
    { at: 4, isList: true, tokens: [choice] },
    { at: 6, isList: true, tokens: [first] },
  ]);
});
