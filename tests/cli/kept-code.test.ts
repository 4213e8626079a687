/** Compiled code in the user's cache folder: handed out only where it is whole, of this build, and the user's own. */
import {
  chmodSync,
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
import { afterEach, beforeEach, expect, test } from 'vitest';
import { type KeptCode, keptCode } from '../../cli/kept-code.ts';

const user = process.geteuid?.();
const code = Buffer.from('compiled');
let home = '';

beforeEach(() => {
  home = mkdtempSync(join(tmpdir(), 'penside-kept-'));
});
afterEach(() => rmSync(home, { recursive: true }));

const folder = (): string => join(home, '.cache', 'penside', 'code');
const file = (): string => join(folder(), 'aaaa-answer');
const kept = (build = 'aaaa', of = user, name = 'answer'): KeptCode =>
  keptCode({ cache: join(home, '.cache', 'penside'), within: [home], user: of }, build, name);

test('what was kept is handed out again, with the number of runs', () => {
  expect(kept().read()).toBeUndefined();
  kept().write({ code, runs: 3 });
  expect(kept().read()).toEqual({ code, runs: 3 });
  kept().write({ code: Buffer.from('more of it'), runs: 4 });
  expect(kept().read()).toEqual({ code: Buffer.from('more of it'), runs: 4 });
});

test('code of another build is not handed out, and is cleared away once this one is kept; another Node keeps its own', () => {
  kept('bbbb').write({ code, runs: 1 });
  expect(kept('aaaa').read()).toBeUndefined();
  kept('aaaa').write({ code, runs: 1 });
  kept('aaaa', user, 'answer-of-another-node').write({ code, runs: 1 });
  expect(readdirSync(folder()).sort()).toEqual(['aaaa-answer', 'aaaa-answer-of-another-node']);
});

test('a file with any one byte of its code changed, cut off anywhere, or empty is left aside', () => {
  kept().write({ code, runs: 1 });
  const whole = readFileSync(file());
  for (let at = 0; at < code.length * 2; at += 1) {
    const damaged = Buffer.from(whole);
    damaged[at] = (damaged[at] ?? 0) ^ 1;
    writeFileSync(file(), damaged);
    expect(kept().read()).toBeUndefined();
  }
  for (let length = 0; length < whole.length; length += 1) {
    writeFileSync(file(), whole.subarray(0, length));
    expect(kept().read()).toBeUndefined();
  }
});

test('what another may have written is not run', () => {
  kept().write({ code, runs: 1 });
  expect(kept('aaaa', (user ?? 0) + 1).read()).toBeUndefined();
  chmodSync(file(), 0o666);
  expect(kept().read()).toBeUndefined();
  chmodSync(file(), 0o600);
  chmodSync(folder(), 0o777);
  expect(kept().read()).toBeUndefined();
  kept().write({ code: Buffer.from('anew'), runs: 2 });
  chmodSync(folder(), 0o700);
  expect(kept().read()).toEqual({ code, runs: 1 });
});

test('where there is no home, or a file stands in the way, nothing is kept and nothing is said', () => {
  const nowhere = join(home, 'nowhere');
  const homeless = keptCode(
    { cache: join(nowhere, '.cache', 'penside'), within: [nowhere], user },
    'aaaa',
    'answer',
  );
  homeless.write({ code, runs: 1 });
  expect([existsSync(nowhere), homeless.read()]).toEqual([false, undefined]);
  const relative = keptCode({ cache: 'cache', within: [home], user }, 'aaaa', 'answer');
  relative.write({ code, runs: 1 });
  expect([existsSync('cache'), relative.read()]).toEqual([false, undefined]);
  mkdirSync(join(home, '.cache'));
  writeFileSync(join(home, '.cache', 'penside'), 'in the way');
  kept().write({ code, runs: 1 });
  expect(kept().read()).toBeUndefined();
});
