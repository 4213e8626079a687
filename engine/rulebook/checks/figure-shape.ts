/** A figure's values must fit its axes: a table as deep as there are axes, number keys where the axis is a number. */
import type { Problem } from '../../problem.ts';
import type { Figure, FigureTable } from '../../types.ts';
import type { RulebookCheck } from './index.ts';

const faultIn = (figure: Figure, cell: number | FigureTable, depth: number): string | undefined => {
  const axis = figure.by[depth];
  if (typeof cell === 'number') return axis === undefined ? undefined : `a table by ${axis.fact}`;
  if (axis === undefined) return 'one number, as the figure has no more axes';
  const keys = Object.keys(cell);
  if (keys.length === 0) return 'at least one row';
  if (axis.between !== 'name' && keys.some((key) => !Number.isFinite(Number(key))))
    return `number keys for ${axis.fact}`;
  if (axis.between === 'line' && Object.values(cell).some((branch) => typeof branch !== 'number'))
    return `numbers only along ${axis.fact}, which comes last as it runs in straight lines`;
  for (const branch of Object.values(cell)) {
    const fault = faultIn(figure, branch, depth + 1);
    if (fault !== undefined) return fault;
  }
  return undefined;
};

export const figureShape: RulebookCheck = ({ book, documents }) =>
  Object.values(book.figures).flatMap((figure) =>
    figure.values.flatMap((value, index): Problem[] => {
      const document = documents.get(`figure:${figure.id}`);
      const wants = faultIn(figure, value.value, 0);
      if (document === undefined || wants === undefined) return [];
      const key = typeof value.value === 'number' ? 'value' : 'table';
      return [document.problemAt(['values', index, key], 'wrong-table', { wants })];
    }),
  );
