/** What was learned as the contents of five files, and back. */
import type { Learned } from '../lexicon.ts';
import { fromBytes, toBytes } from './bytes.ts';

/** File name → contents. */
export type Kept = Readonly<
  Record<'learned.json' | 'words.bin' | 'letters.bin' | 'kind-words.bin' | 'kind-letters.bin', Uint8Array>
>;

/** The files of what was learned. */
export const toFiles = ({
  index,
  vocabulary,
  plain,
  words,
  letters,
  kindWords,
  kindLetters,
}: Learned): Kept => ({
  'learned.json': new TextEncoder().encode(JSON.stringify({ index, vocabulary, plain })),
  'words.bin': toBytes(words),
  'letters.bin': toBytes(letters),
  'kind-words.bin': toBytes(kindWords),
  'kind-letters.bin': toBytes(kindLetters),
});

/** Reads what `toFiles` made; `read` gives the contents of a file by its name. */
export const fromFiles = (read: (name: keyof Kept) => Uint8Array): Learned => ({
  ...JSON.parse(new TextDecoder().decode(read('learned.json'))),
  words: fromBytes(read('words.bin')),
  letters: fromBytes(read('letters.bin')),
  kindWords: fromBytes(read('kind-words.bin')),
  kindLetters: fromBytes(read('kind-letters.bin')),
});
