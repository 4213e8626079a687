/** Adding text to the end of a file so that it is either all there, also after a power cut, or not there at all. */
import {
  accessSync,
  closeSync,
  constants,
  existsSync,
  fstatSync,
  fsyncSync,
  ftruncateSync,
  openSync,
  readSync,
  statSync,
  writeSync,
} from 'node:fs';
import { dirname } from 'node:path';

const LINE_END = 0x0a;

/** Writes bytes to the end of an open file. A disk may take fewer bytes than it was given, so it goes on until all are written. */
export const writeAll = (
  descriptor: number,
  bytes: Uint8Array,
  write: (descriptor: number, bytes: Uint8Array, offset: number) => number = writeSync,
): void => {
  let done = 0;
  while (done < bytes.length) done += write(descriptor, bytes, done);
};

const endsInLine = (descriptor: number, size: number): boolean => {
  if (size === 0) return true;
  const last = new Uint8Array(1);
  readSync(descriptor, last, 0, 1, size - 1);
  return last[0] === LINE_END;
};

// A new file is only safe once its folder is. Some systems cannot open a folder for this; the file itself is on disk then as well.
const syncFolder = (folder: string): void => {
  try {
    const descriptor = openSync(folder, 'r');
    try {
      fsyncSync(descriptor);
    } finally {
      closeSync(descriptor);
    }
  } catch {}
};

// After a full disk the file is cut back to what it was. If that fails as well, the torn line is found at the next reading.
const cutBack = (descriptor: number, size: number): void => {
  try {
    ftruncateSync(descriptor, size);
  } catch {}
};

/** Whether a file may be written to, or is not there yet. One that nobody may write to is left alone also by who may do anything. */
export const mayWrite = (path: string): boolean => {
  if (!existsSync(path)) return true;
  try {
    accessSync(path, constants.W_OK);
    return (statSync(path).mode & 0o222) !== 0;
  } catch {
    return false;
  }
};

/** Adds lines (without line ends) in one piece and waits until the disk has them. Throws the system's error; the caller turns it into a problem. */
export const writeLines = (path: string, lines: readonly string[]): void => {
  const isNew = !existsSync(path);
  const descriptor = openSync(path, 'a+', 0o600);
  try {
    const { size } = fstatSync(descriptor);
    const text = `${endsInLine(descriptor, size) ? '' : '\n'}${lines.join('\n')}\n`;
    try {
      writeAll(descriptor, Buffer.from(text, 'utf8'));
      fsyncSync(descriptor);
    } catch (error) {
      cutBack(descriptor, size);
      throw error;
    }
  } finally {
    closeSync(descriptor);
  }
  if (isNew) syncFolder(dirname(path));
};
