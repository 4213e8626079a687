/** What the packed program holds: the program, what it knows and the licences, and nothing of the workshop. */
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { tell } from './extent.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));
const read = (path: string): string => readFileSync(`${root}${path}`, 'utf8');

interface Packed {
  readonly files: readonly { readonly path: string; readonly mode: number }[];
  readonly unpackedSize: number;
}

const pack = (): Packed => {
  // Without the scripts: packing must not build while other tests run what was built.
  const { stdout } = spawnSync('npm', ['pack', '--dry-run', '--json', '--ignore-scripts'], {
    cwd: root,
    encoding: 'utf8',
  });
  const [packed]: Packed[] = JSON.parse(stdout);
  if (packed === undefined) throw new Error('nothing was packed');
  return packed;
};

test('the packed program holds itself, its rules, what it has learned, and the licences', () => {
  const { files } = pack();
  expect(files.map(({ path }) => path).sort()).toEqual([
    'LICENSE',
    'README.md',
    'dist/LICENCES.txt',
    'dist/kind-letters.bin',
    'dist/kind-words.bin',
    'dist/learned.json',
    'dist/letters.bin',
    'dist/parts.json',
    'dist/penside.cjs',
    'dist/program.js',
    'dist/rulebook.json',
    'dist/words.bin',
    'package.json',
  ]);
  tell({ what: 'files of the packed program', times: files.length, lost: 0, note: 'all of them wanted' });
});

test('every package in the bundle is there with its licence, and no other program is needed to run it', () => {
  const { inputs }: { inputs: Record<string, unknown> } = JSON.parse(read('dist/metafile.json'));
  const bundled = new Set(
    Object.keys(inputs).flatMap((path) => /.*node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(path)?.[1] ?? []),
  );
  const licences = read('dist/LICENCES.txt');
  const listed = new Map(
    licences.split('\n----\n\n').map((text): [string, string] => {
      const [, name = '', licence = ''] = /^(\S+) \S+ \((.+)\)\n/.exec(text) ?? [];
      return [name, licence];
    }),
  );
  expect([...listed.keys()].sort()).toEqual([...bundled].sort());
  expect(
    [...new Set(listed.values())].filter(
      (each) =>
        !/^(MIT|ISC|BSD-[23]-Clause|Apache-2\.0|MPL-2\.0|0BSD|CC0-1\.0|\(MIT OR CC0-1\.0\))$/.test(each),
    ),
  ).toEqual([]);
  const { dependencies, scripts } = JSON.parse(read('package.json'));
  expect([dependencies, scripts.install, scripts.postinstall]).toEqual([undefined, undefined, undefined]);
});

test('every package of the workshop is fixed to a version and to the sum of its contents', () => {
  const lock: { packages: Record<string, { version?: string; integrity?: string; link?: boolean }> } =
    JSON.parse(read('package-lock.json'));
  const loose = Object.entries(lock.packages).filter(
    ([path, { version, integrity }]) =>
      path !== '' && (version === undefined || !/^sha512-/.test(integrity ?? '')),
  );
  expect(loose.map(([path]) => path)).toEqual([]);
});
