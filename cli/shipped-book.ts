/** The rulebook as two texts that are quick to read: what every answer looks at, and the parts that only some do. */
import type { Rulebook } from '../engine/types.ts';
import { joinParts, openParts, type Places, toAscii } from './parts.ts';

/** Of hundreds of each, an answer looks at a few dozen. Figures are not among them: they are looked up thousands of times. */
const apart = ['rules', 'facts', 'sources', 'assumptions'] as const;
type Apart = (typeof apart)[number];

type Head = Omit<Rulebook, Apart> & Readonly<Record<Apart, Places>>;

/** File name → contents, in ASCII letters. */
export type ShippedBook = Readonly<Record<'rulebook.json' | 'parts.json', string>>;

/** The files of a rulebook. */
export const shipBook = (book: Rulebook): ShippedBook => {
  let text = '';
  const places = apart.map((kind) => {
    const joined = joinParts(book[kind], text);
    text = joined.text;
    return [kind, joined.places] as const;
  });
  return { 'rulebook.json': toAscii({ ...book, ...Object.fromEntries(places) }), 'parts.json': text };
};

/** Opens what `shipBook` made; `read` gives the contents of a file by its name. */
export const openShipped = (read: (name: keyof ShippedBook) => string): Rulebook => {
  const head: Head = JSON.parse(read('rulebook.json'));
  const text = read('parts.json');
  return {
    ...head,
    rules: openParts(head.rules, text),
    facts: openParts(head.facts, text),
    sources: openParts(head.sources, text),
    assumptions: openParts(head.assumptions, text),
  };
};
