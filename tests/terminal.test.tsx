/** The chat as it is seen and typed into, on a true terminal screen. */
import { beforeAll, describe, expect, onTestFinished, test, vi } from 'vitest';
import type { Turn } from '../cli/chat/conversation.ts';
import type { ChatDoors } from '../cli/chat/start.tsx';
import type { Token } from '../cli/say/tokens.ts';
import { type FakeTerminal, openTerminal } from './helpers/fake-terminal.ts';
import { startIn } from './helpers/start-in.ts';
import { key, pasted, typeKeys } from './helpers/type-keys.ts';

beforeAll(() => {
  // Both are read once, when Ink is loaded: a CI must not hide the prompt, and colour must be possible to be seen refused.
  vi.stubEnv('CI', 'true');
  vi.stubEnv('FORCE_COLOR', '2');
});

/** Under the prompt until the first key. */
const keys = 'Tab: go on. Ctrl-R: what you sent before. Ctrl-D: leave.';

/** A chat that is ended with its test, however the test ends. */
const start = async (terminal?: FakeTerminal, doors?: Partial<ChatDoors>) => {
  const started = await startIn(terminal, doors);
  onTestFinished(async () => {
    started.terminal.hangUp();
    await started.ended.catch(() => undefined);
  });
  return started;
};

test('a turn shows the line, then the answer, then the prompt again', async () => {
  const { terminal, heard } = await start();
  typeKeys(terminal, 'how much feed', key.enter);
  const seen = await terminal.answers('heard how much feed');
  expect(seen.rows).toEqual(['said: how much feed', 'heard how much feed', '', 'say:']);
  expect(heard).toEqual(['how much feed']);
});

test('the opening stands above the first prompt', async () => {
  const { terminal } = await start(undefined, { opening: [{ t: 'claim', text: 'Good morning.' }] });
  const seen = await terminal.answers('Good morning.');
  expect(seen.rows).toEqual(['Good morning.', '', 'say:', keys]);
});

test('a CI variable neither hides the prompt nor is lost', async () => {
  const { terminal } = await start();
  expect(terminal.see().rows).toEqual(['say:', keys]);
  expect(process.env.CI).toBe('true');
});

test('every kind of token is drawn in words, wrapped to a narrow window', async () => {
  const { terminal } = await start(openTerminal(60, 40));
  typeKeys(terminal, 'everything', key.enter);
  const seen = await terminal.answers('2. the water you carry');
  expect(seen.rows).toEqual([
    'said: everything',
    'Not tonight: keep the reds in the brooder.',
    '1. the low tonight is 38 °F and the least for their age is',
    '   50 °F – failed',
    '2. they are feathered on the back – held',
    '   common practice, no source',
    '3. rain is under a tenth of an inch – not known',
    'Figure: least night low at four weeks, 50 °F, common',
    '   practice, no source',
    'Not known: rain tonight',
    '   To settle it, type: rain tonight 0.2 in',
    'Careful: a lamp near straw can start a fire',
    'It would turn to yes on 2 December.',
    '',
    'Today',
    'Morning: move the pen one length – done',
    'Evening: fill the water – to do',
    'lb  _/',
    '   /',
    'Weight rises from week to week.',
    'taking tonight as 25 November',
    '1. the water they drink',
    '2. the water you carry',
    '',
    'say:',
  ]);
});

test('an answer taller than the window that cannot be folded loses no row and is never wiped', async () => {
  const lines = Array.from({ length: 40 }, (_, place) => `Careful: row ${place + 1}`);
  const { terminal } = await start(openTerminal(60, 8), {
    turn: async () => ({ tokens: lines.map((text) => ({ t: 'caution', text: text.slice(9) })) }),
  });
  typeKeys(terminal, 'long', key.enter);
  const seen = await terminal.answers('row 40');
  expect(seen.rows).toEqual(['said: long', ...lines, '', 'say:']);
  expect(terminal.written()).not.toContain('\x1b[2J');
});

test('a line is edited in the middle, under the real cursor', async () => {
  const { terminal, heard } = await start();
  typeKeys(terminal, 'how feed', key.altB, 'much ', key.ctrlLeft, key.ctrlLeft, key.delete, 'H');
  const seen = await terminal.shows('say: How much feed');
  expect(seen.cursor).toEqual({ row: 'say: How much feed', column: 'say: H'.length });
  typeKeys(terminal, key.end, ' now', key.ctrlW, 'today', key.enter);
  await terminal.answers('heard How much feed today');
  expect(heard).toEqual(['How much feed today']);
});

test('wide characters and joined emoji are one step each, and the cursor keeps their columns', async () => {
  const { terminal } = await start();
  typeKeys(terminal, pasted('水👩‍🌾x'), key.left, key.backspace);
  const seen = await terminal.shows('say: 水x');
  expect(seen.cursor.column).toBe('say: '.length + 2);
});

test('older lines are recalled and the unsent draft comes back', async () => {
  const { terminal, heard } = await start(undefined, { history: ['yesterday'] });
  typeKeys(terminal, 'first', key.enter);
  await terminal.answers('heard first');
  typeKeys(terminal, 'unsent', key.up);
  await terminal.until(({ cursor }) => cursor.row === 'say: first');
  typeKeys(terminal, key.up, key.up);
  await terminal.until(({ cursor }) => cursor.row === 'say: yesterday');
  typeKeys(terminal, key.down, key.down);
  await terminal.until(({ cursor }) => cursor.row === 'say: unsent');
  typeKeys(terminal, key.enter);
  await terminal.answers('heard unsent');
  expect(heard).toEqual(['first', 'unsent']);
});

test('a pasted text becomes one line and waits to be sent', async () => {
  const { terminal, heard } = await start();
  typeKeys(terminal, pasted('lost 2\r\nfound 1\n\x1b[31mred\r'));
  await terminal.until(({ cursor }) => cursor.row.startsWith('say: lost 2 found 1 red'));
  expect(heard).toEqual([]);
  typeKeys(terminal, key.enter);
  await terminal.answers('heard lost 2 found 1 red');
  expect(heard).toEqual(['lost 2 found 1 red']);
});

test('words and Enter in one chunk are sent', async () => {
  const { terminal, heard } = await start();
  terminal.send('foo\r');
  await terminal.answers('heard foo');
  terminal.send('two\nlines\r\n');
  await terminal.answers('heard two lines');
  expect(heard).toEqual(['foo', 'two lines']);
});

test('a letter that arrives in two halves is one letter', async () => {
  const { terminal, heard } = await start();
  const bytes = Buffer.from('50 °F');
  terminal.send(bytes.subarray(0, 4));
  terminal.send(bytes.subarray(4));
  typeKeys(terminal, key.enter);
  await terminal.answers('heard 50 °F');
  expect(heard).toEqual(['50 °F']);
});

test('keys are taken before the first prompt is drawn, so that none is echoed beside it', async () => {
  const terminal = openTerminal();
  const takeKeys = vi.spyOn(terminal.stdin, 'setRawMode');
  const draw = vi.spyOn(terminal.stdout, 'write');
  await start(terminal);
  const [taken = Number.NaN] = takeKeys.mock.invocationCallOrder;
  expect(taken).toBeLessThan(draw.mock.invocationCallOrder[0] ?? Number.NaN);
});

test('reports from the terminal and keys without meaning leave no trace', async () => {
  const { terminal, heard } = await start();
  const reports = [
    '\x1b[<0;10;10M',
    '\x1b[M !!',
    '\x1b[I',
    '\x1b[O',
    '\x1b[1;5R',
    '\x1b]11;rgb:00/00/00\x07',
  ];
  const keys = ['\x1b', '\x1b[1;5P', '\x1bOP', '\x1b[15~', '\x00', '\x1b[6~'];
  for (const chunk of [...reports, ...keys]) terminal.send(chunk);
  typeKeys(terminal, 'ok', key.enter);
  await terminal.answers('heard ok');
  expect(heard).toEqual(['ok']);
});

test('a long line shows the part around the cursor on one row', async () => {
  const { terminal } = await start(openTerminal(60, 10));
  typeKeys(terminal, pasted(`start ${'and so on '.repeat(12)}end`));
  const atEnd = await terminal.shows('so on end');
  expect(atEnd.rows).toHaveLength(1);
  expect(atEnd.cursor.row).toMatch(/^say: ….{53}$/u);
  expect(atEnd.cursor.column).toBe(59);
  typeKeys(terminal, key.home);
  const atStart = await terminal.shows('say: start and so');
  expect(atStart.rows).toHaveLength(1);
  expect(atStart.cursor.row).toMatch(/^say: start .*…$/u);
  expect(atStart.cursor.column).toBe('say: '.length);
});

test.each([
  ['at its end', [], 'say: …'],
  ['in its middle', Array(6).fill(key.altB), 'say: …'],
  ['at its start', [key.home], 'say: one'],
])(
  'after the window is made narrower, with the cursor %s, the line stands once',
  async (_where, keys, shown) => {
    const { terminal } = await start(openTerminal(80, 10));
    typeKeys(terminal, 'hello', key.enter);
    await terminal.answers('heard hello');
    typeKeys(terminal, pasted('one two three four five six seven eight nine ten eleven twelve'), ...keys);
    await terminal.shows('eleven twelve');
    terminal.resize(40, 10);
    const seen = await terminal.until(
      ({ cursor }) => cursor.row.startsWith(shown) && cursor.row.length <= 40,
    );
    expect(seen.rows.slice(0, -1)).toEqual(['said: hello', 'heard hello', '']);
    typeKeys(terminal, key.enter);
    await terminal.answers('heard one two three');
  },
);

test.each([
  [22, 12],
  [6, 5],
])(
  'in a window that is made lower, from %i rows to %i, no row of an answer is lost, whatever is typed',
  async (from, to) => {
    const tokens = Array.from({ length: 30 }, (_, at): Token => ({ t: 'caution', text: `row ${at + 1}` }));
    const { terminal } = await start(openTerminal(60, from), { turn: async () => ({ tokens }) });
    typeKeys(terminal, 'long', key.enter);
    const { rows } = await terminal.answers('row 30');
    for (let height = from - 1; height >= to; height -= 1) {
      terminal.resize(60, height);
      typeKeys(terminal, 'a');
      await terminal.until(({ cursor }) => cursor.row === `say: ${'a'.repeat(from - height)}`);
    }
    expect(terminal.see().rows.slice(0, -1)).toEqual(rows.slice(0, -1));
  },
);

test('a low window that is made narrower is not wiped', async () => {
  const { terminal } = await start(openTerminal(80, 2));
  typeKeys(terminal, pasted('one two three four five six seven eight nine ten eleven twelve'));
  await terminal.shows('eleven twelve');
  terminal.resize(25, 2);
  await terminal.until(({ cursor }) => cursor.row.startsWith('say: …'));
  expect(terminal.written()).not.toContain('\x1b[2J');
});

test('Ctrl-C clears a line, and leaves on an empty one; the terminal is given back clean', async () => {
  const { terminal, heard, ended } = await start();
  typeKeys(terminal, 'unsent');
  await terminal.shows('say: unsent');
  expect(terminal.isRaw()).toBe(true);
  typeKeys(terminal, key.ctrlC);
  await terminal.until(({ cursor }) => cursor.row === 'say:');
  typeKeys(terminal, key.ctrlC);
  await ended;
  expect(heard).toEqual([]);
  expect(terminal.isRaw()).toBe(false);
  expect(terminal.written()).toMatch(/\x1b\[\?2004h[\s\S]*\x1b\[\?2004l/);
  expect(terminal.written().lastIndexOf('\x1b[?25h')).toBeGreaterThan(
    terminal.written().lastIndexOf('\x1b[?25l'),
  );
  await terminal.until(({ rows }) => rows.length === 0);
});

test('Ctrl-D deletes to the right, and leaves on an empty line', async () => {
  const { terminal, ended } = await start();
  typeKeys(terminal, 'ab', key.left, key.ctrlD);
  await terminal.until(({ cursor }) => cursor.row === 'say: a');
  typeKeys(terminal, key.backspace, key.ctrlD);
  await ended;
  expect(terminal.isRaw()).toBe(false);
});

test('a turn that leaves ends the chat after its words; lines sent behind it are not begun', async () => {
  const { terminal, heard, ended } = await start();
  terminal.send('bye\r');
  terminal.send('more\r');
  await ended;
  expect(heard).toEqual(['bye']);
  expect((await terminal.shows('heard bye')).rows).toEqual(['said: bye', 'heard bye']);
});

test('lines sent while a turn is at work are taken in order', async () => {
  const release: (() => void)[] = [];
  const heard: string[] = [];
  const { terminal } = await start(undefined, {
    turn: async (words) => {
      heard.push(words);
      if (words === 'slow') await new Promise<void>((resolve) => release.push(resolve));
      return { tokens: [{ t: 'claim', text: `heard ${words}` }] };
    },
  });
  terminal.send('slow\r');
  terminal.send('quick\r');
  await terminal.shows('said: slow');
  expect(heard).toEqual(['slow']);
  release[0]?.();
  const seen = await terminal.answers('heard quick');
  expect(seen.rows).toEqual(['said: slow', 'heard slow', '', 'said: quick', 'heard quick', '', 'say:']);
});

test('a turn that throws ends the chat with its error and a clean terminal', async () => {
  const { terminal, ended } = await start(undefined, {
    turn: () => Promise.reject(new Error('a fault of ours')),
  });
  const failed = expect(ended).rejects.toThrow('a fault of ours');
  terminal.send('anything\r');
  await failed;
  expect(terminal.isRaw()).toBe(false);
  expect(terminal.written()).toContain('\x1b[?2004l');
});

test('closing the window ends the chat', async () => {
  const { terminal, ended } = await start();
  terminal.hangUp();
  await ended;
  expect(terminal.isRaw()).toBe(false);
});

test('colour repeats the words, and without it the same words stand', async () => {
  const tinted = await start(undefined, { color: true });
  const bare = await start();
  for (const { terminal } of [tinted, bare]) typeKeys(terminal, 'everything', key.enter);
  const [withColour, without] = await Promise.all(
    [tinted, bare].map(({ terminal }) => terminal.answers('2. the water you carry')),
  );
  expect(without?.rows).toEqual(withColour?.rows);
  expect(tinted.terminal.written()).toContain('\x1b[38;5;29mheld');
  expect(bare.terminal.written()).not.toMatch(/\x1b\[[\d;]*m/);
});

test('what a turn or a keeper brings cannot steer the terminal', async () => {
  const { terminal } = await start(undefined, {
    turn: async () => ({ tokens: [{ t: 'claim', text: 'ok\x1b[2J\x1b]0;title\x07 then\u202e back' }] }),
  });
  typeKeys(terminal, pasted('evil\x1b[2J\x07'), key.enter);
  const seen = await terminal.answers('ok then back');
  expect(seen.rows).toEqual(['said: evil', 'ok then back', '', 'say:']);
  expect(terminal.written()).not.toContain('\x1b[2J');
  expect(terminal.written()).not.toContain('\x07');
});

test('an empty line says something only where one is waited for', async () => {
  let waits = false;
  const { terminal, heard } = await start(undefined, { takesEmpty: () => waits });
  typeKeys(terminal, key.enter, 'first', key.enter);
  await terminal.answers('heard first');
  expect(heard).toEqual(['first']);
  waits = true;
  typeKeys(terminal, key.enter, 'second', key.enter);
  await terminal.answers('heard second');
  expect(heard).toEqual(['first', '', 'second']);
});

describe('a long answer', () => {
  const tokens: readonly Token[] = [
    { t: 'claim', text: 'Yes.' },
    ...Array.from({ length: 20 }, (_, at): Token => ({ t: 'detail', text: `note ${at + 1}` })),
  ];
  const turn: Turn = async (words) => ({
    tokens: words === 'long' ? tokens : [{ t: 'claim', text: 'Short.' }],
  });

  test('is folded to the window, counting what is hidden, and "more" opens the rest', async () => {
    const { terminal } = await start(openTerminal(60, 18), { turn });
    typeKeys(terminal, 'long', key.enter);
    const folded = await terminal.answers('Folded');
    const notes = (from: number, to: number) =>
      Array.from({ length: to - from + 1 }, (_, at) => `note ${from + at}`);
    const head = [
      'said: long',
      'Yes.',
      ...notes(1, 11),
      'Folded: 9 notes, in 9 rows. Say "more" to open.',
      '',
    ];
    expect(folded.rows).toEqual([...head, 'say:']);
    typeKeys(terminal, 'more', key.enter);
    const opened = await terminal.answers('note 20');
    expect(opened.rows).toEqual([...head, 'said: more', ...notes(12, 20), '', 'say:']);
  });
});

describe('the quiet row', () => {
  const lines = ['can the reds go out', 'can the whites go out', 'how much feed'];
  const ways = (before: string) => lines.filter((line) => line.startsWith(before));

  test('lists what Tab can go on with, and goes with the next key', async () => {
    const { terminal, heard } = await start(openTerminal(60, 12), { ways });
    typeKeys(terminal, 'ca', key.tab);
    const listed = await terminal.shows('Tab: reds');
    expect(listed.rows).toEqual(['say: can the', 'Tab: reds go out, whites go out']);
    expect(listed.cursor).toEqual({ row: 'say: can the', column: 'say: can the '.length });
    typeKeys(terminal, key.tab);
    await terminal.until(({ cursor }) => cursor.row === 'say: can the reds go out');
    typeKeys(terminal, key.enter);
    const seen = await terminal.answers('heard can the reds go out');
    expect(seen.rows).toEqual(['said: can the reds go out', 'heard can the reds go out', '', 'say:']);
    expect(heard).toEqual(['can the reds go out']);
  });

  test('shows the line that Ctrl-R finds; Enter takes it, and a second Enter sends it', async () => {
    const { terminal, heard } = await start(openTerminal(60, 12), {
      history: ['lost 2 reds', 'how much feed'],
    });
    typeKeys(terminal, key.ctrlR, 'red');
    const found = await terminal.shows('lost 2 reds');
    expect(found.rows).toEqual([
      'look for: red',
      'Enter takes it, Ctrl-R an older one, Esc none: lost 2 reds',
    ]);
    expect(found.cursor).toEqual({ row: 'look for: red', column: 'look for: red'.length });
    typeKeys(terminal, key.enter);
    await terminal.until(({ cursor }) => cursor.row === 'say: lost 2 reds');
    expect(heard).toEqual([]);
    typeKeys(terminal, key.enter);
    await terminal.answers('heard lost 2 reds');
    expect(heard).toEqual(['lost 2 reds']);
  });

  test('has no place in a window of three rows', async () => {
    const { terminal } = await start(openTerminal(60, 3), { ways });
    typeKeys(terminal, 'ca', key.tab);
    const seen = await terminal.until(({ cursor }) => cursor.row === 'say: can the');
    expect(seen.rows).toEqual(['say: can the']);
    expect(terminal.written()).not.toContain('\x1b[2J');
  });

  test('says what is worked on once that takes long, and no more once it is answered', async () => {
    let release = (): void => undefined;
    const { terminal } = await start(undefined, {
      turn: async (words) => {
        if (words === 'plan')
          await new Promise<void>((resolve) => {
            release = resolve;
          });
        return { tokens: [{ t: 'claim', text: `heard ${words}` }] };
      },
    });
    typeKeys(terminal, 'quick', key.enter);
    await terminal.answers('heard quick');
    typeKeys(terminal, 'plan', key.enter);
    const slow = await terminal.shows('Still working');
    const quick = ['said: quick', 'heard quick', ''];
    expect(slow.rows).toEqual([...quick, 'said: plan', 'say:', 'Still working on: plan']);
    release();
    const done = await terminal.answers('heard plan');
    expect(done.rows).toEqual([...quick, 'said: plan', 'heard plan', '', 'say:']);
    expect(terminal.written()).not.toContain('working on: quick');
  });
});

describe('a picture', () => {
  const picture: Token = {
    t: 'picture',
    drawings: [['#'.repeat(100)], ['#'.repeat(80)], ['#'.repeat(60)]],
    says: 'Weight rises.',
  };
  const turn: Turn = async () => ({ tokens: [{ t: 'claim', text: 'Yes.' }, picture] });

  test.each([
    [60, 60],
    [80, 80],
    [120, 100],
  ])('in a window of %i columns takes %i', async (columns, taken) => {
    const { terminal } = await start(openTerminal(columns, 30), { turn });
    typeKeys(terminal, 'grow', key.enter);
    const seen = await terminal.answers('Weight rises.');
    expect(seen.rows).toEqual(['said: grow', 'Yes.', '#'.repeat(taken), 'Weight rises.', '', 'say:']);
  });

  /** A chat with two answers, the later one with a picture, in a terminal that says what it does with long rows, or does not. */
  const grown = async (terminal: FakeTerminal, breaks: boolean) => {
    vi.stubEnv('TMUX', breaks ? '/tmp/tmux-0/default,1,0' : '');
    vi.stubEnv('TERM', 'screen');
    await start(terminal, { turn });
    vi.stubEnv('TMUX', undefined);
    typeKeys(terminal, 'before', key.enter);
    await terminal.answers('Weight rises.');
    typeKeys(terminal, 'grow', key.enter);
    await terminal.until(({ rows, cursor }) => cursor.row === 'say:' && rows.includes('said: grow'));
    typeKeys(terminal, 'half a li');
    await terminal.until(({ cursor }) => cursor.row === 'say: half a li');
  };
  const drawn = (columns: number) => ['Yes.', '#'.repeat(columns), 'Weight rises.', ''];
  const countOf = (rows: readonly string[], row: string) => rows.filter((each) => each === row).length;

  test('takes its own place in each width that the window gets, and the line being typed stays', async () => {
    const terminal = openTerminal(120, 30);
    await grown(terminal, true);
    for (const [columns, taken] of [
      [60, 60],
      [80, 80],
      [120, 100],
    ] as const) {
      terminal.resize(columns, 30);
      const shows = `${'#'.repeat(taken)} Weight rises.`;
      const seen = await terminal.until(
        ({ rows, cursor }) =>
          cursor.row === 'say: half a li' &&
          rows
            .slice(rows.indexOf('said: grow') + 2)
            .join(' ')
            .startsWith(shows),
      );
      expect(seen.rows.slice(seen.rows.indexOf('said: grow'))).toEqual([
        'said: grow',
        ...drawn(taken),
        'say: half a li',
      ]);
      // The answer before it is the terminal's own by now.
      expect(seen.rows.slice(0, seen.rows.indexOf('said: grow')).join('')).toBe(
        `said: beforeYes.${'#'.repeat(100)}Weight rises.`,
      );
    }
    expect(terminal.written()).not.toContain('\x1b[2J');
  });

  test.each([
    ['breaks rows and does not say so', false],
    ['cuts rows off', true],
  ])(
    'is drawn again under the answer for a narrower window of a terminal that %s; what stood stays',
    async (_what, cuts) => {
      const terminal = openTerminal(80, 30, cuts);
      await grown(terminal, false);
      terminal.resize(60, 30);
      const seen = await terminal.until(
        ({ rows, cursor }) => cursor.row === 'say: half a li' && countOf(rows, 'Weight rises.') === 3,
      );
      // What is cut off is out of sight, and the terminal of this test keeps it all the same.
      const broken = cuts ? ['#'.repeat(80)] : ['#'.repeat(60), '#'.repeat(20)];
      const old = ['Yes.', ...broken, 'Weight rises.', ''];
      expect(seen.rows).toEqual([
        'said: before',
        ...old,
        'said: grow',
        ...old,
        ...drawn(60).slice(1),
        'say: half a li',
      ]);
      expect(terminal.written()).not.toContain('\x1b[2J');
    },
  );

  test('takes its own place in a wider window of any terminal, since no row of it was broken', async () => {
    const terminal = openTerminal(60, 30, true);
    await grown(terminal, false);
    terminal.resize(80, 30);
    const seen = await terminal.until(
      ({ rows, cursor }) => cursor.row === 'say: half a li' && countOf(rows, '#'.repeat(80)) === 1,
    );
    expect(seen.rows).toEqual(['said: before', ...drawn(60), 'said: grow', ...drawn(80), 'say: half a li']);
  });

  test('of an answer that is taller than the window is drawn in its place, and what has left the window stays', async () => {
    const terminal = openTerminal(80, 8);
    await grown(terminal, true);
    terminal.resize(60, 6);
    const seen = await terminal.until(
      ({ rows, cursor }) =>
        cursor.row === 'say: half a li' &&
        countOf(rows, '#'.repeat(20)) === 1 &&
        countOf(rows, 'Weight rises.') === 2,
    );
    expect(seen.rows).toEqual([
      'said: before',
      'Yes.',
      '#'.repeat(60),
      '#'.repeat(20),
      'Weight rises.',
      '',
      'said: grow',
      'Yes.',
      // This row of the old drawing was above the window by then.
      '#'.repeat(60),
      ...drawn(60).slice(1),
      'say: half a li',
    ]);
    expect(terminal.written()).not.toMatch(/\x1b\[[23]J/);
  });
});

test('without Unicode nothing beyond ASCII is drawn', async () => {
  const { terminal } = await start(openTerminal(60, 40), { isAscii: true });
  typeKeys(terminal, 'everything', key.enter);
  await terminal.answers('2. the water you carry');
  typeKeys(terminal, 'a long line that does not fit the window, to be cut with a mark at its start');
  await terminal.shows('mark at its start');
  expect(terminal.written()).toMatch(/^[\0-\x7f]*$/);
});
