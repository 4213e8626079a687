/** What is done to packages on their way into the bundle: unused modules left out, and all waiting at load time taken away. */
import { readFileSync } from 'node:fs';
import type { Plugin } from 'esbuild';

/** Modules that the program never uses: a debugger's back end, path expressions in rule files, messages in other languages. */
export const leaveOut = (names: readonly string[]): Plugin => ({
  name: 'leave-out',
  setup: ({ onResolve, onLoad }) => {
    const filter = new RegExp(`^(${names.join('|')})$`);
    onResolve({ filter }, ({ path }) => ({ path, namespace: 'left-out' }));
    onLoad({ filter: /.*/, namespace: 'left-out' }, () => ({
      contents:
        'export const JSONPath = () => { throw new Error("paths are not allowed"); }; export default {};',
    }));
  },
});

/** Puts something in place of a piece of a package's text (`$&` is that piece); a package that has changed under us breaks the build, not the program. */
const cut = (text: string, pattern: RegExp, instead: string, path: string): string => {
  if (!pattern.test(text)) throw new Error(`${path} has no ${pattern} any more`);
  return text.replace(pattern, (found) => instead.replace('$&', found));
};

/** Ink waits at load time for its debugger, which a built program has none of. */
const withoutDebugger = (text: string, path: string): string =>
  cut(
    cut(text, /if \(isDev\(\)\) \{\n {4}try[\s\S]*?\n\}\n/, '', path),
    /isDev\(\)\s*\? await loadPackageJson\(\)\s*:/,
    '',
    path,
  );

const bytesInUrl = /data:application\/octet-stream;base64,([A-Za-z0-9+/=]+)/;

/**
 * Ink's layout is WebAssembly that its package fetches as a data URL, which loads Node's whole network client at every
 * start, and waits for. Here the package hands out its bytes, which are compiled on the spot.
 */
const withBytes = (text: string, path: string): string => {
  const bytes = bytesInUrl.exec(text)?.[1] ?? '';
  const withoutUrl = cut(text, bytesInUrl, 'data:application/octet-stream;base64,', path);
  return cut(withoutUrl, /export default loadYoga/, `loadYoga.bytes = '${bytes}';\n$&`, path);
};

const layoutAtOnce = `
  const layout = {
    instantiateWasm: (wanted, done) => {
      const bytes = Buffer.from(loadYoga.bytes, 'base64');
      const instance = new WebAssembly.Instance(new WebAssembly.Module(bytes), wanted);
      done(instance);
      return instance.exports;
    },
  };
  loadYoga(layout);
  const Yoga = wrapAssembly(layout);
`;

const withoutWaiting = (text: string, path: string): string =>
  cut(text, /const Yoga = wrapAssembly\(await loadYoga\(\)\);/, layoutAtOnce, path);

/** Loads the packages of the chat without waiting, so that the whole program can be one script. */
export const loadAtOnce: Plugin = {
  name: 'load-at-once',
  setup: ({ onLoad }) => {
    const change = (filter: RegExp, changed: (text: string, path: string) => string): void =>
      onLoad({ filter }, ({ path }) => ({ contents: changed(readFileSync(path, 'utf8'), path) }));
    change(/ink\/build\/reconciler\.js$/, withoutDebugger);
    change(/yoga-layout\/dist\/src\/index\.js$/, withoutWaiting);
    change(/yoga-wasm-base64-esm\.js$/, withBytes);
  },
};
