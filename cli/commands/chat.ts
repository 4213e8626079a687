/** Opens the chat: what matters today first, then whatever is asked or told. */

import type { Told } from '../chat/conversation.ts';
import { startChat } from '../chat/start.tsx';
import type { Token } from '../say/tokens.ts';
import type { Surroundings } from '../surroundings.ts';
import type { Flock } from '../talk/flock.ts';
import { type Memory, nothingYet } from '../talk/reply.ts';
import { turn } from '../talk/turn.ts';
import { type Given, type Outcome, textOf } from './command.ts';
import { demoNote, openFlock } from './open.ts';

const goodbye = /^\s*(bye|goodbye|quit|exit|leave|good night)\s*[.!]?\s*$/i;

/** The few lines that a keeper should see before asking anything. */
const openingFor = async (flock: Flock, isDemo: boolean): Promise<Token[]> => {
  const { tokens } = await turn(flock, 'what needs doing today', nothingYet, {
    on: flock.today,
    group: null,
    write: false,
  });
  const tasks = tokens.filter((token) => token.t === 'step' && !token.done).slice(0, 4);
  return [
    ...(isDemo ? [{ t: 'detail', text: demoNote } as const] : []),
    ...tasks,
    { t: 'next', text: 'Ask or tell anything; "help" shows what, Ctrl-D leaves.' },
  ];
};

export const openChat = async (given: Given, around: Surroundings): Promise<Outcome> => {
  const opened = openFlock(given, around, true);
  if ('exit' in opened) return opened;
  const { flock, isDemo } = opened;
  let memory: Memory = nothingYet;
  const group = textOf(given, 'group') ?? null;
  await startChat({
    stdin: around.stdin,
    stdout: around.stdout,
    env: process.env,
    color: around.env.NO_COLOR === undefined || around.env.NO_COLOR === '',
    screenReader: around.env.INK_SCREEN_READER === 'true',
    opening: await openingFor(flock, isDemo),
    history: [],
    turn: async (words): Promise<Told> => {
      if (goodbye.test(words)) return { tokens: [], leave: true };
      const reply = await turn(flock, words, memory, { on: flock.today, group, write: true });
      memory = reply.memory;
      return { tokens: reply.tokens };
    },
  });
  return { out: [], err: [], exit: 0 };
};
