/** Bundles the program into one script, and what starts it into another. */
import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { type BuildOptions, build, type Metafile } from 'esbuild';
import { leaveOut, loadAtOnce } from './plugins.ts';

const bundled = {
  bundle: true,
  format: 'cjs',
  platform: 'node',
  target: 'node20',
  minify: true,
  legalComments: 'none',
  jsx: 'automatic',
  metafile: true,
  logLevel: 'warning',
  // A script that is compiled ahead loads no modules of its own; every import is in the bundle or one of Node's.
  // Templates become plain strings, in which alone every letter beyond ASCII can be escaped.
  supported: { 'dynamic-import': false, 'template-literal': false },
  define: {
    'process.env.NODE_ENV': '"production"',
    'process.env.DEV': '"false"',
    'import.meta.dirname': '__dirname',
    'import.meta.url': '""',
  },
} satisfies BuildOptions;

/**
 * Escapes what the bundler leaves beyond ASCII, which is in patterns alone: there, as in strings, an escape means the letter.
 * A script of ASCII letters is read, and kept, at one byte a letter.
 */
const escapeLetters = (path: string): void => {
  const text = readFileSync(path, 'utf8');
  const escaped = text.replace(
    /[^\0-\x7f]/g,
    (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
  writeFileSync(path, escaped);
};

/** Writes `penside.cjs`, which starts `program.js`, and tells what went into the program. */
export const bundleInto = async (root: string, out: string): Promise<Metafile> => {
  const { version } = JSON.parse(readFileSync(`${root}/package.json`, 'utf8'));
  const { metafile } = await build({
    ...bundled,
    // Where the program runs there is no package file beside it to say which version it is.
    define: { ...bundled.define, 'process.env.npm_package_version': JSON.stringify(version) },
    absWorkingDir: root,
    entryPoints: { program: 'cli/main.ts' },
    outdir: out,
    // A function to be called with what the program is handed; put around it here, so that no start has to copy the text.
    banner: { js: '(function(require,__dirname){' },
    footer: { js: '})' },
    plugins: [leaveOut(['react-devtools-core', 'jsonpath-plus', '\\.\\./locales/index\\.js']), loadAtOnce],
  });
  escapeLetters(`${out}/program.js`);
  // Code that was compiled for one build must not be run with the text of another.
  const print = createHash('sha256')
    .update(readFileSync(`${out}/program.js`))
    .digest('hex')
    .slice(0, 16);
  await build({
    ...bundled,
    define: { ...bundled.define, 'process.env.PENSIDE_BUILD': JSON.stringify(print) },
    absWorkingDir: root,
    entryPoints: { penside: 'cli/launch.ts' },
    outdir: out,
    outExtension: { '.js': '.cjs' },
  });
  writeFileSync(`${out}/metafile.json`, JSON.stringify(metafile));
  return metafile;
};
