/** How large the built program is, file by file. What Node compiles of it is kept in the user's cache folder and not counted. */
import { readdirSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { printTable } from './table.ts';

const dist = fileURLToPath(new URL('../../dist/', import.meta.url));
const files = readdirSync(dist).filter((name) => name !== 'metafile.json');
const sizeOf = (names: readonly string[]): string =>
  (names.reduce((sum, name) => sum + statSync(dist + name).size, 0) / 1e6).toFixed(2);

printTable('Size of the program, MB', [
  ['file', 'MB'],
  ...files.map((name) => [name, sizeOf([name])]),
  ['all', sizeOf(files)],
]);
