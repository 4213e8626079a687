/** A grid of characters to draw on. */

export interface Canvas {
  /** Puts a character; one outside the grid is left out. Row 0 is the top, column 0 the left. */
  put(row: number, column: number, mark: string): void;
  lines(): readonly string[];
}

/** An empty canvas. */
export const makeCanvas = (rows: number, columns: number): Canvas => {
  const grid = Array.from({ length: rows }, () => Array.from({ length: columns }, () => ' '));
  return {
    put: (row, column, mark) => {
      const cells = grid[row];
      if (cells !== undefined && column >= 0 && column < columns) cells[column] = mark;
    },
    lines: () => grid.map((cells) => cells.join('').trimEnd()),
  };
};
