/** The first run: asked step by step, skipped, gone back over, interrupted, left and taken up again. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { answerOptions } from '../../../cli/commands/new.ts';
import { type Asked, begin, isBeginning, takeLine } from '../../../cli/talk/first-run.ts';
import type { Flock } from '../../../cli/talk/flock.ts';
import { openDemo, openOwn } from '../../../cli/talk/open-flock.ts';
import { nothingYet } from '../../../cli/talk/reply.ts';
import { turn } from '../../../cli/talk/turn.ts';
import { shipped } from '../../helpers/flock-of.ts';
import { lexiconFor } from '../../helpers/learned.ts';

const lexicon = lexiconFor(shipped);
const today = '2026-05-14';
const steps = shipped.firstRun?.steps ?? [];

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'penside-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const path = (): string => join(folder, 'flock.jsonl');

const open = (): Flock =>
  openOwn({
    book: shipped,
    lexicon,
    path: path(),
    today,
    asOf: null,
    now: `${today}T09:00:00+00:00`,
    by: null,
  });

const texts = ({ tokens }: Asked): string[] =>
  tokens.flatMap((token) => ('text' in token ? [token.text] : []));

/** The interview after these lines, and what each of them was answered. */
const interview = async (flock: Flock, ...lines: readonly string[]) => {
  let asked: Asked = begin(flock, nothingYet);
  const said: string[][] = [texts(asked)];
  for (const words of lines) {
    if (asked.at === null) throw new Error(`the interview was over before "${words}"`);
    asked = await takeLine(flock, words, asked.at, asked.memory, { on: today, group: null, write: true });
    said.push(texts(asked));
  }
  return { asked, said };
};

/** What counts in the ledger, without the time of writing. */
const standing = (flock: Flock) =>
  flock
    .engine()
    .standing()
    .filter(({ kind }) => kind !== 'undo')
    .map(({ raw }) => {
      const { written: _written, on: _on, ...fields } = JSON.parse(raw);
      return fields;
    });

const how = (example: string): string => `Such as "${example}".`;

test('every step is answered by its own example, in either system, and the entries are ordinary ones', async () => {
  const flock = open();
  const { asked, said } = await interview(
    flock,
    'metric',
    'whites',
    '50',
    'monday',
    '1.2 by 1.8 m',
    '3 by 4 m',
    '2000 square metres',
    '400 litres',
    '4',
    '44.1 -73.2',
  );
  expect(asked.at).toBeNull();
  expect(standing(flock)).toEqual([
    { kind: 'setting', what: 'units-system', value: 'metric' },
    { kind: 'arrive', group: 'whites', bird: 'fast', count: 50, hatched: '2026-05-11' },
    { kind: 'setting', what: 'brooder', value: '1.2 m x 1.8 m' },
    { kind: 'setting', what: 'pen', value: '3 m x 4 m' },
    { kind: 'setting', what: 'ground', value: '2000 m2' },
    { kind: 'setting', what: 'freezer', value: '400 l' },
    { kind: 'setting', what: 'eaters', value: '4' },
    { kind: 'setting', what: 'place-at', value: '44.1 -73.2' },
  ]);
  expect(said[1]).toEqual([
    'Written: Units: metric.',
    'What birds have you got, fast growing whites or slow growing reds? Say "none" while you are only thinking of it.',
    how('whites'),
  ]);
  expect(said[4]?.slice(-2)).toEqual(['How large is the brooder?', how('1.2 by 1.8 m')]);
  expect(said.at(-1)).toEqual([
    'Written: Place by degrees north and east: 44.1 -73.2.',
    'That is all for now. Ask "what needs doing today" or "when can they go outside".',
  ]);
});

test('the examples of a keeper without birds are answers too', async () => {
  const flock = open();
  const lines = steps.map(({ id, example }) => (id === 'birds' ? 'none' : example));
  const { asked, said } = await interview(flock, ...lines);
  expect(asked.at).toBeNull();
  expect(standing(flock).map(({ what, value }) => [what, value])).toEqual([
    ['units-system', 'us'],
    ['chicks-coming', '50'],
    ['chicks-on', '2026-06-04'],
    ['brooder', '4 ft x 6 ft'],
    ['pen', '10 ft x 12 ft'],
    ['ground', '2 ac'],
    ['freezer', '14 ft3'],
    ['eaters', '4'],
    ['place-at', '44.1 -73.2'],
  ]);
  expect(said.at(-1)?.at(-1)).toBe(
    'That is all for now. Ask "how many birds should I order" or "when should we start our chicks".',
  );
});

test('everything can be skipped: nothing is written, and what is taken instead is said', async () => {
  const flock = open();
  const { asked, said } = await interview(
    flock,
    '',
    'skip',
    'none',
    '',
    'next',
    'no',
    'I don’t know',
    '',
    '',
  );
  expect(asked.at).toBeNull();
  expect(flock.engine().lines).toEqual([]);
  // Nobody asks for the day of chicks that nobody ordered.
  expect(said.slice(1).map(([first]) => first)).toEqual(
    steps.filter(({ id }) => id !== 'coming-on').map(({ skipped }) => skipped),
  );
});

test('a question in the middle is answered, and the same thing is asked again', async () => {
  const flock = open();
  const { asked, said } = await interview(flock, 'us', 'whites', 'how many birds should I order', '50');
  expect(said[3]?.at(-1)).toBe('Still to say: How many came, the dead ones counted in?');
  expect(said[3]?.length).toBeGreaterThan(2);
  expect(said[4]?.[0]).toBe('On which day did they hatch?');
  expect(asked.at?.id).toBe('birds');
});

test('back takes the last answer back, begins a half-told record anew, and stops at the first', async () => {
  const flock = open();
  const first = await interview(flock, 'back');
  expect(first.said[1]?.[0]).toBe('This is the first.');
  const { said, asked } = await interview(
    flock,
    'us',
    'whites',
    'back',
    'none',
    '',
    '4 by 6 ft',
    'back',
    '5 x 6 ft',
  );
  expect(said[3]?.[0]).toBe(steps[1]?.ask);
  expect(said[7]).toEqual([
    'Taken back: Brooder size: 4 ft x 6 ft.',
    'How large is the brooder?',
    how('4 by 6 ft'),
  ]);
  expect(standing(flock).map(({ value }) => value)).toEqual(['us', '5 ft x 6 ft']);
  expect(asked.at?.id).toBe('pen');
});

test.each([
  ['a word of nothing', 'bananas'],
  ['a size', '4 by 8'],
  ['what several things could be', 'big'],
])('%s is no answer: it is named, and an answer is shown', async (_what, words) => {
  const { said, asked } = await interview(open(), 'us', 'none', '50', words);
  expect(said.at(-1)).toEqual([
    `"${words}" is no answer to that.`,
    'Still to say: On which day do they come?',
    `${how('in 3 weeks')} An empty line skips it.`,
  ]);
  expect(asked.at?.id).toBe('coming-on');
});

test.each([
  ['units', [], 'weve got 4 people', ['eaters', '4']],
  ['eaters', ['us', 'none', '', '', '', '', ''], 'bought 4 bags of starter at 19.50', ['feed', undefined]],
  ['brooder', ['us', 'none', ''], 'freezer is 14 cu ft', ['freezer', '14 ft3']],
] as const)(
  'a record of something else, told while %s is asked for, is that record, and the question stands',
  async (id, before, words, written) => {
    const flock = open();
    const { asked, said } = await interview(flock, ...before, words);
    expect(asked.at?.id).toBe(id);
    expect(said.at(-1)?.at(-1)).toMatch(/^Still to say: /);
    expect([standing(flock).at(-1)?.what, standing(flock).at(-1)?.value]).toEqual(written);
  },
);

test('what was told beside another question is not asked for again', async () => {
  const { asked } = await interview(
    open(),
    'us',
    'none',
    '',
    'freezer is 14 cu ft',
    '4 by 6 ft',
    '',
    '2 acres',
  );
  expect(asked.at?.id).toBe('eaters');
});

test.each([
  ['units', [], '4'],
  ['where', ['us', 'none', '', '', '', '', '', ''], 'Vermont'],
] as const)('%s takes no words that say nothing of it', async (id, before, words) => {
  const flock = open();
  const { asked, said } = await interview(flock, ...before, words);
  expect(asked.at?.id).toBe(id);
  expect(said.at(-1)).toContain(`"${words}" is no answer to that.`);
  expect(standing(flock)).toHaveLength(before.length === 0 ? 0 : 1);
});

test('a place by degrees is one, whatever else two numbers may be', async () => {
  const flock = open();
  await interview(
    flock,
    'metric',
    '30 whites hatched yesterday came today none dead',
    '',
    '',
    '',
    '',
    '',
    '48.1 11.5',
  );
  expect(standing(flock).at(-1)).toEqual({ kind: 'setting', what: 'place-at', value: '48.1 11.5' });
});

test('a question that may be meant in more than one way is asked back about, and its number is taken', async () => {
  const { said } = await interview(open(), 'us', 'none', 'what do i need to by', '1');
  expect(said.at(-2)?.[0]).toBe('Which do you mean?');
  expect(said.at(-1)?.[0]).not.toMatch(/is no answer/);
  expect(said.at(-1)?.at(-1)).toMatch(/^Still to say: How many chicks/);
});

test('a bare number is meant in the unit of the answer that was shown, and that is said', async () => {
  const flock = open();
  const { said } = await interview(flock, 'us', 'none', '', '', '', '3', '7');
  expect(said.at(-2)?.slice(0, 2)).toEqual([
    'Written: Ground for the pens: 3 acres.',
    '"3" is taken as 3 acres.',
  ]);
  expect(said.at(-1)?.slice(0, 2)).toEqual(['Written: Freezer size: 7 ft³.', '"7" is taken as 7 cu ft.']);
});

test('it is three minutes of slow typing at most, and the first answer comes out of it', async () => {
  const flock = open();
  const others = steps.filter(({ id }) => !['units', 'birds', 'coming', 'coming-on'].includes(id));
  const answers = ['us', 'whites', '50', 'monday', ...others.map(({ example }) => example)];
  const { asked } = await interview(flock, ...answers);
  expect(asked.at).toBeNull();
  const ask = 'what needs doing today';
  const { tokens } = await turn(flock, ask, asked.memory, { on: today, group: null, write: true });
  expect(tokens.filter(({ t }) => t === 'step').length).toBeGreaterThan(3);
  // A hundred keys a minute is the pace of two fingers.
  const keys = [...answers, ask].reduce((sum, line) => sum + line.length + 1, 0);
  expect(keys).toBeLessThan(300);
});

test('left off, it goes on where the ledger says it stopped', async () => {
  const { said, asked } = await interview(open(), 'us', 'none', '', '4 by 6 ft', 'stop');
  expect(asked.at).toBeNull();
  expect(said.at(-1)).toEqual(['Left here; what was told is written. "start" takes it up again.']);
  const again = open();
  expect(isBeginning(again)).toBe(true);
  expect(begin(again, nothingYet).at?.id).toBe('pen');
});

test('who has begun to keep records is not interviewed again, nor is the demo', async () => {
  const flock = open();
  await interview(flock, 'us');
  expect(isBeginning(flock)).toBe(true);
  await flock.record([{ kind: 'note', on: today, words: 'a fox by the fence' }]);
  expect(isBeginning(flock)).toBe(false);
  expect(isBeginning(openDemo({ book: shipped, lexicon, today, asOf: null }))).toBe(false);
});

test('each step is one of the settings or records, names only steps before it, and has an option in the shell', () => {
  expect(answerOptions.map(({ name }) => name)).toEqual(steps.map(({ id }) => id));
  steps.forEach((step, place) => {
    const before = steps.slice(0, place).map(({ id }) => id);
    for (const other of [step.unless, step.after]) if (other !== undefined) expect(before).toContain(other);
    if ('setting' in step) expect(Object.keys(shipped.words.settings)).toContain(step.setting);
    else expect(Object.keys(shipped.records[step.record]?.asks ?? {})).toContain(step.field);
  });
  expect(() => readFileSync(path())).toThrow('ENOENT');
});
