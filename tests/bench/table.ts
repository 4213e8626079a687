/** What every measurement needs: the median and other quantiles, and a table to print. */
import { cpus } from 'node:os';

/** The value below which this share of the numbers lies. */
export const quantile = (numbers: readonly number[], share: number): number => {
  const sorted = [...numbers].sort((one, other) => one - other);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? 0;
};

export const median = (numbers: readonly number[]): number => quantile(numbers, 0.5);

/** The machine and the Node that something was measured on. */
export const machine = (): string =>
  `Node ${process.version}, ${cpus().length} × ${cpus()[0]?.model ?? 'unknown'}`;

/** Prints a table; the first row is its head, the first column is text. */
export const printTable = (title: string, rows: readonly (readonly string[])[]): void => {
  const [head = [], ...body] = rows;
  const widths = head.map((_, column) => Math.max(...rows.map((row) => row[column]?.length ?? 0)));
  const line = (row: readonly string[]): string =>
    `| ${row.map((cell, at) => (at === 0 ? cell.padEnd(widths[at] ?? 0) : cell.padStart(widths[at] ?? 0))).join(' | ')} |`;
  const rule = `|${widths.map((width) => '-'.repeat(width + 2)).join('|')}|`;
  process.stdout.write(
    `${[`${title} (${machine()})`, '', line(head), rule, ...body.map(line), ''].join('\n')}\n`,
  );
};
