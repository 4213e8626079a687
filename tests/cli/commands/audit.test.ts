/** `penside audit` as a shell runs it, and the advice log that the shell's own answers leave. */
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { jsonLines, penside } from '../../helpers/program.ts';

const today = '2026-05-29';
/** One night of frost among warm ones, so that they may go out, then not, then again. */
const night = (on: string, low: string) => ({ kind: 'weather', on, low, forecast: true });
const ledger = [
  { kind: 'setting', on: '2026-04-28', what: 'pen', value: '10 ft x 12 ft' },
  { kind: 'setting', on: '2026-04-28', what: 'pen-cover', value: true },
  {
    kind: 'arrive',
    on: '2026-04-28',
    group: 'whites',
    count: 40,
    dead: 0,
    bird: 'fast',
    hatched: '2026-04-27',
  },
  { kind: 'sign', on: '2026-05-19', group: 'whites', sign: 'heat-off', words: 'heat off' },
  { kind: 'sign', on: '2026-05-19', group: 'whites', sign: 'feathered', words: 'feathered' },
  night('2026-05-26', '60 F'),
  night('2026-05-27', '60 F'),
  night('2026-05-28', '25 F'),
  night('2026-05-29', '60 F'),
]
  .map((each) => `${JSON.stringify({ ...each, written: `${each.on}T06:00:00+00:00` })}\n`)
  .join('');

let folder = '';
let file = '';
let log = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'penside-'));
  file = join(folder, 'flock.jsonl');
  log = join(folder, 'flock.advice.jsonl');
  writeFileSync(file, ledger);
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

describe('an audit', () => {
  const span = ['--from', '2026-05-26', '--to', '2026-05-29'];

  test('lists every turn of a question with its cause', () => {
    const run = penside(['audit', 'go-out', ...span], { file, today });
    expect(run).toMatchInlineSnapshot(`
      {
        "err": "",
        "exit": 0,
        "out": "2 turns of advice from Tuesday 26 May to Friday 29 May.
      Thursday 28 May: whether a group can go out to the pen
      By what was known on Wednesday 27 May it was yes for the whites; now it is no.
      1. Because of these together: the weather was foretold on line 8, "Low 25 °F, as forecast, on
         Thursday 28 May" and a day has passed. Without all of them: yes.
      Now: Not yet: nights go down to 25 °F, and the whites can stand 40 °F.
      Friday 29 May: whether a group can go out to the pen
      By what was known on Thursday 28 May it was no for the whites; now it is yes.
      1. Because a day has passed. Without that: no.
      Now: Yes, the whites can go out to the pen.
      ",
      }
    `);
  });

  test('as data, one turn a line', () => {
    const turns = jsonLines(penside(['audit', '--json', 'go-out', ...span], { file, today }));
    expect(turns).toMatchInlineSnapshot(`
      [
        {
          "differences": [
            {
              "causes": [
                {
                  "entry": "weather",
                  "how": "forecast",
                  "kind": "entry",
                  "line": 8,
                  "of": null,
                  "on": "2026-05-28",
                  "says": "the weather was foretold on line 8, "Low 25 °F, as forecast, on Thursday 28 May"",
                },
                {
                  "from": "2026-05-27",
                  "kind": "days",
                  "says": "a day has passed",
                  "to": "2026-05-28",
                },
              ],
              "days": null,
              "from": "yes",
              "group": "whites",
              "id": "verdict",
              "to": "no",
              "tried": [
                {
                  "entry": "weather",
                  "how": "forecast",
                  "kind": "entry",
                  "line": 8,
                  "of": null,
                  "on": "2026-05-28",
                  "undoes": false,
                  "without": "cannot-say",
                },
              ],
              "unit": null,
              "what": "verdict",
            },
          ],
          "doubt": null,
          "on": "2026-05-28",
          "question": "go-out",
          "since": "2026-05-27",
          "since-line": null,
        },
        {
          "differences": [
            {
              "causes": [
                {
                  "from": "2026-05-28",
                  "kind": "days",
                  "says": "a day has passed",
                  "to": "2026-05-29",
                },
              ],
              "days": null,
              "from": "no",
              "group": "whites",
              "id": "verdict",
              "to": "yes",
              "tried": [
                {
                  "from": "2026-05-28",
                  "kind": "days",
                  "to": "2026-05-29",
                  "undoes": true,
                  "without": "no",
                },
                {
                  "entry": "weather",
                  "how": "forecast",
                  "kind": "entry",
                  "line": 9,
                  "of": null,
                  "on": "2026-05-29",
                  "undoes": false,
                  "without": "cannot-say",
                },
              ],
              "unit": null,
              "what": "verdict",
            },
          ],
          "doubt": null,
          "on": "2026-05-29",
          "question": "go-out",
          "since": "2026-05-28",
          "since-line": null,
        },
      ]
    `);
  });

  test('of everything, when no question is named, and of two weeks, when no day is', () => {
    const run = penside(['audit'], { file, today });
    expect([run.exit, run.err]).toEqual([0, '']);
    expect(run.out).toMatch(/^\d+ turns of advice from Saturday 16 May to Friday 29 May\.\n/);
    expect(run.out).toContain('New to do: ');
  });

  test('of days on which nothing turned says so', () => {
    const run = penside(['audit', 'go-out', '--from', '2026-04-29', '--to', '2026-05-01'], { file, today });
    expect(run).toEqual({
      out: 'No advice turned from Wednesday 29 April to Friday 1 May.\n',
      err: '',
      exit: 0,
    });
  });

  test.each([
    [['audit', 'flying'], /^there is no question flying; there are .*go-out/],
    [['audit', '--from', 'soon'], /^--from wants a day as 2026-05-14, not soon\n$/],
    [
      ['audit', '--from', '2026-05-30', '--to', '2026-05-29'],
      /^--from 2026-05-30 is after --to 2026-05-29\n$/,
    ],
  ])('used wrongly: %j', (args, err) => {
    const run = penside(args, { file, today });
    expect([run.exit, run.out, err.test(run.err)]).toEqual([64, '', true]);
  });

  test('leaves the flock file as it is', () => {
    const bytes = readFileSync(file, 'utf8');
    penside(['audit', ...span], { file, today });
    expect([readFileSync(file, 'utf8') === bytes, readdirSync(folder)]).toEqual([true, ['flock.jsonl']]);
  });
});

describe('the advice log', () => {
  const asIs = { PENSIDE_LOG: '', XDG_DATA_HOME: '' };
  const run = (args: readonly string[], env: Readonly<Record<string, string>> = {}) =>
    penside(args, { file, today, env: { ...asIs, XDG_DATA_HOME: join(folder, 'data'), ...env } });

  test('gets what is answered in the shell, with the rules kept', () => {
    expect(run(['can they go out']).exit).toBe(0);
    const [noted] = jsonLines({ out: readFileSync(log, 'utf8'), err: '', exit: 0 });
    expect([noted?.asked, noted?.at, readdirSync(join(folder, 'data', 'penside', 'rulebooks'))]).toEqual([
      'can they go out',
      `${today}T07:00:00+00:00`,
      [`${noted?.rules}.json.gz`],
    ]);
  });

  test.each([
    ['a record', ['lost a white to a hawk'], {}],
    ['a script', ['--json', 'can they go out'], {}],
    ['`ask`', ['ask', 'can they go out'], {}],
    ['a what-if', ['can they go out if it is 20 F tonight'], {}],
    ['nobody who wants none', ['can they go out'], { PENSIDE_LOG: 'no' }],
  ])('gets nothing from %s', (_, args, env) => {
    expect([run(args, env).err, existsSync(log)]).toEqual(['', false]);
  });

  test('that cannot be written keeps back no answer', () => {
    const blocked = penside(['can they go out'], {
      file: join(file, 'flock.jsonl'),
      today,
      env: asIs,
    });
    expect([blocked.exit === null, existsSync(log)]).toEqual([false, false]);
  });
});
