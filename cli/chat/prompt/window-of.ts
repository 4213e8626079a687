/** Which part of a long line is shown on the one row of the prompt. */
import stringWidth from 'string-width';

/** The row to draw and the column of the cursor in it, both in terminal columns. */
export interface LineWindow {
  readonly text: string;
  readonly column: number;
}

const widthOf = (graphemes: readonly string[]): number => stringWidth(graphemes.join(''));

/**
 * The graphemes around the cursor that fit `width` columns, the cursor's own included; `cut` marks where the line goes on.
 * The cursor keeps a third of the row to its right, so that the words it moves into are in sight.
 */
export const windowOf = (line: readonly string[], at: number, width: number, cut: string): LineWindow => {
  if (widthOf(line) < width) return { text: line.join(''), column: widthOf(line.slice(0, at)) };
  const ahead = at === line.length ? 1 : Math.max(2, Math.floor(width / 3));
  const room = Math.max(1, width - ahead - cut.length);
  let start = at;
  while (start > 0 && widthOf(line.slice(start - 1, at)) <= room) start -= 1;
  const lead = start === 0 ? '' : cut;
  let end = at;
  while (end < line.length && widthOf([lead, ...line.slice(start, end + 1)]) <= width - cut.length) end += 1;
  // The cut mark stands on the last columns, which are kept free here.
  const text = lead + line.slice(start, end).join('') + (end < line.length ? cut : '');
  return { text, column: widthOf([lead, ...line.slice(start, at)]) };
};
