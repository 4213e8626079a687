/** The record of an own figure in words: the figure by what it is, the cell by its keys, and the published number beside it. */
import { cellNamesOf } from '../../engine/rulebook/cells.ts';
import type { Figure, FigureTable } from '../../engine/types.ts';
import { sayValue } from './quantity.ts';
import { cellInWords } from './rulebook-page.ts';
import { saySource } from './source.ts';
import type { Speech } from './speech.ts';
import type { Token } from './tokens.ts';

/** So many cells can be read at once; a larger table is told by its first and last ones. */
const mostCells = 12;

const latest = ({ values }: Figure) => values.toSorted((a, b) => (a.from < b.from ? -1 : 1)).at(-1);

const inTable = (cell: number | FigureTable | undefined, path: readonly string[]): number | undefined => {
  if (typeof cell === 'number') return path.length === 0 ? cell : undefined;
  const [key = '', ...rest] = path;
  return cell !== undefined && Object.hasOwn(cell, key) ? inTable(cell[key], rest) : undefined;
};

/** The published number that an own one takes the place of: `365 days, common practice`. */
const sayPublished = (speech: Speech, figure: Figure, at: unknown): string | null => {
  const value = latest(figure);
  const number = inTable(value?.value, typeof at === 'string' ? at.split('/') : []);
  return value === undefined || number === undefined
    ? null
    : `${sayValue(speech, { value: number, unit: figure.unit }, figure.id)} (${saySource(speech, value.source)})`;
};

/** The fields as they are read back. */
export const figureFieldsInWords = (
  speech: Speech,
  fields: Readonly<Record<string, unknown>>,
): Readonly<Record<string, unknown>> => {
  const figure = typeof fields.figure === 'string' ? speech.book.figures[fields.figure] : undefined;
  if (figure === undefined) return fields;
  return {
    ...fields,
    figure: figure.description,
    at: typeof fields.at === 'string' ? cellInWords(speech, figure, fields.at) : undefined,
    published: sayPublished(speech, figure, fields.at),
  };
};

/** Which cells there are, where one of them is asked for. */
export const sayCells = (
  speech: Speech,
  { kind, fields }: { readonly kind: string; readonly fields: Readonly<Record<string, unknown>> },
  field: string,
): readonly Token[] => {
  const figure = typeof fields.figure === 'string' ? speech.book.figures[fields.figure] : undefined;
  if (kind !== 'figure' || field !== 'at' || figure === undefined) return [];
  const names = cellNamesOf(figure);
  const shown = names.slice(0, mostCells).map((name) => cellInWords(speech, figure, name));
  const more =
    names.length > mostCells ? `, and so on up to ${cellInWords(speech, figure, names.at(-1) ?? '')}` : '';
  return [{ t: 'detail', text: `There are: ${shown.join('; ')}${more}.` }];
};
