/** A value as one line of JSON that a terminal can show as safely as any other text. */
import { replaceUnseen } from './clean.ts';

const escaped = (unseen: string): string =>
  Array.from(unseen.split(''), (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`).join('');

/** JSON on one line. What no terminal shows is written as an escape: it means the same to whoever parses the line. */
export const jsonLine = (value: unknown): string => replaceUnseen(JSON.stringify(value), escaped);
