/** The fingerprint by which an undo or a correction knows the line that it was meant for. */
import { createHash } from 'node:crypto';

/** First 8 hex digits of the SHA-256 of the raw line, without its line end. */
export const printOf = (raw: string): string =>
  createHash('sha256').update(raw, 'utf8').digest('hex').slice(0, 8);
