/** What stands between a keeper's words and the file: whatever is lacking, unsure or taken for granted is said. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { plain } from '../../../cli/say/plain.ts';
import { openOwn } from '../../../cli/talk/open-flock.ts';
import { nothingYet } from '../../../cli/talk/reply.ts';
import { turn } from '../../../cli/talk/turn.ts';
import { shipped } from '../../helpers/flock-of.ts';
import { lexiconFor } from '../../helpers/learned.ts';

const whites = {
  kind: 'arrive',
  on: '2026-04-09',
  group: 'whites',
  count: 52,
  bird: 'fast',
  hatched: '2026-04-07',
};
const reds = {
  kind: 'arrive',
  on: '2026-04-22',
  group: 'reds',
  count: 30,
  bird: 'slow',
  hatched: '2026-04-21',
};
const before = [whites, reds].map((entry) => `${JSON.stringify(entry)}\n`).join('');

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'read-back-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

/** Says one line to a new flock file, and reads back what came of it. */
const say = async (words: string) => {
  const path = join(folder, 'flock.jsonl');
  writeFileSync(path, before);
  const flock = openOwn({
    book: shipped,
    lexicon: lexiconFor(shipped),
    path,
    today: '2026-05-14',
    asOf: null,
    now: '2026-05-14T09:00:00+00:00',
    by: null,
  });
  const reply = await turn(flock, words, nothingYet, { on: '2026-05-14', group: null, write: true });
  return {
    said: plain(reply.tokens, 80).join(' ').replace(/\s+/g, ' '),
    written: readFileSync(path, 'utf8').slice(before.length),
    reply,
  };
};

test.each(['lost two last night', 'weighed two whites, 9 lb', 'fed the whites'])(
  'nothing is written while something is lacking: %s',
  async (words) => {
    const { said, written } = await say(words);
    expect([written, said.includes('Nothing is written yet')]).toEqual(['', true]);
  },
);

test('what is taken for granted is said in the same breath as what was written', async () => {
  const { said, written } = await say('gave the whites 12 this morning');
  expect(JSON.parse(written)).toMatchObject({ kind: 'feed', group: 'whites', amount: '12 lb' });
  expect(said).toContain('Written: ');
  expect(said).toContain('Taken for granted: taking 12 as 12 lb.');
});

test('what no record took is said back, to people and to scripts', async () => {
  const { said, reply } = await say('bought 4 bags of grower for 96, delivery 12');
  const line = 'Not taken in: "delivery 12". Say it again by itself.';
  expect(said).toMatch(/^Written: 4 bags of feed \(grower\) bought, 200 lb, \$96\.00 in all\. /);
  expect(said).toContain(line);
  expect(reply.json.heard.leftOut).toEqual(['delivery 12']);
  expect(reply.record?.problems).toEqual([line]);
});

test('what was left is said beside the answer too, where the same breath asks', async () => {
  const { said, reply } = await say('bought 4 bags of grower for 96, delivery 12, do the reds need grit?');
  expect(said).toContain('Not taken in: "delivery 12". Say it again by itself.');
  expect(said).toMatch(/^Written: 4 bags of feed \(grower\) bought/);
  expect(reply.json.verdict).not.toBe('recorded');
  expect(reply.json.heard.leftOut).toEqual(['delivery 12']);
});

test('what was told beside a question, and neither written nor supposed, is said back with the answer', async () => {
  const { written, said, reply } = await say('I buy 4 bag grower, 78 euro all. for how many days is enough?');
  expect(written).toBe('');
  expect(said).toContain('Not taken in: "I buy 4 bag grower, 78 euro all". Say it again by itself.');
  expect(reply.json.heard.leftOut).toEqual(['I buy 4 bag grower, 78 euro all']);
});
