/** What is learned from the rules and the voices: worked out once, and kept for as long as neither they nor the code change. */
import { createHash } from 'node:crypto';
import { mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Rulebook } from '../../engine/types.ts';
import { fromFiles, toFiles } from '../understand/learn/keep.ts';
import { learn } from '../understand/learn/learn.ts';
import { type Learned, topicsOf } from '../understand/lexicon.ts';
import { readVoices, type Voice } from './voices.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));

/** A code file and all that it imports from beside it, in the order of their paths. */
const reachedFrom = (file: string, reached = new Set<string>()): ReadonlySet<string> => {
  if (reached.has(file)) return reached;
  reached.add(file);
  for (const [, path = ''] of readFileSync(file, 'utf8').matchAll(
    /^(?:import|export|\}).* from '(\.[^']+)';$/gm,
  ))
    reachedFrom(resolve(dirname(file), path), reached);
  return reached;
};

/** All that learning reads: its code, the words and phrasings of the rule files, and the voices. */
const hashOf = (book: Rulebook, voices: readonly Voice[]): string => {
  const hash = createHash('sha256');
  for (const file of [
    ...reachedFrom(`${root}cli/understand/learn/keep.ts`),
    ...reachedFrom(`${root}cli/understand/learn/learn.ts`),
  ].sort())
    hash.update(readFileSync(file));
  const told = [...Object.values(book.questions), ...Object.values(book.records)].map((part) => [
    'id' in part ? part.id : part.kind,
    part.example,
    part.phrasings,
  ]);
  return hash
    .update(JSON.stringify([told, topicsOf(book), book.words, book.units, voices]))
    .digest('hex')
    .slice(0, 16);
};

/** Reads it from the cache, or learns it, which takes half a minute, and puts it there. */
export const learnedFor = (book: Rulebook): Learned => {
  const voices = readVoices(`${root}rules`);
  const folder = `${root}node_modules/.cache/penside/${hashOf(book, voices)}`;
  try {
    return fromFiles((name) => readFileSync(`${folder}/${name}`));
  } catch {
    const learned = learn(
      book,
      voices.map((voice) => voice.lines),
    );
    mkdirSync(dirname(folder), { recursive: true });
    const making = mkdtempSync(`${folder}.`);
    for (const [name, bytes] of Object.entries(toFiles(learned))) writeFileSync(`${making}/${name}`, bytes);
    try {
      renameSync(making, folder);
    } catch {
      // Another run was first, with the same.
      rmSync(making, { recursive: true });
    }
    return learned;
  }
};
