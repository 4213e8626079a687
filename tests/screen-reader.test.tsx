/** The same turns line by line: each line appears once, in sentences for a screen reader, in rows for a terminal that only writes. */
import { expect, onTestFinished, test } from 'vitest';
import { openTerminal } from './helpers/fake-terminal.ts';
import { startIn } from './helpers/start-in.ts';

const start = async (doors: Parameters<typeof startIn>[1] = {}) => {
  const started = await startIn(openTerminal(80, 40), { way: 'heard', ...doors });
  onTestFinished(async () => {
    started.terminal.hangUp();
    await started.ended;
  });
  return started;
};

/** Anything that moves the cursor, erases or tints. */
const escapes = /\x1b/;

test('a turn is heard as sentences, without layout, drawing or an escape', async () => {
  const { terminal } = await start();
  terminal.send('everything\n');
  await terminal.shows('2. the water you carry');
  expect(terminal.written().split('\n')).toEqual([
    'say: Not tonight: keep the reds in the brooder.',
    '1. the low tonight is 38 °F and the least for their age is 50 °F, failed.',
    '2. they are feathered on the back, held. common practice, no source.',
    '3. rain is under a tenth of an inch, not known.',
    'Figure: least night low at four weeks, 50 °F, common practice, no source.',
    'Not known: rain tonight. To settle it, type: rain tonight 0.2 inches.',
    'Careful: a lamp near straw can start a fire.',
    'It would turn to yes on 2 December.',
    'Today.',
    'Morning: move the pen one length, done.',
    'Evening: fill the water, to do.',
    'Weight rises from week to week.',
    'taking tonight as 25 November.',
    '1. the water they drink.',
    '2. the water you carry.',
    'say: ',
  ]);
  expect(terminal.written()).not.toMatch(escapes);
});

test('a terminal that only writes gets rows of its width, and ASCII where it has nothing else', async () => {
  const { terminal } = await start({ way: 'rows', isAscii: true });
  terminal.send('everything\n');
  const seen = await terminal.shows('2. the water you carry');
  expect(seen.rows.slice(0, 5)).toEqual([
    'say: Not tonight: keep the reds in the brooder.',
    '1. the low tonight is 38 F and the least for their age is 50 F - failed',
    '2. they are feathered on the back - held',
    '   common practice, no source',
    '3. rain is under a tenth of an inch - not known',
  ]);
  expect(terminal.written()).toMatch(/^[\0-\x7f]*$/);
  expect(terminal.written()).not.toMatch(escapes);
});

test('what takes longer than a second is said to be worked on, in a line that stays', async () => {
  let release = (): void => undefined;
  const { terminal } = await start({
    turn: () =>
      new Promise((resolve) => {
        release = () => resolve({ tokens: [{ t: 'claim', text: 'planned' }] });
      }),
  });
  terminal.send('plan\n');
  await terminal.shows('Still working');
  release();
  await terminal.shows('planned');
  expect(terminal.written()).toBe('say: Still working on: plan.\nplanned.\nsay: ');
});

test('the keys are the terminal’s own', async () => {
  const { terminal } = await start();
  expect(terminal.isRaw()).toBe(false);
});

test('an empty line says something only where one is waited for; lines sent at once are taken in order', async () => {
  let waits = false;
  const { terminal, heard } = await start({ takesEmpty: () => waits });
  terminal.send('\nfirst\nsecond\n');
  await terminal.shows('heard second');
  waits = true;
  terminal.send('\nthird\n');
  await terminal.shows('heard third');
  expect(heard).toEqual(['first', 'second', '', 'third']);
});

test.each([
  ['words that leave', 'bye\n', 'say: heard bye.\n'],
  ['the end of the input', '', 'say: \n'],
])('%s end it on a row of its own', async (_name, sent, written) => {
  const { terminal, ended } = await startIn(openTerminal(), { way: 'heard' });
  terminal.send(sent);
  terminal.hangUp();
  await ended;
  expect(terminal.written()).toBe(written);
});

test('a turn that throws ends it with its error', async () => {
  const { terminal, ended } = await startIn(openTerminal(), {
    way: 'heard',
    turn: () => Promise.reject(new Error('a fault of ours')),
  });
  const failed = expect(ended).rejects.toThrow('a fault of ours');
  terminal.send('anything\n');
  await failed;
});
