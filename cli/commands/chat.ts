/** Opens the chat: what matters today first, or the questions of the first run; then whatever is asked or told. */

import { setTimeout as pause } from 'node:timers/promises';
import type { Told } from '../chat/conversation.ts';
import { startChat } from '../chat/start.tsx';
import type { Token } from '../say/tokens.ts';
import type { Surroundings } from '../surroundings.ts';
import { begin, type Interview, isBeginning, takeLine } from '../talk/first-run.ts';
import type { Flock } from '../talk/flock.ts';
import { expectForecast } from '../talk/forecast-news.ts';
import { openingFor } from '../talk/opening.ts';
import { nothingYet } from '../talk/reply.ts';
import { turn } from '../talk/turn.ts';
import { type Given, type Outcome, textOf } from './command.ts';
import { keepLine, linesSent } from './lines-sent.ts';
import { demoNote, openFlock } from './open.ts';

const goodbye = /^\s*(bye|goodbye|quit|exit|leave|good night)\s*[.!]?\s*$/i;
const start = /^\s*start\s*[.!]?\s*$/i;

const offerToStart: Token = { t: 'detail', text: `${demoNote}, or say "start" here.` };

export const openChat = async (given: Given, around: Surroundings): Promise<Outcome> => {
  const leaving = new AbortController();
  const opened = await openFlock(given, around, true, leaving.signal);
  if ('exit' in opened) return opened;
  let flock: Flock = opened.flock;
  const group = textOf(given, 'group') ?? null;
  // By then the first frame stands: loading what fetches must not hold it up.
  const firstFrame = pause(1000, undefined, { signal: leaving.signal, ref: false });
  const forecastNews = expectForecast(flock, firstFrame);
  const asked = isBeginning(flock) ? begin(flock, nothingYet) : null;
  let now: Interview = asked ?? { at: null, memory: nothingYet };
  const first = opened.isDemo ? [offerToStart] : [];

  const reply = async (words: string): Promise<readonly Token[]> => {
    const manner = { on: flock.today, group, write: true, notes: true };
    if (start.test(words)) {
      // The demo takes no records: the keeper's own file comes to be with the first one.
      const own = flock.canWrite ? { flock } : await openFlock(given, around, false, leaving.signal);
      if ('exit' in own) return own.err.map((text): Token => ({ t: 'caution', text }));
      flock = own.flock;
      const { tokens, ...next } = begin(flock, nothingYet);
      now = next;
      return tokens;
    }
    if (now.at !== null) {
      const { tokens, ...next } = await takeLine(flock, words, now.at, now.memory, manner);
      now = next;
      return tokens;
    }
    // An empty line sent while the last question was still being dealt with says nothing any more.
    if (words === '') return [];
    const { tokens, memory } = await turn(flock, words, now.memory, manner);
    now = { at: null, memory };
    return tokens;
  };

  try {
    await startChat({
      stdin: around.stdin,
      stdout: around.stdout,
      env: process.env,
      color: around.env.NO_COLOR === undefined || around.env.NO_COLOR === '',
      screenReader: around.env.INK_SCREEN_READER === 'true',
      opening: asked?.tokens ?? (await openingFor(flock, flock.today, first, around.width)),
      history: linesSent(around),
      takesEmpty: () => now.at !== null,
      turn: async (words): Promise<Told> => {
        keepLine(around, words);
        if (goodbye.test(words)) return { tokens: [], leave: true };
        const news = await forecastNews();
        return { tokens: [...(await reply(words)), ...news] };
      },
    });
  } finally {
    leaving.abort();
  }
  return { out: [], err: [], exit: 0 };
};
