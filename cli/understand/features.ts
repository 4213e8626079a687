/** What a line is compared by: its stems, neighbouring pairs and ideas, with numbers, days and birds each under one name. */
import type { Line } from './find/all.ts';
import type { Span, TermSpan } from './spans.ts';

/** One thing a line has; `words` are the stems or names it stands on. */
export interface Feature {
  readonly id: string;
  readonly from: number;
  readonly to: number;
}

const nameOf = (span: Exclude<Span, TermSpan>): string =>
  span.kind === 'quantity' ? `<${span.dimension}>` : `<${span.kind}>`;

/** The idea that a term carries; causes and signs count by themselves and by their class. */
const ideasOf = (span: TermSpan, classOf: (span: TermSpan) => string | null): readonly string[] => {
  if (span.list === 'idea') return [span.id];
  const group = classOf(span);
  return group === null ? [span.list] : [span.list, `${span.list}-${group}`];
};

/** From so many numbers on, a line is a list of them. */
const fewest = 3;

/** A line as stems, with every number, day and bird under one name. */
const cellsOf = (line: Line): readonly Feature[] => {
  const cells: Feature[] = [];
  let at = 0;
  while (at < line.tokens.length) {
    const here = at;
    const span = line.spans.find((each) => each.kind !== 'term' && each.from === here);
    if (span !== undefined && span.kind !== 'term') {
      cells.push({ id: nameOf(span), from: span.from, to: span.to });
      at = span.to;
    } else {
      const token = line.tokens[here];
      if (token !== undefined && (!token.isMark || token.word === '?'))
        cells.push({ id: token.stem, from: here, to: here + 1 });
      at += 1;
    }
  }
  return cells;
};

/** What two lines have alike that say the same of other birds, numbers and days. */
export const wordingOf = (line: Line): string =>
  cellsOf(line)
    .filter(({ id }) => id !== '?')
    .map(({ id }) => id)
    .join(' ');

/** The features of a line, each once, in the order of the line. */
export const featuresOf = (line: Line, classOf: (span: TermSpan) => string | null): readonly Feature[] => {
  const cells = cellsOf(line);
  const pairs = cells.slice(1).map((cell, n) => ({
    id: `${cells[n]?.id} ${cell.id}`,
    from: cells[n]?.from ?? cell.from,
    to: cell.to,
  }));
  const ideas = line.spans.flatMap((span) =>
    span.kind === 'term'
      ? ideasOf(span, classOf).map((id) => ({ id: `=${id}`, from: span.from, to: span.to }))
      : [],
  );
  const values = line.spans.filter((span) => span.kind === 'number' || span.kind === 'quantity');
  const first = values[0];
  const list =
    values.length < fewest || first === undefined ? [] : [{ id: '<list>', from: first.from, to: first.to }];
  const seen = new Set<string>();
  return [...cells, ...pairs, ...ideas, ...list].filter(
    (each) => !seen.has(each.id) && seen.add(each.id).size > 0,
  );
};
