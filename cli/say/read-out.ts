/** A token as one sentence to be heard: no layout, no drawing, the outcome right after what it is about. */

import { clean } from './clean.ts';
import { partsOf } from './parts.ts';
import { spellOut } from './spell-out.ts';
import type { Token } from './tokens.ts';

const close = (text: string): string => spellOut(/[.!?:]$/.test(text) ? text : `${text}.`);

/** What a screen reader says for this token; empty for a blank row. */
export const readOut = (token: Token): string => {
  if (token.t === 'blank') return '';
  if (token.t === 'picture') return close(clean(token.says).trim());
  const { lead, body, end, notes } = partsOf(token);
  const said = end === null ? body : `${body.replace(/\.$/, '')}, ${end.word}`;
  return [lead + said, ...notes].map(close).join(' ');
};
