/** Reading a setting of the place and recording the entry it came from. */
import type { Setting } from '../types.ts';
import type { Reader } from './define.ts';

/** The latest setting of this name, its entry recorded; undefined when the keeper never set it. */
export const settingOf = (read: Reader, what: string): Setting | undefined => {
  const setting = read.state.settings[what]?.at(-1);
  if (setting !== undefined) read.from(setting);
  return setting;
};

/** A setting's number in base units. */
export const settingNumber = (read: Reader, what: string): number | undefined => {
  const value = settingOf(read, what)?.value;
  return typeof value === 'number' ? value : undefined;
};

/** A setting that is a yes or a no. */
export const settingFlag = (read: Reader, what: string): boolean | undefined => {
  const value = settingOf(read, what)?.value;
  return typeof value === 'boolean' ? value : undefined;
};
