/** The words around a token's own text – number, lead word, outcome, notes – shared by every way of showing it. */
import { clean } from './clean.ts';
import type { Token, Tone } from './tokens.ts';

/** A token taken apart: `lead` + `body`, then the `end` word that closes the line, then `notes` on rows of their own. */
export interface Parts {
  readonly lead: string;
  readonly body: string;
  readonly end: { readonly word: string; readonly tone: Tone } | null;
  readonly notes: readonly string[];
  readonly tone: Tone;
}

/** Tokens that are sentences; pictures and blank rows are shown in their own way. */
export type Worded = Exclude<Token, { t: 'picture' } | { t: 'blank' }>;

const say = (body: string, more: Partial<Parts> = {}): Parts => ({
  lead: '',
  end: null,
  notes: [],
  tone: 'plain',
  ...more,
  body: clean(body).trim(),
});

const capitalise = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);

/** All the words of such a token, cleaned, in the order in which they are read. */
export const partsOf = (token: Worded): Parts => {
  switch (token.t) {
    case 'claim':
    case 'heading':
    case 'next':
      return say(token.text);
    case 'detail':
      return say(token.text, { tone: 'aside' });
    case 'figure':
      return say(token.text, { lead: 'Figure: ', tone: 'aside' });
    case 'caution':
      return say(token.text, { lead: 'Careful: ', tone: 'careful' });
    case 'task':
      return say(token.text, {
        lead: `${token.n}. `,
        notes: token.notes.map((note) => clean(note).trim()),
      });
    case 'choice':
      return say(token.text, { lead: `${token.n}. ` });
    case 'reason':
      return say(token.text, {
        lead: `${token.n}. `,
        end: token.outcome === null ? null : { word: token.outcome, tone: token.outcome },
        notes: token.note === undefined ? [] : [clean(token.note).trim()],
      });
    case 'unknown':
      return say(token.text, {
        lead: 'Not known: ',
        notes: token.tell === null ? [] : [`To settle it, type: ${clean(token.tell).trim()}`],
      });
    case 'step':
      return say(token.text, {
        lead: `${capitalise(clean(token.at).trim())}: `,
        end: { word: token.done ? 'done' : 'to do', tone: 'plain' },
      });
  }
};
