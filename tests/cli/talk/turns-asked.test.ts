/** "what would turn it" and "when": every change that turns the last answer, and the day on which it turns by itself. */
import { expect, test } from 'vitest';
import { openDemo } from '../../../cli/talk/open-flock.ts';
import { type Memory, nothingYet, type Reply } from '../../../cli/talk/reply.ts';
import { turn } from '../../../cli/talk/turn.ts';
import { shipped } from '../../helpers/flock-of.ts';
import { lexiconFor } from '../../helpers/learned.ts';

const today = '2026-05-14';
const flock = openDemo({ book: shipped, lexicon: lexiconFor(shipped), today, asOf: null });
const manner = { on: today, group: null, write: false };

/** The last reply of a conversation. */
const lastOf = async (...lines: readonly string[]): Promise<Reply> => {
  let memory: Memory = nothingYet;
  let last: Reply | undefined;
  for (const line of lines) {
    last = await turn(flock, line, memory, manner);
    memory = last.memory;
  }
  if (last === undefined) throw new Error('nothing said');
  return last;
};

const textsOf = ({ tokens }: Reply): readonly string[] =>
  tokens.map((token) => ('text' in token ? token.text : ''));

test.each([
  'what would turn it',
  'What would change that?',
  'what would it take',
  'and what would make it a yes',
])('"%s" lists every change that turns the answer, as the search found them', async (line) => {
  const asked = await lastOf('can the reds go out');
  const turns = asked.memory.answer?.parts.flatMap(({ turnsOn }) => turnsOn) ?? [];
  const told = await lastOf('can the reds go out', line);
  expect(textsOf(told).filter((text) => text.startsWith('It would turn to'))).toHaveLength(turns.length);
  expect(told.memory.answer).toEqual(asked.memory.answer);
  if (turns.length === 0)
    expect(textsOf(told)).toContain('No one change of what it rests on turns it, and no two that I tried.');
});

test('"when" tells the day on which the answer turns by itself, as words and as data', async () => {
  const asked = await lastOf('can the reds go out');
  const when = asked.memory.answer?.parts[0]?.when;
  expect(when?.verdict).toBe('yes');
  const told = await lastOf('can the reds go out', 'when');
  expect(textsOf(told)[1]).toMatch(/^It is expected to turn to yes on \w+ \d+ May\./);
  expect([told.json.heard.question, told.json.when]).toEqual(['why', when?.on]);
});

test('an amount has nothing to turn, and before any answer there is none', async () => {
  expect(textsOf(await lastOf('how much feed today', 'what would turn it'))[0]).toBe(
    'The last answer is no yes or no that could turn.',
  );
  expect(textsOf(await lastOf('what would turn it'))[0]).toBe('There is no answer yet that could turn.');
});
