/** Folders of each platform, as pure functions of the environment: XDG's, those of macOS, those of Windows. */
import { describe, expect, test } from 'vitest';
import { foldersOf } from '../../cli/folders.ts';
import { isAsciiIn, lookAround, widthOf } from '../../cli/surroundings.ts';

// The defaults are those of the XDG Base Directory Specification 0.8, "Environment variables".
test('on Linux they are those of XDG', () => {
  expect(foldersOf({}, 'linux', '/home/nell')).toEqual({
    data: '/home/nell/.local/share/penside',
    cache: '/home/nell/.cache/penside',
    state: '/home/nell/.local/state/penside',
  });
  const set = { XDG_DATA_HOME: '/data', XDG_CACHE_HOME: '/cache', XDG_STATE_HOME: '/state' };
  expect(foldersOf(set, 'freebsd', '/home/nell')).toEqual({
    data: '/data/penside',
    cache: '/cache/penside',
    state: '/state/penside',
  });
});

test.each(['', 'data', './data', '~/data'])('an XDG path that is not absolute is ignored: %j', (path) => {
  const set = { XDG_DATA_HOME: path, XDG_CACHE_HOME: path, XDG_STATE_HOME: path };
  expect(foldersOf(set, 'linux', '/home/nell')).toEqual(foldersOf({}, 'linux', '/home/nell'));
});

test('on macOS they are in the Library, whatever XDG says', () => {
  expect(foldersOf({ XDG_DATA_HOME: '/data' }, 'darwin', '/Users/nell')).toEqual({
    data: '/Users/nell/Library/Application Support/penside',
    cache: '/Users/nell/Library/Caches/penside',
    state: '/Users/nell/Library/Application Support/penside/state',
  });
});

test.each([
  [{}, 'C:\\Users\\nell\\AppData\\Local\\penside'],
  [{ LOCALAPPDATA: '' }, 'C:\\Users\\nell\\AppData\\Local\\penside'],
  [{ LOCALAPPDATA: 'D:\\Local' }, 'D:\\Local\\penside'],
])('on Windows they are in the local application data: %j', (env, data) => {
  expect(foldersOf(env, 'win32', 'C:\\Users\\nell')).toEqual({
    data,
    cache: `${data}\\cache`,
    state: `${data}\\state`,
  });
});

describe('how wide text may become', () => {
  const terminal = { isTTY: true, columns: 72 };
  const pipe = { isTTY: false, columns: 0 };
  test.each([
    ['a terminal', terminal, {}, 72],
    ['a terminal that knows better', terminal, { COLUMNS: '40' }, 72],
    ['a terminal that tells no columns', { isTTY: true, columns: 0 }, {}, Number.POSITIVE_INFINITY],
    ['a pipe', pipe, {}, Number.POSITIVE_INFINITY],
    ['a pipe with COLUMNS', pipe, { COLUMNS: '40' }, 40],
    ['a pipe with nonsense', pipe, { COLUMNS: 'wide' }, Number.POSITIVE_INFINITY],
    ['a pipe with none', pipe, { COLUMNS: '0' }, Number.POSITIVE_INFINITY],
  ])('%s', (_, stream, env, width) => {
    expect(widthOf(stream, env)).toBe(width);
  });
});

test.each([
  [{}, false],
  [{ LANG: 'en_US.UTF-8' }, false],
  [{ LANG: 'C' }, true],
  [{ LC_ALL: 'POSIX', LANG: 'en_US.UTF-8' }, true],
  [{ LC_ALL: '', LC_CTYPE: 'de_DE.utf8', LANG: 'C' }, false],
])('whether there is but ASCII to draw with: %j', (env, is) => {
  expect(isAsciiIn(env)).toBe(is);
});

test.each([
  [undefined, false],
  ['', false],
  ['no', false],
  ['yes', true],
  ['0', true],
])('PENSIDE_READ_ONLY=%s', (set, is) => {
  const env = { ...process.env, PENSIDE_READ_ONLY: set };
  const found = lookAround({
    ...process,
    env,
    stdin: process.stdin,
    stdout: process.stdout,
    stderr: process.stderr,
  });
  expect(found.isReadOnly).toBe(is);
});
