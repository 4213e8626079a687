/** A day to come asked about at once and one asked after by "why not" are the same day: the same numbers, seen from today. */
import { expect, test } from 'vitest';
import { openDemo } from '../../../cli/talk/open-flock.ts';
import { type Memory, nothingYet } from '../../../cli/talk/reply.ts';
import { turn } from '../../../cli/talk/turn.ts';
import { shipped } from '../../helpers/flock-of.ts';
import { lexiconFor } from '../../helpers/learned.ts';

const today = '2026-05-14';
const flock = openDemo({ book: shipped, lexicon: lexiconFor(shipped), today, asOf: null });

const manner = { on: today, group: null, write: false };

/** The answer that stands after some lines. */
const after = async (...lines: readonly string[]) => {
  let memory: Memory = nothingYet;
  for (const line of lines) ({ memory } = await turn(flock, line, memory, manner));
  if (memory.answer === null) throw new Error(`no answer to ${lines.join(' / ')}`);
  return memory.answer;
};

test.each([
  ['how much feed for the whites', 'how much feed for the whites on saturday'],
  ['how much water do they need', 'how much water do they need on saturday'],
  ['can the reds go out', 'can the reds go out on saturday'],
  ['how warm should the brooder be', 'how warm should the brooder be on saturday'],
  ['how heavy are the whites', 'how heavy are the whites on saturday'],
  ['do I need to move the pen', 'do I need to move the pen on saturday'],
])('"%s", then "why not saturday"', async (now, onSaturday) => {
  const [asked, askedAfter] = [await after(onSaturday), await after(now, 'why not saturday')];
  expect(asked.request.moment.on).toBe('2026-05-16');
  expect(asked.question).toBe(askedAfter.question);
  expect(asked.results).toEqual(askedAfter.results);
  expect(asked.parts).toEqual(askedAfter.parts);
  expect(asked.request.asked).toBe(today);
});

test('a day that has been is seen from itself', async () => {
  const { request } = await after('how much feed for the whites yesterday');
  expect(request.asked).toBeUndefined();
});
