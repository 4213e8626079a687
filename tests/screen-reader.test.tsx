/** The same turns heard: in screen-reader mode the words come as sentences and lists, without layout or drawing. */
import { beforeAll, expect, onTestFinished, test, vi } from 'vitest';
import { openTerminal } from './helpers/fake-terminal.ts';
import { startIn } from './helpers/start-in.ts';
import { key, typeKeys } from './helpers/type-keys.ts';

beforeAll(() => {
  vi.stubEnv('CI', 'true');
});

const start = async (columns = 120) => {
  const started = await startIn(openTerminal(columns, 40), { screenReader: true });
  onTestFinished(async () => {
    started.terminal.hangUp();
    await started.ended;
  });
  return started;
};

test('a turn is heard as sentences, its reasons as a list', async () => {
  const { terminal } = await start();
  typeKeys(terminal, 'everything', key.enter);
  const seen = await terminal.answers('2. the water you carry');
  expect(seen.rows).toEqual([
    'said: everything',
    'Not tonight: keep the reds in the brooder.',
    'list: listitem: 1. the low tonight is 38 °F and the least for their age is 50 °F, failed.',
    'listitem: 2. they are feathered on the back, held. common practice, no source.',
    'listitem: 3. rain is under a tenth of an inch, not known.',
    'Figure: least night low at four weeks, 50 °F, common practice, no source.',
    'Not known: rain tonight. To settle it, type: rain tonight 0.2 in.',
    'Careful: a lamp near straw can start a fire.',
    'It would turn to yes on 2 December.',
    'Today.',
    'list: listitem: Morning: move the pen one length, done.',
    'listitem: Evening: fill the water, to do.',
    'Weight rises from week to week.',
    'taking tonight as 25 November.',
    'list: listitem: 1. the water they drink.',
    'listitem: 2. the water you carry.',
    'say:',
  ]);
});

test('the cursor stands where the next letter goes', async () => {
  const { terminal, heard } = await start();
  typeKeys(terminal, 'hwo', key.left, key.backspace);
  await terminal.until(({ cursor }) => cursor.row === 'say: ho' && cursor.column === 'say: h'.length);
  typeKeys(terminal, key.end, 'w', key.enter);
  await terminal.answers('heard how');
  expect(heard).toEqual(['how']);
});

test('leaving ends on a row of its own', async () => {
  const { terminal, ended } = await start();
  typeKeys(terminal, 'bye', key.enter);
  await ended;
  const seen = await terminal.until(({ cursor }) => cursor.row === '');
  expect(seen.rows).toEqual(['said: bye', 'heard bye.']);
});
