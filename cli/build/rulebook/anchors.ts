/** Links between the parts of the rulebook document, and the names of facts and figures as such links. */
import type { Speech } from '../../say/speech.ts';

export type Kind = 'question' | 'rule' | 'figure' | 'fact' | 'source';

/** Short, since there are some thousand of them, and many viewers show no more than half a megabyte of a document. */
const letters: Readonly<Record<Kind, string>> = {
  question: 'q',
  rule: 'r',
  figure: 'f',
  fact: 'v',
  source: 's',
};

const anchor = (kind: Kind, id: string): string => `${letters[kind]}-${id.replaceAll('/', '-')}`;

/** The place that a link leads to. */
export const placeOf = (kind: Kind, id: string): string => `<a id="${anchor(kind, id)}"></a>`;

export const linkTo = (kind: Kind, id: string, text: string): string => `[${text}](#${anchor(kind, id)})`;

/** Names that fill a wording stand in brackets; where the name is a link, that says enough. */
export const withoutBrackets = (text: string): string =>
  text.replace(/\[(\[[^\]]*\]\(#[^)]*\))\]/g, (_, link: string) => link);

const linked = <T>(parts: Readonly<Record<string, T>>, link: (part: T, id: string) => T): Record<string, T> =>
  Object.fromEntries(Object.entries(parts).map(([id, part]) => [id, link(part, id)]));

/** The same speech with every name of a fact or a figure as a link, so that all wordings made of them lead on. */
export const withLinks = (speech: Speech): Speech => ({
  ...speech,
  book: {
    ...speech.book,
    facts: linked(speech.book.facts, (words, id) => ({ ...words, name: linkTo('fact', id, words.name) })),
    figures: linked(speech.book.figures, (figure, id) => ({
      ...figure,
      description: linkTo('figure', id, figure.description),
    })),
  },
});
