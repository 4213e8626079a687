/** The real program as a shell runs it: what it writes, where, its exit code, and what it does not load. */
import { spawnSync } from 'node:child_process';
import { closeSync, mkdtempSync, openSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { commands } from '../cli/commands/index.ts';
import { jsonLines, penside, programPath } from './helpers/program.ts';

let folder = '';
let file = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'penside-'));
  file = join(folder, 'flock.jsonl');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const today = '2026-05-05';
const flock = (lines: readonly string[]): void => {
  const run = penside(['tell'], { file, today, input: lines.join('\n') });
  expect(run.exit).toBe(0);
};
const questionOf = (answer: Record<string, unknown> | undefined): unknown => {
  const heard = answer?.heard;
  return typeof heard === 'object' && heard !== null && 'question' in heard ? heard.question : undefined;
};
const arrived = ['40 whites hatched yesterday came this morning, none dead'];

test('output that cannot be written is named on standard error, and 1', () => {
  // A stream that takes nothing, as one onto a full disk does not.
  writeFileSync(file, '');
  const taken = openSync(file, 'r');
  const { status, stderr } = spawnSync(process.execPath, [programPath, 'man'], {
    encoding: 'utf8',
    stdio: ['ignore', taken, 'pipe'],
  });
  closeSync(taken);
  expect([status, stderr]).toEqual([
    1,
    'The output could not be written (EBADF). Make room for it, or send it elsewhere.\n',
  ]);
});

test('a reader that has seen enough is no fault', () => {
  const { status, stderr, stdout } = spawnSync(
    'sh',
    ['-c', '"$0" "$1" man | head -1', process.execPath, programPath],
    {
      encoding: 'utf8',
    },
  );
  expect([status, stderr, stdout.split(' ')[0]]).toEqual([0, '', '.TH']);
});

describe('exit codes', () => {
  test('0 for an answer, on standard output alone', () => {
    flock(arrived);
    const run = penside(['how many birds do I have'], { file, today });
    expect([run.exit, run.err, run.out.split('\n')[0]]).toEqual([
      0,
      '',
      'The whites: 40 birds alive, 1 day old, in the brooder.',
    ]);
  });

  test('1 for a record that cannot be true, and nothing is written', () => {
    flock(arrived);
    const before = readFileSync(file, 'utf8');
    const run = penside(['tell', 'lost 45 whites'], { file, today });
    expect([run.exit, run.out.split('\n')[0], readFileSync(file, 'utf8')]).toEqual([
      1,
      'Not written.',
      before,
    ]);
  });

  test('2 for what is not understood', () => {
    flock(arrived);
    expect(penside(['what is the capital of France'], { file, today }).exit).toBe(2);
  });

  test('3 when it cannot say yet', () => {
    flock(arrived);
    const run = penside(['ask', '--json', 'can they go out'], { file, today: '2026-05-26' });
    const [answer] = jsonLines(run);
    expect([run.exit, answer?.verdict]).toEqual([3, 'cannot-say']);
  });

  test.each([
    [['ask', '--colour', 'x'], "Unknown option '--colour'. penside ask --help shows what there is.\n"],
    [['ask', '--on', 'soon', 'can they go out'], '--on wants a day as 2026-05-14, not soon\n'],
    [['ask', '--group', 'blues', 'can they go out'], 'there is no group called blues; there are whites\n'],
    [['ask'], 'ask wants a question, as: penside ask "can they go out"\n'],
    [['tell'], 'tell wants a record, as: penside tell "fed 25 lb"\n'],
  ])('64 for wrong use: %j', (args, err) => {
    flock(arrived);
    expect(penside(args, { file, today })).toEqual({ out: '', err, exit: 64 });
  });
});

describe('records', () => {
  test('tell --json gives the entry as written, and it is one line of the file', () => {
    flock(arrived);
    const [told] = jsonLines(
      penside(['tell', '--json', 'lost 2 whites to a hawk last night'], { file, today: '2026-05-08' }),
    );
    const entry = {
      kind: 'loss',
      on: '2026-05-07',
      group: 'whites',
      count: 2,
      cause: 'hawk',
      by: 'Nell',
      written: '2026-05-08T07:00:00+00:00',
    };
    expect(told).toEqual({
      recorded: [entry],
      says: '2 whites lost, cause hawk, on Thursday 7 May.',
      asks: null,
      problems: [],
    });
    expect(JSON.parse(readFileSync(file, 'utf8').trim().split('\n').at(-1) ?? '')).toEqual(entry);
  });

  test('ask reads a record back and writes nothing', () => {
    flock(arrived);
    const before = readFileSync(file, 'utf8');
    const [answer] = jsonLines(penside(['ask', '--json', 'fed 3 lb'], { file, today }));
    expect(questionOf(answer)).toBe('tell:feed');
    expect(readFileSync(file, 'utf8')).toBe(before);
  });

  test('a record that lacks something is asked about, and the next line completes it', () => {
    const run = penside(['tell', '--json'], {
      file,
      today,
      input: '40 whites came this morning\nyesterday\n',
    });
    const [first, second] = jsonLines(run);
    expect([first?.recorded, first?.asks]).toEqual([null, 'On which day did they hatch?']);
    expect(second?.recorded).toMatchObject([{ group: 'whites', count: 40, hatched: '2026-05-04' }]);
  });
});

describe('pipes', () => {
  test('several questions are answered in order, each knowing the one before', () => {
    flock(arrived);
    const run = penside(['ask', '--json'], { file, today, input: 'how many birds do I have\nwhy\n' });
    expect(jsonLines(run).map(questionOf)).toEqual(['headcount', 'why']);
  });

  test('without a terminal and without words it prints the round of the day', () => {
    flock(arrived);
    const run = penside([], { file, today });
    expect([run.exit, /^Morning: Feed the whites about/m.test(run.out)]).toEqual([0, true]);
  });

  test('without a flock file it answers from the demo, says so on standard error, and tells how to start', () => {
    const run = penside(['can they go out'], { today, env: { XDG_DATA_HOME: folder } });
    expect([run.err, run.exit]).toEqual(['This is the demo flock. To start your own: penside new\n', 0]);
  });

  test('the JSON has all its keys, also when nothing was understood', () => {
    const keys = [
      'asked',
      'heard',
      'verdict',
      'headline',
      'results',
      'when',
      'turns-on',
      'reasons',
      'unknown',
      'cautions',
      'steps',
      'choices',
      'difference',
      'passed-over',
      'picture',
      'ref',
    ];
    flock(arrived);
    const answers = jsonLines(
      penside(['ask', '--json'], {
        file,
        today,
        input: 'how much feed today\nlow of 38 tonight\nhelp\nrecommend a novel\n',
      }),
    );
    expect(answers.map((answer) => Object.keys(answer))).toEqual([keys, keys, keys, keys]);
  });
});

describe('new and check', () => {
  test('new makes an empty file for its owner alone, and never touches one that is there', () => {
    const made = penside(['new'], { file, today });
    expect([made.exit, readFileSync(file, 'utf8')]).toEqual([0, '']);
    writeFileSync(file, 'kept\n');
    const again = penside(['new', '--demo'], { file, today });
    expect([again.exit, again.err, readFileSync(file, 'utf8')]).toEqual([
      1,
      `${file} is there already; nothing was touched. To start another: penside new --file PATH\n`,
      'kept\n',
    ]);
  });

  test('a copy of the demo has nothing wrong', () => {
    penside(['new', '--demo'], { file, today });
    expect(penside(['check', '--json'], { file, today })).toEqual({ out: '', err: '', exit: 0 });
  });

  test('check shows the line, a caret and what to type; a broken line hides no other', () => {
    flock(arrived);
    writeFileSync(
      file,
      `${readFileSync(file, 'utf8')}{"kind":"los","on":"2026-05-06","group":"whites","count":1}\n`,
    );
    const run = penside(['check'], { file, today: '2026-05-06' });
    expect(run).toEqual({
      out: [
        `${file}, line 2, column 9: there is no entry kind called los.`,
        '  {"kind":"los","on":"2026-05-06","group":"whites","count":1}',
        `  ${' '.repeat(8)}^^^^^`,
        '  Did you mean loss?',
        '',
        `${file}: 1 entries, 1 problem, 1 of them in the way of answers.`,
        '',
      ].join('\n'),
      err: '',
      exit: 1,
    });
    expect(penside(['how many birds do I have'], { file, today: '2026-05-06' }).out.split('\n')[0]).toBe(
      'The whites: 40 birds alive, 2 days old, in the brooder.',
    );
  });
});

test.each(commands.map((command) => command.name))('%s --help names every option it takes', (name) => {
  const command = commands.find((each) => each.name === name);
  const run = penside([name, '--help']);
  const missing = command?.options.filter((option) => !run.out.includes(`--${option.name}`));
  expect([run.exit, run.err, missing]).toEqual([0, '', []]);
});

test('--version is the version of the package', () => {
  const { version } = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8'));
  expect(penside(['--version'], { file, today })).toMatchObject({ out: `${version}\n`, err: '', exit: 0 });
});

test('a one-shot answer loads neither Ink, React, zod nor a YAML parser', () => {
  const meta: { inputs: Record<string, { imports: { path: string; kind: string }[] }> } = JSON.parse(
    readFileSync(new URL('../dist/metafile.json', import.meta.url), 'utf8'),
  );
  const reached = new Set<string>();
  const visit = (path: string): void => {
    const input = meta.inputs[path];
    if (input === undefined || reached.has(path)) return;
    reached.add(path);
    for (const { path: next, kind } of input.imports) {
      // The chat, own rule files and the forecast are each behind a dynamic import, which a plain one-shot answer never takes.
      const isApart = /(commands\/chat|rulebook\/own|weather\/fetch-forecast)\.ts$/.test(next);
      if (kind !== 'dynamic-import' || !isApart) visit(next);
    }
  };
  visit('cli/main.ts');
  const packages = [...reached].flatMap((path) => /node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(path)?.[1] ?? []);
  const heavy = [
    'ink',
    'react',
    'react-reconciler',
    'yoga-layout',
    'yaml',
    'zod',
    'string-width',
    'jsonpath-plus',
  ];
  expect([...new Set(packages)].filter((name) => heavy.includes(name))).toEqual([]);
  expect(packages).toContain('json-rules-engine');
});
