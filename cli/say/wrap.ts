/** Breaks a text into rows that fit, counted in terminal columns and never inside a character. */
import { columnsOf } from './columns.ts';

const breakWord = (word: string, width: number): readonly string[] => {
  if (columnsOf(word) <= width) return [word];
  const pieces: string[] = [];
  let piece = '';
  for (const { segment } of new Intl.Segmenter().segment(word)) {
    if (piece !== '' && columnsOf(piece + segment) > width) {
      pieces.push(piece);
      piece = '';
    }
    piece += segment;
  }
  return [...pieces, piece];
};

/**
 * Rows of at most `width` columns, broken at spaces; a word longer than a row is cut. Rows after the first are indented
 * by `hang` columns. A non-breaking space keeps a number with its unit. Always at least one row.
 */
export const wrap = (text: string, width: number, hang = 0): readonly string[] => {
  const rows: string[] = [];
  const indent = ' '.repeat(hang);
  let row = '';
  for (const word of text.split(/ +/).filter((each) => each !== '')) {
    for (const piece of breakWord(word, width - hang)) {
      const joined = row.trim() === '' ? row + piece : `${row} ${piece}`;
      if (columnsOf(joined) <= width) {
        row = joined;
      } else {
        rows.push(row);
        row = indent + piece;
      }
    }
  }
  return [...rows, row];
};
