/** The first run as it is seen on a screen of 60 columns: asked, slipped, gone back over, left, taken up again, answered. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, expect, onTestFinished, test, vi } from 'vitest';
import { openOwn } from '../cli/talk/open-flock.ts';
import { beginTalk } from '../cli/talk/talk.ts';
import { waysToGoOn } from '../cli/talk/ways-to-go-on.ts';
import { openTerminal } from './helpers/fake-terminal.ts';
import { shipped } from './helpers/flock-of.ts';
import { lexiconFor } from './helpers/learned.ts';
import { startIn } from './helpers/start-in.ts';
import { key, typeKeys } from './helpers/type-keys.ts';

beforeAll(() => {
  vi.stubEnv('CI', 'true');
});

/** A chat over this file, on a screen of 60 columns and 24 rows. */
const open = async (path: string) => {
  const today = '2026-05-14';
  const now = `${today}T09:00:00+00:00`;
  const flock = openOwn({
    book: shipped,
    lexicon: lexiconFor(shipped),
    path,
    today,
    asOf: null,
    now,
    by: null,
  });
  const talk = beginTalk(flock, async () => flock, null);
  const started = await startIn(openTerminal(60, 24), {
    opening: talk.asks ?? [],
    takesEmpty: talk.isAsking,
    ways: (before) => waysToGoOn(talk.flock(), before),
    turn: async (words) => ({ tokens: await talk.take(words) }),
  });
  onTestFinished(async () => {
    started.terminal.hangUp();
    await started.ended;
  });
  return started.terminal;
};

test('questions stand within 60 columns, and what is left is taken up where it stood', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'penside-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  const path = join(folder, 'flock.jsonl');
  const first = await open(path);
  typeKeys(first, key.enter);
  await first.answers('What birds have you got');
  typeKeys(first, 'none', key.enter);
  await first.answers('How many chicks');
  typeKeys(first, '30', key.enter);
  await first.answers('On which day');
  typeKeys(first, 'bananas', key.enter);
  await first.answers('is no answer');
  typeKeys(first, 'in 3 weeks', key.enter);
  const seen = await first.answers('How large is the brooder?');
  expect(seen.rows).toEqual([
    'A few questions first. An empty line skips one, "back" goes',
    'back, "stop" leaves off.',
    'Do you measure in pounds, feet and °F (say "us") or in',
    'kilograms, metres and °C (say "metric")?',
    'Such as "us".',
    '',
    'said:',
    'US units are taken.',
    'What birds have you got, fast growing whites or slow growing',
    'reds? Say "none" while you are only thinking of it.',
    'Such as "whites".',
    '',
    'said: none',
    'No birds are taken to be here yet; planning is answered',
    'without them.',
    'How many chicks are on order?',
    'Such as "50".',
    '',
    'said: 30',
    'Written: Chicks to come: 30.',
    'On which day do they come?',
    'Such as "in 3 weeks".',
    '',
    'said: bananas',
    '"bananas" is no answer to that.',
    'Still to say: On which day do they come?',
    'Such as "in 3 weeks". An empty line skips it.',
    '',
    'said: in 3 weeks',
    'Written: Day the chicks come: Thursday 4 June.',
    'Taken for granted: taking in 3 weeks as Thursday 4 June.',
    'How large is the brooder?',
    'Such as "4 by 6 ft".',
    '',
    'say:',
  ]);
  typeKeys(first, key.ctrlD);

  const again = await open(path);
  const resumed = again.see();
  expect(resumed.rows.slice(2, 4)).toEqual(['How large is the brooder?', 'Such as "4 by 6 ft".']);
  typeKeys(again, 'back', key.enter);
  const back = await again.answers('Taken back');
  expect(back.rows.slice(-5)).toEqual([
    'Taken back: Day the chicks come: Thursday 4 June.',
    'On which day do they come?',
    'Such as "in 3 weeks".',
    '',
    'say:',
  ]);
});
