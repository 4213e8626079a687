/** Where the program keeps what, and whether it may: XDG's folders on Linux and others, their equivalents on macOS and Windows. */
import { posix, win32 } from 'node:path';

/** The user's folders for this program; none of them need be there yet. */
export interface Folders {
  /** For what the keeper would miss: the flock file, and the rules that gave advice. */
  readonly data: string;
  /** For what can be fetched again. */
  readonly cache: string;
  /** For what a program remembers of its use, such as the lines sent in the chat. */
  readonly state: string;
}

export type Env = Readonly<Record<string, string | undefined>>;

/** Whether nothing is to be written: whatever was meant by another word than "no", writing is what it cannot have meant. */
export const isReadOnlyIn = (env: Env): boolean => ![undefined, '', 'no'].includes(env.PENSIDE_READ_ONLY);

/**
 * The folders of a user.
 * @param platform as Node names it: `win32`, `darwin`, or any other
 * @param home the user's home folder
 */
export const foldersOf = (env: Env, platform: string, home: string): Folders => {
  if (platform === 'win32') {
    const local = env.LOCALAPPDATA;
    const base = local === undefined || local === '' ? win32.join(home, 'AppData', 'Local') : local;
    const data = win32.join(base, 'penside');
    return { data, cache: win32.join(data, 'cache'), state: win32.join(data, 'state') };
  }
  if (platform === 'darwin') {
    const library = posix.join(home, 'Library');
    const data = posix.join(library, 'Application Support', 'penside');
    return { data, cache: posix.join(library, 'Caches', 'penside'), state: posix.join(data, 'state') };
  }
  // A relative XDG path is to be ignored, says the specification.
  const folder = (set: string | undefined, ...otherwise: readonly string[]): string =>
    posix.join(set?.startsWith('/') ? set : posix.join(home, ...otherwise), 'penside');
  return {
    data: folder(env.XDG_DATA_HOME, '.local', 'share'),
    cache: folder(env.XDG_CACHE_HOME, '.cache'),
    state: folder(env.XDG_STATE_HOME, '.local', 'state'),
  };
};
