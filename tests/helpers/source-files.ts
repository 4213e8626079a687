/** The program's own source as text: files, what each imports, and its code without remarks. */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';

export const root = new URL('../..', import.meta.url).pathname;

export interface Import {
  /** A path from the root, such as `engine/day.ts`, or the name of a package. */
  readonly of: string;
  /** Whether only types come in, so that nothing of it is there when the program runs. */
  readonly isType: boolean;
}

export interface SourceFile {
  /** Path from the root. */
  readonly path: string;
  readonly text: string;
  /** The text without remarks. */
  readonly code: string;
  readonly imports: readonly Import[];
}

/** All files below folders of the root whose names end like this, in the order of their paths. */
export const filesBelow = (folders: readonly string[], ending: RegExp): string[] =>
  folders
    .flatMap((folder) => readdirSync(join(root, folder), { recursive: true, withFileTypes: true }))
    .filter((entry) => entry.isFile() && ending.test(entry.name))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)).replaceAll('\\', '/'))
    .sort();

const importing =
  /(?:import|export)\s+(?<types>type\s)?[^'";]*?from\s+'(?<from>[^']+)'|(?<typeof>typeof\s+)?import\(\s*'(?<called>[^']+)'|import\s+'(?<bare>[^']+)'/g;

const importsIn = (path: string, text: string): Import[] =>
  [...text.matchAll(importing)].flatMap(({ groups = {} }) => {
    const of = groups.from ?? groups.called ?? groups.bare;
    if (of === undefined) return [];
    const isType = groups.types !== undefined || groups.typeof !== undefined;
    return [{ of: of.startsWith('.') ? join(dirname(path), of) : of, isType }];
  });

export const readSource = (path: string): SourceFile => {
  const text = readFileSync(join(root, path), 'utf8');
  const code = text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/(^|\s)\/\/.*$/gm, '$1');
  return { path, text, code, imports: importsIn(path, code) };
};

/** Everything that makes up the program. */
export const sourceFiles: readonly SourceFile[] = filesBelow(['engine', 'cli'], /\.tsx?$/).map(readSource);
