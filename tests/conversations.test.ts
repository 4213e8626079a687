/** Conversations word for word: every transcript in tests/conversations must come out as it is written (renew with `vitest -u`). */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { converse } from './helpers/converse.ts';
import { lexiconFor } from './helpers/learned.ts';
import { isShell, playShell } from './helpers/play-shell.ts';
import { rulebook } from './helpers/rulebook-of.ts';

const folder = new URL('./conversations/', import.meta.url);
const { book } = rulebook();
const lexicon = lexiconFor(book);
const names = readdirSync(folder).filter((name) => name.endsWith('.txt'));

// Long talks on a machine that has other work take longer than the usual five seconds.
test.each(names)('%s', { timeout: 30_000 }, async (name) => {
  const path = new URL(name, folder).pathname;
  const text = readFileSync(path, 'utf8');
  const played = isShell(text) ? playShell(text) : await converse(book, lexicon, text);
  await expect(played).toMatchFileSnapshot(path);
});
