/** Neighbouring list tokens taken together, so that a screen reader can announce one list. */
import type { Token } from '../say/tokens.ts';

export interface Run {
  /** Place of its first token. */
  readonly at: number;
  readonly isList: boolean;
  readonly tokens: readonly Token[];
}

const isListed = (token: Token): boolean =>
  token.t === 'reason' || token.t === 'step' || token.t === 'choice';

/** Tokens in runs: reasons, steps or choices in a row are one list; every other token that has words stands alone. */
export const inRuns = (tokens: readonly Token[]): readonly Run[] => {
  const runs: { at: number; isList: boolean; tokens: Token[] }[] = [];
  tokens.forEach((token, at) => {
    const last = runs.at(-1);
    if (token.t === 'blank') return;
    if (last?.isList && last.tokens[0]?.t === token.t) last.tokens.push(token);
    else runs.push({ at, isList: isListed(token), tokens: [token] });
  });
  return runs;
};
