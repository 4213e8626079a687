/** Lines sent in the chat: kept across runs, capped, for their keeper alone. */
import { mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { keepLine, linesSent } from '../../../cli/commands/lines-sent.ts';
import { lookAround, type Surroundings } from '../../../cli/surroundings.ts';

let folder = '';
let around: Surroundings;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'penside-'));
  around = { ...lookAround(process), stateFolder: join(folder, 'state') };
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

test('lines come back in their order, once where one was sent twice running, each on one row', () => {
  for (const words of ['how many', 'how many', ' lost\n2 ', '', 'how many']) keepLine(around, words);
  expect(linesSent(around)).toEqual(['how many', 'lost 2', 'how many']);
});

test('only the keeper can read them', () => {
  keepLine(around, 'how many');
  expect(statSync(join(around.stateFolder, 'history')).mode & 0o777).toBe(0o600);
});

test('the oldest go when there are a thousand', () => {
  const many = Array.from({ length: 1000 }, (_, n) => `line ${n}`);
  keepLine(around, 'first');
  writeFileSync(join(around.stateFolder, 'history'), many.join('\n'));
  keepLine(around, 'newest');
  expect(linesSent(around)).toEqual([...many.slice(1), 'newest']);
});

test('where nothing can be kept there is no history and no error', () => {
  writeFileSync(join(folder, 'file'), '');
  const nowhere = { ...around, stateFolder: join(folder, 'file', 'below') };
  keepLine(nowhere, 'how many');
  expect(linesSent(nowhere)).toEqual([]);
});
