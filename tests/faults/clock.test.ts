/** A clock that is wrong or put forward and back: what was told stays as it was told, and days are days. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { addDays, isDay } from '../../engine/day.ts';
import { openFile } from '../../engine/index.ts';
import { shipped } from '../helpers/flock-of.ts';
import { tell } from './extent.ts';

test('a clock set back: the entry is written, and its stamp is noted as earlier than the line before', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'penside-'));
  try {
    const path = join(folder, 'flock.jsonl');
    const write = (words: string, written: string) =>
      openFile(shipped, path).record([{ kind: 'note', on: '2026-05-02', words, written }], '2026-05-02');
    expect((await write('one', '2026-05-02T08:00:00+01:00')).isWritten).toBe(true);
    const before = readFileSync(path, 'utf8');
    const back = await write('two', '2026-05-02T07:00:00+01:00');
    expect([back.isWritten, back.problems.map(({ code, grave }) => [code, grave])]).toEqual([
      true,
      [['written-order', false]],
    ]);
    expect(readFileSync(path, 'utf8').startsWith(before)).toBe(true);
    // In the hour that comes twice when summer time ends, the offset tells which is later.
    const first = await write('three', '2026-10-25T02:30:00+02:00');
    const second = await write('four', '2026-10-25T02:10:00+01:00');
    expect([first.isWritten, second.isWritten]).toEqual([true, true]);
    expect(second.problems.map(({ code }) => code).filter((code) => code === 'written-order')).toEqual([]);
    expect(
      openFile(shipped, path)
        .standing()
        .map(({ fields }) => fields.words),
    ).toEqual(['one', 'two', 'three', 'four']);
    tell({ what: 'clock set back, hour that comes twice', times: 4, lost: 0 });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

test('days are counted alike where clocks change, also where midnight is left out', () => {
  const day = fileURLToPath(new URL('../../engine/day.ts', import.meta.url));
  const zones = [
    'UTC',
    'Europe/Berlin',
    'America/New_York',
    'Africa/Cairo',
    'Asia/Beirut',
    'America/Santiago',
    'Australia/Lord_Howe',
    'Pacific/Apia',
  ];
  // A process of its own, so that the zones it sets are nobody else's.
  const script = `import { addDays, daysBetween } from ${JSON.stringify(day)};
    for (const zone of ${JSON.stringify(zones)}) {
      process.env.TZ = zone;
      let on = '2025-12-25';
      let wrong = 0;
      for (let n = 1; n <= 740; n += 1) {
        const next = addDays(on, 1);
        if (next <= on || daysBetween(on, next) !== 1 || addDays('2025-12-25', n) !== next) wrong += 1;
        on = next;
      }
      process.stdout.write([on, wrong, new Date(2026, 0, 1).getTimezoneOffset() !== 0].join(' ') + '\\n');
    }`;
  const said = execFileSync(process.execPath, ['--import', 'tsx', '--input-type=module', '-e', script], {
    encoding: 'utf8',
    cwd: fileURLToPath(new URL('../..', import.meta.url)),
  });
  expect(said.trim().split('\n')).toEqual(zones.map((zone) => `2028-01-04 0 ${zone !== 'UTC'}`));
  tell({ what: 'days of two years in zones that change their clocks', times: 740 * zones.length, lost: 0 });
}, 30_000);

test('a day is one only where days around it can be counted', () => {
  expect(['0000-01-01', '0999-12-31', '3000-01-01', '9999-12-31'].filter(isDay)).toEqual([]);
  expect(['1000-01-01', '2026-05-14', '2999-12-31'].filter(isDay).map((day) => addDays(day, 20_000))).toEqual(
    ['1054-10-05', '2081-02-14', '3054-10-04'],
  );
});
