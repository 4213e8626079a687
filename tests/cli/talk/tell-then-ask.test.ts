/** One breath that tells and asks: written first where that may be, else supposed for the one answer. */
import { expect, test } from 'vitest';
import { plain } from '../../../cli/say/plain.ts';
import { openDemo } from '../../../cli/talk/open-flock.ts';
import { nothingYet } from '../../../cli/talk/reply.ts';
import { turn } from '../../../cli/talk/turn.ts';
import { lexiconFor } from '../../helpers/learned.ts';
import { rulebook } from '../../helpers/rulebook-of.ts';

const { book } = rulebook();
const today = '2026-05-14';
const line = 'there are 6 of us, we eat 2 birds a week, 7 cu ft free in the freezer, how many birds a year';

test('where nothing is written the settings told are supposed for this one answer', async () => {
  const flock = openDemo({ book, lexicon: lexiconFor(book), today, asOf: null });
  const reply = await turn(flock, line, nothingYet, { on: today, group: null, write: false });
  expect(reply.record).toBeNull();
  expect(plain(reply.tokens, 200).slice(0, 3)).toEqual([
    'Supposing Birds eaten a week: 2, Free room in the freezer: 7 ft³ and People eating: 6; nothing is',
    'written',
    'Raise 104 birds for 52 weeks: 2 a week, 468 lb at 4.5 lb each.',
  ]);
  const after = await turn(flock, 'how many birds a year', reply.memory, {
    on: today,
    group: null,
    write: false,
  });
  expect(plain(after.tokens, 200)[0]).not.toContain('104');
});
