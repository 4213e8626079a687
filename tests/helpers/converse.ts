/** Plays a written conversation over a flock and writes down what came back, in the form it was written in. */
import { copyFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { plain } from '../../cli/say/plain.ts';
import { readOut } from '../../cli/say/read-out.ts';
import type { Token } from '../../cli/say/tokens.ts';
import type { Flock } from '../../cli/talk/flock.ts';
import { openDemo, openOwn } from '../../cli/talk/open-flock.ts';
import { openingFor } from '../../cli/talk/opening.ts';
import { type Memory, nothingYet } from '../../cli/talk/reply.ts';
import { beginTalk, type Talk } from '../../cli/talk/talk.ts';
import { turn } from '../../cli/talk/turn.ts';
import type { Lexicon } from '../../cli/understand/lexicon.ts';
import type { Rulebook } from '../../engine/types.ts';

const said = '> ';
const ledgers = new URL('../conversations/flocks/', import.meta.url);

/**
 * The head of a transcript: `today: 2026-05-14`, `flock: demo`, `flock: empty` or the name of a ledger in
 * `tests/conversations/flocks` that the conversation goes on from, `width: 80`, `advice: noted` where answers
 * are to be asked about later, `chat: opened` where a keeper who begins is asked as the chat does, and `shown: heard` for
 * the sentences that a screen reader gets.
 */
const headOf = (lines: readonly string[]): Readonly<Record<string, string>> =>
  Object.fromEntries(
    lines
      .slice(0, lines.indexOf(''))
      .map((line) => line.split(': '))
      .map(([name = '', value = '']) => [name, value]),
  );

/**
 * Plays the lines that begin with `> ` (and `today: DATE` lines between them, which move the calendar on) and gives
 * the whole transcript back as it should read.
 */
export const converse = async (book: Rulebook, lexicon: Lexicon, text: string): Promise<string> => {
  const lines = text.split('\n');
  const head = headOf(lines);
  const width = Number(head.width ?? '80');
  const folder = mkdtempSync(join(tmpdir(), 'penside-'));
  const path = join(folder, 'flock.jsonl');
  if (head.flock !== undefined && !['demo', 'empty'].includes(head.flock))
    copyFileSync(new URL(`${head.flock}.jsonl`, ledgers), path);
  const open = (today: string): Flock =>
    head.flock === 'demo'
      ? openDemo({ book, lexicon, today, asOf: null })
      : openOwn({
          book,
          lexicon,
          path,
          today,
          asOf: null,
          now: `${today}T07:00:00+00:00`,
          by: null,
          rulesFolder: head.advice === 'noted' ? join(folder, 'rulebooks') : undefined,
        });
  const show = (tokens: readonly Token[]): readonly string[] =>
    head.shown === 'heard' ? tokens.map(readOut) : plain(tokens, width);
  try {
    let today = head.today ?? '';
    let flock = open(today);
    let memory: Memory = nothingYet;
    const out = lines.slice(0, lines.indexOf(''));
    const openTalk = (): Talk => beginTalk(flock, async () => flock, null);
    let talk = head.chat === 'opened' ? openTalk() : null;
    const opens = async (): Promise<readonly string[]> =>
      talk === null ? [] : ['', ...show(talk.asks ?? (await openingFor(flock, flock.today, [], width)))];
    out.push(...(await opens()));
    for (const line of lines.slice(lines.indexOf(''))) {
      if (line.startsWith('today: ')) {
        today = line.slice('today: '.length);
        flock = open(today);
        out.push('', line);
        if (talk !== null) talk = openTalk();
        out.push(...(await opens()));
      }
      if (!line.startsWith(said)) continue;
      if (talk !== null) {
        out.push('', line, ...show(await talk.take(line.slice(said.length))));
        continue;
      }
      const reply = await turn(flock, line.slice(said.length), memory, {
        on: today,
        group: null,
        write: true,
        notes: true,
      });
      memory = reply.memory;
      out.push('', line, ...show(reply.tokens));
    }
    return `${out.join('\n')}\n`;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};
