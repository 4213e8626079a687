/** What is learned from the rules and the voices: worked out once, and kept for as long as neither they nor the code change. */
import { createHash } from 'node:crypto';
import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Rulebook } from '../../engine/types.ts';
import { fromFiles, toFiles } from '../understand/learn/keep.ts';
import { learn } from '../understand/learn/learn.ts';
import type { Learned } from '../understand/lexicon.ts';
import { readVoices } from './voices.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));

/** All that learning reads: the code of understanding and the rule files. */
const hashOf = (): string => {
  const hash = createHash('sha256');
  for (const folder of ['cli/understand', 'rules']) {
    const files = readdirSync(root + folder, { recursive: true, encoding: 'utf8' });
    for (const file of files.filter((each) => /\.(ts|yaml|jsonl)$/.test(each)).sort()) {
      hash.update(`${folder}/${file}\n`).update(readFileSync(`${root}${folder}/${file}`));
    }
  }
  return hash.digest('hex').slice(0, 16);
};

/** Reads it from the cache, or learns it, which takes some ten seconds, and puts it there. */
export const learnedFor = (book: Rulebook): Learned => {
  const folder = `${root}node_modules/.cache/penside/${hashOf()}`;
  try {
    return fromFiles((name) => readFileSync(`${folder}/${name}`));
  } catch {
    const learned = learn(
      book,
      readVoices(`${root}rules`).map((voice) => voice.lines),
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
