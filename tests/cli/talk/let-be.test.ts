/** A record left half told is let be, and that is said; one that goes on, or is refused, speaks for itself. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { plain } from '../../../cli/say/plain.ts';
import { openOwn } from '../../../cli/talk/open-flock.ts';
import { beginTalk } from '../../../cli/talk/talk.ts';
import { lexiconFor } from '../../helpers/learned.ts';
import { rulebook } from '../../helpers/rulebook-of.ts';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'penside-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

let talks = 0;
/** The first row of the reply to each line, in a chat whose first questions have been left. */
const say = async (...lines: readonly string[]): Promise<readonly (string | undefined)[]> => {
  const { book } = rulebook();
  talks += 1;
  const flock = openOwn({
    book,
    lexicon: lexiconFor(book),
    path: join(folder, `flock-${talks}.jsonl`),
    today: '2026-05-14',
    asOf: null,
    now: '2026-05-14T07:00:00+00:00',
    by: null,
  });
  const talk = beginTalk(flock, async () => flock, null);
  await talk.take('stop');
  const rows: (string | undefined)[] = [];
  for (const line of lines) rows.push(plain(await talk.take(line), 200)[0]);
  return rows;
};

const born = '50 whites hatched tuesday came this morning, none dead';
const letBe = 'Careful: "the whites average 4 oz" is not written, as something was still to say of it.';

test('another question leaves it', async () => {
  const [, asked, next] = await say(born, 'the whites average 4 oz', 'how many birds do I have');
  expect([asked, next]).toEqual(['How many were weighed?', letBe]);
});

test('another record leaves it, also where that is asked about itself', async () => {
  expect((await say(born, 'the whites average 4 oz', 'freezer is 14 cu ft')).at(-1)).toBe(letBe);
});

test('an answer goes on with it, and nothing is said where nothing was begun', async () => {
  expect(await say(born, 'lost some whites', '2', 'freezer is 14 cu ft')).toEqual([
    'Written: 50 whites came, none of them dead, fast growing, hatched Tuesday 12 May.',
    'How many were lost?',
    'Written: 2 whites lost.',
    'Written: Freezer size: 14 ft³.',
  ]);
});
