/** Starts the keeper's own flock file: empty, as a copy of the demo, or with answers to the questions of the first run. */

import { demoLedger } from '../demo/demo.ts';
import { jsonLine } from '../say/json-line.ts';
import { plain } from '../say/plain.ts';
import { createFile, isThere, type Surroundings } from '../surroundings.ts';
import { answerStep } from '../talk/first-run.ts';
import { exits, nothingYet } from '../talk/reply.ts';
import { type Command, type Given, type Option, type Outcome, textOf, wrongUse } from './command.ts';
import { openFlock } from './open.ts';
import * as options from './options.ts';
import { daysOf } from './options.ts';

/** One a question of `rules/first-run.yaml`, under its id; a test holds the two together. */
export const answerOptions: readonly Option[] = [
  { name: 'units', takes: 'WORDS', says: 'us or metric' },
  { name: 'birds', takes: 'WORDS', says: 'birds that you have, as "50 whites hatched 3 may"' },
  { name: 'coming', takes: 'WORDS', says: 'how many chicks are on order' },
  { name: 'coming-on', takes: 'WORDS', says: 'the day they come' },
  { name: 'brooder', takes: 'WORDS', says: 'its size, as "4 by 6 ft"' },
  { name: 'pen', takes: 'WORDS', says: 'the size of one pen' },
  { name: 'ground', takes: 'WORDS', says: 'how much ground there is for the pens' },
  { name: 'freezer', takes: 'WORDS', says: 'how large it is' },
  { name: 'eaters', takes: 'WORDS', says: 'how many people eat the birds' },
  { name: 'where', takes: 'WORDS', says: 'degrees north and east, as "44.1 -73.2"' },
];

const alreadyThere = (path: string): Outcome => ({
  out: [],
  err: [`${path} is there already; nothing was touched. To start another: penside new --file PATH`],
  exit: exits.problems,
});

/** The file that was made, and what there is to say of it. */
const madeAs = (given: Given, file: string, says: readonly string[]): Outcome => ({
  out: given.options.json === true ? [jsonLine({ file, says })] : [`Your flock file is ${file}`, ...says],
  err: [],
  exit: exits.answered,
});

const onlyRead: Outcome = {
  out: [],
  err: [
    'No flock file is made, as PENSIDE_READ_ONLY is set here. Take that setting away, or name the file that there is: penside --file PATH',
  ],
  exit: exits.problems,
};

/** Takes the answers in order, each read back; the first that is none ends it. */
const takeAnswers = async (given: Given, around: Surroundings, write: boolean): Promise<Outcome> => {
  const opened = await openFlock(given, around, false);
  if ('exit' in opened) return opened;
  const { flock } = opened;
  const out: string[] = [];
  for (const step of flock.book.firstRun?.steps ?? []) {
    const words = textOf(given, step.id);
    if (words === undefined) continue;
    const manner = { on: flock.today, group: null, write };
    const { record, tokens } = await answerStep(flock, step, words, nothingYet, manner);
    const says = plain(tokens.slice(0, 1), Number.POSITIVE_INFINITY);
    const isTaken = record !== null && record.asks === null && record.problems.length === 0;
    if (!isTaken)
      return wrongUse(`--${step.id} ${words}: ${record?.asks ?? step.ask} Such as "${step.example}".`);
    out.push(...says);
  }
  return { out, err: [], exit: 0 };
};

const startWith = async (given: Given, around: Surroundings, path: string): Promise<Outcome> => {
  if (given.options.demo === true) return wrongUse('--demo fills the file by itself: leave out the answers');
  if (isThere(path)) return alreadyThere(path);
  // All are tried before any is written, so that a slip leaves nothing half made.
  const tried = await takeAnswers(given, around, false);
  if (tried.exit !== 0) return tried;
  const taken = await takeAnswers(given, around, true);
  return taken.exit === 0 ? madeAs(given, path, taken.out) : taken;
};

export const start: Command = {
  name: 'new',
  says: 'start your own flock file: empty, with --demo, or with what the first questions of the chat ask',
  usage: 'penside new [options]',
  options: [
    options.json,
    { name: 'demo', takes: null, says: 'fill it with the demo flock' },
    ...answerOptions,
    options.on,
    options.file,
  ],
  run: async (given, around) => {
    if (around.isReadOnly) return onlyRead;
    const days = daysOf(given, around);
    if ('exit' in days) return days;
    const path = textOf(given, 'file') ?? around.flockFile;
    if (answerOptions.some(({ name }) => textOf(given, name) !== undefined))
      return startWith(given, around, path);
    const made = createFile(path, given.options.demo === true ? demoLedger(days.on) : '');
    if (made === 'EEXIST') return alreadyThere(path);
    if (made !== null)
      return {
        out: [],
        err: [
          `${path} could not be made (${made}). Name a place that may be written to: penside new --file PATH`,
        ],
        exit: exits.problems,
      };
    return madeAs(given, path, [
      'Tell it what came, as: penside tell "50 whites hatched tuesday came this morning, 1 dead"',
    ]);
  },
};
