/** The rule files read plainly, for tests of understanding; what understanding does not use is left empty. */
import { readdirSync, readFileSync } from 'node:fs';
import { parse } from 'yaml';
import type { Question, RecordWords, Rulebook, Unit, Units, Words } from '../../engine/types.ts';

const rules = new URL('../../rules/', import.meta.url);

const read = (path: string): Record<string, unknown> => parse(readFileSync(new URL(path, rules), 'utf8'));

const readFolder = (folder: string): readonly (readonly [string, Record<string, unknown>])[] =>
  readdirSync(new URL(`${folder}/`, rules))
    .filter((name) => name.endsWith('.yaml') && !name.startsWith('_'))
    .sort()
    .map((name) => [name.replace('.yaml', ''), read(`${folder}/${name}`)] as const);

const readUnits = (): Units => {
  const { shown, units } = read('units.yaml') as { shown: Units['shown']; units: Record<string, Record<string, unknown>> };
  return {
    shown,
    list: Object.entries(units).map(([id, unit]) => ({ offset: 0, one: '', many: '', ...unit, id }) as unknown as Unit),
  };
};

/** The rulebook as far as understanding looks at it. */
export const readRules = (): Rulebook => ({
  units: readUnits(),
  figures: {},
  sources: {},
  questions: Object.fromEntries(readFolder('questions').map(([id, question]) => [id, { ...question, id } as unknown as Question])),
  records: Object.fromEntries(readFolder('records').map(([kind, record]) => [kind, { ...record, kind } as unknown as RecordWords])),
  rules: {},
  facts: {},
  assumptions: {},
  words: read('words.yaml') as unknown as Words,
  hash: '',
});
