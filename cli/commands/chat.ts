/** Opens the chat: what matters today first, or the questions of the first run; then whatever is asked or told. */

import { setTimeout as pause } from 'node:timers/promises';
import type { ChatWay } from '../chat/chat-way.ts';
import type { Told } from '../chat/conversation.ts';
import { startChat } from '../chat/start.tsx';
import type { Token } from '../say/tokens.ts';
import type { Surroundings } from '../surroundings.ts';
import { expectForecast } from '../talk/forecast-news.ts';
import { openingFor } from '../talk/opening.ts';
import { beginTalk } from '../talk/talk.ts';
import { waysToGoOn } from '../talk/ways-to-go-on.ts';
import { type Given, type Outcome, textOf } from './command.ts';
import { keepLine, linesSent } from './lines-sent.ts';
import { demoNote, openFlock } from './open.ts';

const goodbye = /^\s*(bye|goodbye|quit|exit|leave|good night)\s*[.!]?\s*$/i;

const offerToStart: Token = { t: 'detail', text: `${demoNote}, or say "start" here.` };

/** Colours of a theme's own may vanish on its ground, so only a terminal that has more of them is given any: 8 bits. */
const hasColours = ({ env, stdout }: Surroundings): boolean =>
  (env.NO_COLOR === undefined || env.NO_COLOR === '') && stdout.getColorDepth({ ...env }) >= 8;

export const openChat = async (given: Given, around: Surroundings, way: ChatWay): Promise<Outcome> => {
  const leaving = new AbortController();
  const opened = await openFlock(given, around, true, leaving.signal);
  if ('exit' in opened) return opened;
  const openOwn = async () => {
    const own = await openFlock(given, around, false, leaving.signal);
    return 'exit' in own ? own.err : own.flock;
  };
  const talk = beginTalk(opened.flock, openOwn, textOf(given, 'group') ?? null);
  // By then the first frame stands: loading what fetches must not hold it up.
  const firstFrame = pause(1000, undefined, { signal: leaving.signal, ref: false });
  const forecastNews = expectForecast(opened.flock, firstFrame);
  const first = opened.isDemo ? [offerToStart] : [];
  try {
    await startChat({
      stdin: around.stdin,
      stdout: around.stdout,
      env: process.env,
      way,
      color: hasColours(around),
      isAscii: around.isAscii,
      opening: talk.asks ?? (await openingFor(opened.flock, opened.flock.today, first, around.width)),
      history: linesSent(around),
      takesEmpty: talk.isAsking,
      ways: (before) => waysToGoOn(talk.flock(), before),
      turn: async (words): Promise<Told> => {
        keepLine(around, words);
        if (goodbye.test(words)) return { tokens: [], leave: true };
        const news = await forecastNews();
        return { tokens: [...(await talk.take(words)), ...news] };
      },
    });
  } finally {
    leaving.abort();
  }
  return { out: [], err: [], exit: 0 };
};
