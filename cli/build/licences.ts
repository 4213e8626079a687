/** Which packages are in the bundle, and the licence texts that have to go with them. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import type { Metafile } from 'esbuild';

const packageOf = (input: string): string | undefined =>
  /.*node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(input)?.[0].replace(/\/$/, '');

/** One text with the name, version and licence of every bundled package. Paths are relative to `root`. */
export const licencesOf = (root: string, metafile: Metafile): string => {
  const folders = [
    ...new Set(Object.keys(metafile.inputs).flatMap((input) => packageOf(input) ?? [])),
  ].sort();
  return folders
    .map((folder) => {
      const about = JSON.parse(readFileSync(`${root}${folder}/package.json`, 'utf8'));
      const file = existsSync(`${root}${folder}`)
        ? readdirSync(`${root}${folder}`).find((name) => /^(licen[cs]e|copying)/i.test(name))
        : undefined;
      const text =
        file === undefined
          ? `${about.license} licence`
          : readFileSync(`${root}${folder}/${file}`, 'utf8').trim();
      return `${about.name} ${about.version} (${about.license})\n\n${text}\n`;
    })
    .join('\n----\n\n');
};
