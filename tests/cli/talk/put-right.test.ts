/** Amounts put right by the entry that was meant, follow-ups behind a record, and records told with a question. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { plain } from '../../../cli/say/plain.ts';
import { openOwn } from '../../../cli/talk/open-flock.ts';
import { nothingYet } from '../../../cli/talk/reply.ts';
import { turn } from '../../../cli/talk/turn.ts';
import { lexiconFor } from '../../helpers/learned.ts';
import { rulebook } from '../../helpers/rulebook-of.ts';

const { book } = rulebook();
const today = '2026-05-14';
let folder = '';

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'penside-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

const pathOf = () => join(folder, 'flock.jsonl');

/** The first line of each reply. */
const say = async (...lines: readonly string[]): Promise<readonly string[]> => {
  const lexicon = lexiconFor(book);
  const flock = openOwn({
    book,
    lexicon,
    path: pathOf(),
    today,
    asOf: null,
    now: `${today}T09:00:00+00:00`,
    by: null,
  });
  let memory = nothingYet;
  const claims: string[] = [];
  for (const line of ['40 whites hatched 15 april came 16 april', ...lines]) {
    const reply = await turn(flock, line, memory, { on: today, group: null, write: true });
    memory = reply.memory;
    claims.push(plain(reply.tokens, 200).find((each) => each !== '') ?? '');
  }
  return claims.slice(1);
};

const written = (): readonly Record<string, unknown>[] =>
  readFileSync(pathOf(), 'utf8')
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line));

test('the record that had the wrong amount is put right, though something was asked since', async () => {
  expect(
    await say('lost 2 whites', 'low of 51 last night', 'how many whites are alive', 'no, 3 not 2'),
  ).toEqual([
    'Written: 2 whites lost.',
    'Written: Low 51 °F, on Wednesday 13 May.',
    expect.stringContaining('38 birds alive'),
    'Put right: 3 whites lost.',
  ]);
  expect(written().at(-1)).toMatchObject({ kind: 'correct', line: 2, with: { count: 3 } });
});

test('bags put right weigh as many more', async () => {
  expect(await say('bought 4 bags of grower for 78', 'no, 5 bags not 4')).toEqual([
    'Written: 4 bags of feed (grower) bought, 200 lb, $78.00 in all.',
    'Put right: 5 bags of feed (grower) bought, 250 lb, $78.00 in all.',
  ]);
});

test('a follow-up that tells nothing goes on with the question behind the record', async () => {
  const [, , answer] = await say('how much feed today', 'fed the whites 9 lb', 'and tomorrow?');
  expect(answer).toBe('For Friday 15 May');
});

test('a supposition behind a record is laid under the question before it', async () => {
  const [, , answer] = await say(
    'can they go out',
    'low of 51 last night',
    'what if the nights were 8 degrees colder',
  );
  expect(answer).toBe('Supposing night low −8°F; nothing is written');
});

test('what is told with a question is written, and what is only planned is not', async () => {
  expect((await say('2 whites dead this morning, is that normal?'))[0]).toBe('Written: 2 whites lost.');
  const before = written().length;
  rmSync(pathOf());
  await say('tomorrow we slaughter 30 whites, when do I take the feed away?');
  expect(written().length).toBe(before - 1);
});

test('undo takes back a record as it stands, with what was put right in it', async () => {
  expect(await say('lost 2 whites', 'no, 3 not 2', 'undo')).toEqual([
    'Written: 2 whites lost.',
    'Put right: 3 whites lost.',
    'Taken back: 3 whites lost.',
  ]);
});
