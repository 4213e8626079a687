/** Tokens as lines of plain text, for pipes, files and terminals that cannot chat. */
import { layOut } from './lay-out.ts';
import type { Token } from './tokens.ts';

/** One text per row, no colour and no trailing spaces; `width` in terminal columns, `Infinity` when there is no window. */
export const plain = (tokens: readonly Token[], width: number): readonly string[] =>
  layOut(tokens, width).map((row) =>
    row
      .map((span) => span.text)
      .join('')
      .trimEnd(),
  );
