/** `penside calendar` as a shell runs it: to standard output, into a file, and never over a file of another making. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import ICAL from 'ical.js';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { penside } from '../../helpers/program.ts';

const today = '2026-05-05';
let folder = '';
let file = '';
let out = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'penside-'));
  file = join(folder, 'flock.jsonl');
  out = join(folder, 'dates.ics');
  penside(['tell', '40 whites hatched yesterday came this morning, none dead'], { file, today });
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const uidsIn = (text: string): readonly unknown[] =>
  new ICAL.Component(ICAL.parse(text))
    .getAllSubcomponents('vevent')
    .map((each) => each.getFirstPropertyValue('uid'));

test('the dates go to standard output, every line ended by CR and LF', () => {
  const run = penside(['calendar'], { file, today });
  expect([run.exit, run.err]).toEqual([0, '']);
  expect(
    run.out
      .split('\n')
      .slice(0, -1)
      .every((line) => line.endsWith('\r')),
  ).toBe(true);
  expect(uidsIn(run.out)).toContain('whites.key-dates.ready@penside');
});

test('a file is written, and written anew with the same dates under the same names', () => {
  const first = penside(['calendar', '--out', out], { file, today });
  const uids = uidsIn(readFileSync(out, 'utf8'));
  expect(first.out).toBe(`${uids.length} dates are in ${out}\n`);
  expect(penside(['calendar', '--out', out], { file, today, hour: '09:00' }).exit).toBe(0);
  expect(uidsIn(readFileSync(out, 'utf8'))).toEqual(uids);
});

test('a file that is no calendar is left as it is', () => {
  writeFileSync(out, 'shopping list');
  const run = penside(['calendar', '--out', out], { file, today });
  expect([run.exit, run.err, readFileSync(out, 'utf8')]).toEqual([
    1,
    `${out} is there already and is no calendar; nothing was touched. Name another: --out FILE\n`,
    'shopping list',
  ]);
});

test('a group that is not there is wrong use', () => {
  expect(penside(['calendar', '--group', 'blues'], { file, today })).toEqual({
    out: '',
    err: 'there is no group called blues\n',
    exit: 64,
  });
});

test('pictures keep to ASCII where the locale has nothing else', () => {
  const asked = ['ask', 'what are the key dates'];
  expect(penside(asked, { file, today, env: { LANG: 'C' } }).out).toContain('= brooder  # grass');
  expect(penside(asked, { file, today, env: { LANG: 'en_US.UTF-8' } }).out).toContain('░ brooder  █ grass');
});
