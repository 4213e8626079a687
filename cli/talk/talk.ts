/** One talk with a keeper, line after line: the interview of one who begins, then whatever is asked or told. */
import type { Token } from '../say/tokens.ts';
import { begin, type Interview, isBeginning, takeLine } from './first-run.ts';
import type { Flock } from './flock.ts';
import { sayLetBe } from './let-be.ts';
import { nothingYet } from './reply.ts';
import { turn } from './turn.ts';

export interface Talk {
  /** The first question for a keeper who begins; null for one who has begun. */
  readonly asks: readonly Token[] | null;
  /** Whether a question of the interview stands, which an empty line skips. */
  readonly isAsking: () => boolean;
  /** The flock talked about; another one once the demo is left. */
  readonly flock: () => Flock;
  readonly take: (words: string) => Promise<readonly Token[]>;
}

const start = /^\s*start\s*[.!]?\s*$/i;

/**
 * Begins a talk over a flock.
 * @param openOwn opens the keeper's own flock in place of the demo, or says why it cannot be opened
 */
export const beginTalk = (
  first: Flock,
  openOwn: () => Promise<Flock | readonly string[]>,
  group: string | null,
): Talk => {
  let flock = first;
  const asked = isBeginning(flock) ? begin(flock, nothingYet) : null;
  let now: Interview = asked ?? { at: null, memory: nothingYet };

  const goOn = ({ tokens, ...next }: Interview & { readonly tokens: readonly Token[] }): readonly Token[] => {
    now = next;
    return tokens;
  };

  const take = async (words: string): Promise<readonly Token[]> => {
    const manner = { on: flock.today, group, write: true, notes: true };
    if (start.test(words)) {
      // The demo takes no records: the keeper's own file comes to be with the first one.
      const own = flock.canWrite ? flock : await openOwn();
      if (!('engine' in own)) return own.map((text): Token => ({ t: 'caution', text }));
      flock = own;
      return goOn(begin(flock, nothingYet));
    }
    if (now.at !== null) return goOn(await takeLine(flock, words, now.at, now.memory, manner));
    // An empty line sent while the last question was still being dealt with says nothing any more.
    if (words === '') return [];
    const reply = await turn(flock, words, now.memory, manner);
    const { tokens, memory } = reply;
    return goOn({ at: null, memory, tokens: [...sayLetBe(now.memory, reply), ...tokens] });
  };

  return { asks: asked?.tokens ?? null, isAsking: () => now.at !== null, flock: () => flock, take };
};
