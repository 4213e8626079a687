/** Nothing that a terminal obeys or hides gets out of the program, whoever wrote it: the ledger, a rule file or the command line. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { clean } from '../../cli/say/clean.ts';
import { whites } from '../helpers/ledger-of.ts';
import { penside } from '../helpers/program.ts';
import { tell } from './extent.ts';
import { unseen } from './hostile.ts';

/** An argument cannot hold a zero byte, whatever the program. */
const evil = unseen.filter((each) => each !== '\u0000').join('x');
let folder = '';
let file = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'penside-'));
  file = join(folder, 'flock.jsonl');
  const group = `whi${evil}tes`;
  const lines = [
    whites,
    { kind: 'loss', on: '2026-04-10', group, count: 1 },
    { kind: `lo${evil}ss`, on: '2026-04-11', [evil]: evil },
    { kind: 'note', on: '2026-04-12', words: 'pen\u00admoved\u200b \u2060today' },
  ];
  writeFileSync(file, `${lines.map((line) => JSON.stringify(line)).join('\n')}\n${evil}\n{"kind":"${evil}`);
  mkdirSync(join(folder, 'flock.rules', 'figures'), { recursive: true });
  writeFileSync(join(folder, 'flock.rules', 'figures', 'own.yaml'), `description: ${evil}\n${evil}: 1\n`);
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

test.each(
  [
    [['check']],
    [['check', '--json']],
    [[`can they go out ${evil}`]],
    [['ask', '--json', `can they go out ${evil}`]],
    [['tell', '--json', `note ${evil}`]],
    [['heard', '--json', `lost 2 ${evil}`]],
    [['ask', `--${evil}`]],
    [['ask', '--on', evil, 'can they go out']],
    [['ask', '--group', evil, 'can they go out']],
    [['check', '--file', evil]],
    [['figures', evil]],
    [['rules', evil]],
  ].map(([args]) => [args?.map(clean).join(' '), args ?? []] as const),
)('%s', (_name, args) => {
  const { out, err } = penside(args, { file, today: '2026-05-14' });
  const rows = `${out}${err}`.split('\n');
  expect(rows.join('').length).toBeGreaterThan(0);
  expect(rows).toEqual(rows.map(clean));
  tell({
    what: `unseen characters: ${clean(args[0] ?? '')}${args.includes('--json') ? ' --json' : ''}`,
    times: unseen.length,
    lost: 0,
  });
});
