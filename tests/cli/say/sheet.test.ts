/** A sheet for a helper: each task with where, by when, how to see that it went right and when to ring; within a printed page. */
import { describe, expect, test } from 'vitest';
import { columnsOf } from '../../../cli/say/columns.ts';
import { plain } from '../../../cli/say/plain.ts';
import { saySheet } from '../../../cli/say/sheet.ts';
import { speechFor } from '../../../cli/talk/flock.ts';
import { openDemo } from '../../../cli/talk/open-flock.ts';
import { birdsIn } from '../../../cli/talk/sheet.ts';
import type { Answer } from '../../../engine/types.ts';
import { lexiconFor } from '../../helpers/learned.ts';
import { readRules } from '../../helpers/read-rules.ts';

const book = readRules();
const flock = openDemo({ book, lexicon: lexiconFor(book), today: '2026-05-14', asOf: null });
const ask = (question: string, groups: readonly string[] = []): Promise<Answer> =>
  flock.engine().ask({
    question,
    groups,
    moment: { on: '2026-05-14', asOf: null, lines: null },
    until: null,
    supposing: [],
  });
const sheetOf = (answer: Answer, isSupposed = false): readonly string[] =>
  plain(saySheet(speechFor(flock), answer, birdsIn(flock, answer), isSupposed), 72);

describe("the sheet of the day's round", () => {
  test('numbers what is still to do through the day, and names what is done at the end', async () => {
    const answer = await ask('today');
    const steps = answer.parts.flatMap((part) => part.steps);
    const lines = sheetOf(answer);
    const numbers = lines.flatMap((line) => /^(\d+)\. /.exec(line)?.[1] ?? []).map(Number);
    const open = steps.filter(({ done }) => !done).length;
    expect(open).toBeGreaterThan(3);
    expect(numbers).toEqual(Array.from({ length: open }, (_, n) => n + 1));
    expect(lines.filter((line) => line.startsWith('Done already:')).length).toBe(1);
  });

  test('says for every task how it looks when it went right and when to ring', async () => {
    const answer = await ask('today');
    const open = answer.parts.flatMap((part) => part.steps).filter(({ done }) => !done);
    const lines = sheetOf(answer);
    expect(lines.filter((line) => /^ +Right when: /.test(line)).length).toBe(open.length);
    expect(lines.filter((line) => /^ +Ring when: /.test(line)).length).toBe(open.length);
  });

  test('fits a printed page', async () => {
    expect(Math.max(...sheetOf(await ask('today')).map(columnsOf))).toBeLessThanOrEqual(72);
  });
});

test('tells of the birds that the answer speaks of, and of no others', async () => {
  const about = async (question: string, groups: readonly string[] = []) =>
    birdsIn(flock, await ask(question, groups)).map(({ name, place }) => `${name} ${place}`);
  expect(await about('go-out', ['reds'])).toEqual(['reds brooder']);
  expect(await about('today')).toEqual(['whites pen', 'reds brooder']);
});

test('stands alone for one answer: what it says, what to do, what to mind, when to ring, whom to ring', async () => {
  expect(sheetOf(await ask('water-amount', ['reds']))).toEqual([
    'For whoever helps with the birds, Thursday 14 May',
    'About how much water the birds need.',
    'Come with clean hands and clean boots, and straight from no other birds.',
    'The reds: 25 birds, 22 days old, in the brooder.',
    '',
    'The reds need about 0.87 gal of water on Thursday 14 May.',
    '',
    'In the morning',
    '1. Clean and fill the drinkers of the reds: 0.87 gal for the day.',
    '   Where: in the brooder.',
    '   Right when: the rim is clean enough to drink from yourself, every',
    '   drinker is full and level, and it runs.',
    '   Ring when: a drinker is dry or leaks and you cannot mend it, or the',
    '   birds do not drink at all.',
    '',
    'Watch for',
    '– Shut every door and edge behind you, and count before you leave.',
    '– Move slowly and low; birds that are chased pile up in a corner and',
    'smother.',
    '– A dead bird goes into a closed bag, cool and apart, for the keeper to',
    'see. Wash your hands.',
    '',
    'Ring at once when',
    '– a bird is dead, cannot stand, gasps, or has blood on it',
    '– the number of birds is not what this sheet says',
    '– water, heat or the fence has failed and you cannot mend it at once',
    '– there are feathers, tracks or a hole that was not there before',
    '– anything here cannot be done, or is not clear',
    '',
    'Keeper: ____________________ Vet: ____________________',
  ]);
});

test('says of a what-if that it is one', async () => {
  const answer = await ask('water-amount', ['reds']);
  expect(sheetOf(answer, true)[2]).toBe('Careful: This was asked as a what-if and is not how things are.');
  expect(sheetOf(answer).some((line) => line.includes('what-if'))).toBe(false);
});
