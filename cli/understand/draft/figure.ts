/** The keeper's own value for a figure, from words: its id, a number, and the reason after `because`. */
import { spansOf } from '../spans.ts';
import { type Build, known, lacking, numbers, written } from './told.ts';

export const buildFigure: Build = (told) => {
  const said = told.words.toLowerCase();
  const id = Object.keys(told.about.book.figures)
    .filter((each) => said.includes(each))
    .sort((one, other) => other.length - one.length)[0];
  const stated = spansOf(told.line.spans, 'quantity')[0];
  const bare = numbers(told)[0];
  const unit = id === undefined ? undefined : told.about.book.figures[id]?.unit;
  const value =
    stated !== undefined
      ? written(stated.value, stated.unit)
      : bare !== undefined && unit !== undefined
        ? written(bare.value, unit)
        : null;
  const reason = /\b(?:because|since|as|reason)\b:?\s*(.+)$/i.exec(told.words)?.[1]?.trim() ?? null;
  const fields = { figure: id ?? null, value, reason };
  return {
    fields: known(fields),
    missing: lacking(fields, 'figure', 'value', 'reason'),
    assumed: [],
    // An age tells which birds of a table are meant, not when they were so old.
    keepsDay: spansOf(told.line.spans, 'age').length > 0,
  };
};
