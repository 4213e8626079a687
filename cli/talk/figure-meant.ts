/** Which figure a keeper means by some words with an amount: `if the ground rested 60 days` → pasture/ground-rest. */
import { factsBehind, known } from '../../engine/index.ts';
import { leavesOf } from '../../engine/rulebook/conditions.ts';
import type { Quantity, Rulebook } from '../../engine/types.ts';
import { dimensionOf, readQuantity } from '../../engine/units.ts';
import { stemOf } from '../understand/stem.ts';

export interface FigureMeant {
  readonly figure: string;
  readonly quantity: Quantity;
}

/** Figures that a question's rules, or the facts behind them, read. */
const figuresBehind = (book: Rulebook, question: string): readonly string[] => {
  const behind = factsBehind(book, question);
  const compared = Object.values(book.rules)
    .filter((rule) => rule.question === question)
    .flatMap((rule) => leavesOf(rule.when).flatMap(({ leaf }) => leaf.figure ?? []));
  const read = known.facts.filter(({ id }) => behind.has(id)).flatMap(({ figures }) => figures);
  return [...new Set([...compared, ...read])].sort();
};

const amountIn = (book: Rulebook, words: string): Quantity | undefined => {
  for (const [found] of words.matchAll(/[-+−]?\d+(?:\.\d+)?\s*(?:°\s*)?[\p{L}%²³]+/gu)) {
    const quantity = readQuantity(book.units, found.replace(/°\s*/, ''));
    if (quantity !== undefined) return quantity;
  }
  return undefined;
};

/** The one figure behind a question whose name the words say and whose dimension the amount has; undefined where none or several fit. */
export const figureMeant = (book: Rulebook, question: string, words: string): FigureMeant | undefined => {
  const quantity = amountIn(book, words);
  if (quantity === undefined) return undefined;
  const said = new Set(
    words
      .toLowerCase()
      .split(/[^a-z]+/)
      .map(stemOf),
  );
  const dimension = dimensionOf(book.units, quantity.unit);
  const scored = figuresBehind(book, question).flatMap((id) => {
    const unit = book.figures[id]?.unit;
    const name = (id.split('/')[1] ?? id).split('-').map(stemOf);
    const hits = name.filter((stem) => said.has(stem)).length;
    const fits = unit !== undefined && dimensionOf(book.units, unit) === dimension;
    // Half of a name may be of many figures: more than that must be said.
    return fits && hits * 2 > name.length ? [{ figure: id, hits: hits / name.length }] : [];
  });
  const best = Math.max(0, ...scored.map(({ hits }) => hits));
  const [first, ...others] = scored.filter(({ hits }) => hits === best);
  return first === undefined || others.length > 0 ? undefined : { figure: first.figure, quantity };
};
