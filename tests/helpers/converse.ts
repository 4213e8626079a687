/** Plays a written conversation over a flock and writes down what came back, in the form it was written in. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { plain } from '../../cli/say/plain.ts';
import type { Flock } from '../../cli/talk/flock.ts';
import { openDemo, openOwn } from '../../cli/talk/open-flock.ts';
import { type Memory, nothingYet } from '../../cli/talk/reply.ts';
import { turn } from '../../cli/talk/turn.ts';
import type { Lexicon } from '../../cli/understand/lexicon.ts';
import type { Rulebook } from '../../engine/types.ts';

const said = '> ';

/** The head of a transcript: `today: 2026-05-14`, `flock: demo` or `flock: empty`, `width: 80`, and `advice: noted` where answers are to be asked about later. */
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
  const open = (today: string): Flock =>
    head.flock === 'demo'
      ? openDemo({ book, lexicon, today, asOf: null })
      : openOwn({
          book,
          lexicon,
          path: join(folder, 'flock.jsonl'),
          today,
          asOf: null,
          now: `${today}T07:00:00+00:00`,
          by: null,
          rulesFolder: head.advice === 'noted' ? join(folder, 'rulebooks') : undefined,
        });
  try {
    let today = head.today ?? '';
    let flock = open(today);
    let memory: Memory = nothingYet;
    const out = lines.slice(0, lines.indexOf(''));
    for (const line of lines.slice(out.length)) {
      if (line.startsWith('today: ')) {
        today = line.slice('today: '.length);
        flock = open(today);
        out.push('', line);
      }
      if (!line.startsWith(said)) continue;
      const reply = await turn(flock, line.slice(said.length), memory, {
        on: today,
        group: null,
        write: true,
        notes: true,
      });
      memory = reply.memory;
      out.push('', line, ...plain(reply.tokens, width));
    }
    return `${out.join('\n')}\n`;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};
