/** Advice on the log: noted, read, given again bit for bit, and in nobody's way when something is wrong with it. */
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { demoLedger } from '../../../cli/demo/demo.ts';
import { readAdvice } from '../../../engine/audit/advice-line.ts';
import { type Engine, openFile } from '../../../engine/index.ts';
import type { Answer, Request, Rulebook } from '../../../engine/types.ts';
import { shipped } from '../../helpers/flock-of.ts';

const today = '2026-05-14';
const at = `${today}T07:00:00+00:00`;
let folder = '';
let file = '';
let rules = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'penside-'));
  file = join(folder, 'flock.jsonl');
  rules = join(folder, 'rulebooks');
  writeFileSync(file, demoLedger(today));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const logFile = () => join(folder, 'flock.advice.jsonl');
const asking = (question: string, more: Partial<Request> = {}): Request => ({
  question,
  groups: [],
  moment: { on: today, asOf: null, lines: null },
  until: null,
  supposing: [],
  ...more,
});

const give = async (engine: Engine, request: Request, asked = 'so?'): Promise<Answer> => {
  const answer = await engine.ask(request);
  await engine.audit(rules).note(answer, asked, at);
  return answer;
};

/** All of an answer but how much of the ledger it was told to believe, which is all of it or so many lines. */
const withoutMoment = ({ request: { moment: _, ...request }, ...answer }: Answer) => ({ ...answer, request });

test('a line holds what was asked, what was known, and what it came to', async () => {
  const engine = openFile(shipped, file);
  await give(engine, asking('headcount', { groups: ['reds'] }), 'how many reds');
  const [line = '', end] = readFileSync(logFile(), 'utf8').split('\n');
  expect([JSON.parse(line), end]).toEqual([
    {
      at,
      asked: 'how many reds',
      request: {
        question: 'headcount',
        groups: ['reds'],
        moment: { on: today, asOf: null, lines: engine.lines.length },
        until: null,
        supposing: [],
      },
      rules: shipped.hash,
      print: expect.stringMatching(/^[0-9a-f]{8}$/),
      ref: `${engine.lines.length}-${shipped.hash}-${today}`,
      parts: [{ group: 'reds', verdict: 'amount', rule: expect.stringMatching(/^headcount\//) }],
      results: [
        { id: 'alive', fact: 'alive', group: 'reds', value: 25, unit: 'bird' },
        { id: 'lost', fact: 'lost', group: 'reds', value: 1, unit: 'bird' },
        { id: 'age', fact: 'age', group: 'reds', value: 22, unit: 'day' },
      ],
    },
    '',
  ]);
});

test.each(['go-out', 'feed-amount', 'today', 'losses', 'order-size', 'key-dates'])(
  'advice on %s is given again bit for bit, whatever was told since, and the ledger is not touched',
  async (question) => {
    const given = await give(openFile(shipped, file), asking(question));
    const more = { kind: 'loss', on: today, group: 'reds', count: 3, cause: 'hawk', written: at };
    writeFileSync(file, `${readFileSync(file, 'utf8')}${JSON.stringify(more)}\n`);
    const bytes = readFileSync(file, 'utf8');
    const audit = openFile(shipped, file).audit(rules);
    const [advice] = audit.log().advice;
    if (advice === undefined) throw new Error('nothing noted');
    const again = await audit.replay(advice);
    if (again === null) throw new Error('not given again');
    // Through JSON, as a script would compare them: nothing may hang on what is undefined or left out.
    expect(JSON.stringify(withoutMoment(again))).toBe(JSON.stringify(withoutMoment(given)));
    expect(readFileSync(file, 'utf8')).toBe(bytes);
  },
);

describe('the rules that gave advice', () => {
  /** The same rules under another hash, one figure larger. */
  const upgraded = (): Rulebook => {
    const figure = shipped.figures['pasture/hardening-days'];
    const [first] = figure?.values ?? [];
    if (figure === undefined || first === undefined) throw new Error('no figure');
    const values = [{ ...first, value: 8 }];
    return {
      ...shipped,
      hash: 'abcdef01',
      figures: { ...shipped.figures, [figure.id]: { ...figure, values } },
    };
  };

  test('are kept once, and give the same advice after an upgrade', async () => {
    const engine = openFile(shipped, file);
    const given = await give(engine, asking('go-out'));
    await give(engine, asking('headcount'));
    expect(readdirSync(rules)).toEqual([`${shipped.hash}.json.gz`]);
    const audit = openFile(upgraded(), file).audit(rules);
    const [advice] = audit.log().advice;
    if (advice === undefined) throw new Error('nothing noted');
    const again = await audit.replay(advice);
    expect(JSON.stringify(again === null ? null : withoutMoment(again))).toBe(
      JSON.stringify(withoutMoment(given)),
    );
  });

  test.each([
    ['are gone', () => rmSync(rules, { recursive: true })],
    ['are damaged', () => writeFileSync(join(rules, `${shipped.hash}.json.gz`), 'not gzip')],
  ])('may not be there: when they %s, nothing is given again and nothing fails', async (_, spoil) => {
    await give(openFile(shipped, file), asking('go-out'));
    spoil();
    const audit = openFile(upgraded(), file).audit(rules);
    const [advice] = audit.log().advice;
    if (advice === undefined) throw new Error('nothing noted');
    expect(await audit.replay(advice)).toBe(null);
    const { doubt, differences } = await audit.compare(asking('go-out'), {
      moment: advice.request.moment,
      advice,
    });
    expect([doubt, differences.filter(({ what }) => what === 'verdict')]).toEqual(['rules-not-kept', []]);
  });

  test('too old for this program are as good as gone', async () => {
    await give(openFile(shipped, file), asking('go-out'));
    const old = { ...shipped, hash: shipped.hash, figures: {} };
    const audit = openFile({ ...upgraded() }, file).audit(rules);
    rmSync(rules, { recursive: true });
    await openFile(old, file)
      .audit(rules)
      .note(await openFile(shipped, file).ask(asking('go-out')), 'x', at);
    const [advice] = audit.log().advice;
    if (advice === undefined) throw new Error('nothing noted');
    expect(await audit.replay(advice)).toBe(null);
  });

  test('are never looked for outside of their folder', async () => {
    const engine = openFile({ ...shipped, hash: '../../evil' }, file);
    const answer = await openFile(shipped, file).ask(asking('headcount'));
    await engine.audit(rules).note(answer, 'x', at);
    expect([existsSync(rules), readdirSync(folder).sort()]).toEqual([
      false,
      ['flock.advice.jsonl', 'flock.jsonl'],
    ]);
  });
});

describe('a log with something wrong', () => {
  const line = (more: object = {}): string =>
    JSON.stringify({
      at,
      asked: 'so?',
      request: asking('go-out', { moment: { on: today, asOf: null, lines: 3 } }),
      rules: 'abcdef01',
      print: '12345678',
      ref: `3-abcdef01-${today}`,
      parts: [],
      results: [],
      ...more,
    });

  test.each([
    ['cut off', line().slice(0, 40)],
    ['no object', '[1, 2]'],
    ['no lines', line({ request: asking('go-out') })],
    ['a day that is none', line({ at: '2026-02-30T07:00:00+00:00' })],
    ['a verdict that is none', line({ parts: [{ group: null, verdict: 'maybe', rule: null }] })],
    ['a result without a value', line({ results: [{ id: 'a', fact: 'a', group: null, unit: null }] })],
    ['a supposition of nothing', line({ request: { ...asking('go-out'), supposing: [{ value: 1 }] } })],
  ])('%s: that line is left out, and named', (_, bad) => {
    const { advice, damaged } = readAdvice(`${line()}\n${bad}\n\n${line({ asked: 'and now?' })}\n`);
    expect([advice.map(({ asked }) => asked), damaged]).toEqual([['so?', 'and now?'], [2]]);
  });

  test('that cannot be written keeps back no answer', async () => {
    mkdirSync(logFile());
    const engine = openFile(shipped, file);
    const answer = await engine.ask(asking('headcount'));
    expect([await engine.audit(rules).note(answer, 'x', at), engine.audit(rules).log()]).toEqual([
      false,
      { advice: [], damaged: [] },
    ]);
  });

  test('is continued on a line of its own after one that was cut off', async () => {
    writeFileSync(logFile(), line().slice(0, 40));
    const engine = openFile(shipped, file);
    await give(engine, asking('headcount'), 'how many');
    const { advice, damaged } = engine.audit(rules).log();
    expect([advice.map(({ asked }) => asked), damaged]).toEqual([['how many'], [1]]);
  });
});

test('notes of several at once are all there, each whole', async () => {
  const engine = openFile(shipped, file);
  const answer = await engine.ask(asking('headcount'));
  const names = ['one', 'two', 'three', 'four', 'five'];
  const written = await Promise.all(names.map((name) => engine.audit(rules).note(answer, name, at)));
  const { advice, damaged } = engine.audit(rules).log();
  expect([written, advice.map(({ asked }) => asked).sort(), damaged]).toEqual([
    names.map(() => true),
    [...names].sort(),
    [],
  ]);
});
