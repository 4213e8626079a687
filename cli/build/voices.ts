/** The labelled lines in `rules/voices`, from which understanding learns. */
import { readdirSync, readFileSync } from 'node:fs';
import { readSpoken, type Spoken } from '../understand/learn/spoken.ts';

export interface Voice {
  readonly name: string;
  readonly lines: readonly Spoken[];
}

/** All voices of a rules folder, in the order of their names. */
export const readVoices = (rules: string): readonly Voice[] =>
  readdirSync(`${rules}/voices`)
    .filter((file) => file.endsWith('.jsonl'))
    .sort()
    .map((file) => ({
      name: file.slice(0, -'.jsonl'.length),
      lines: readSpoken(readFileSync(`${rules}/voices/${file}`, 'utf8')),
    }));
