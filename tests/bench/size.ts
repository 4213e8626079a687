/** How large the built program is, file by file. Code compiled ahead belongs to one Node and is made anew for each. */
import { readdirSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { printTable } from './table.ts';

const dist = fileURLToPath(new URL('../../dist/', import.meta.url));
const files = readdirSync(dist).filter((name) => name !== 'metafile.json');
const sizeOf = (names: readonly string[]): string =>
  (names.reduce((sum, name) => sum + statSync(dist + name).size, 0) / 1e6).toFixed(2);
const isCompiled = (name: string): boolean => name.endsWith('.code');

printTable('Size of the program, MB', [
  ['file', 'MB'],
  ...files.map((name) => [name, sizeOf([name])]),
  ['all but what is compiled ahead', sizeOf(files.filter((name) => !isCompiled(name)))],
  ['all', sizeOf(files)],
]);
