/** A figure of the keeper's own, told in words: which figure, which cell of its table, for which birds, and why. */
import { cellNamesOf } from '../../engine/rulebook/cells.ts';
import type { Figure, Quantity } from '../../engine/types.ts';
import { dimensionOf, readQuantity } from '../../engine/units.ts';
import { findNumbers } from '../understand/find/number.ts';
import { stemOf } from '../understand/stem.ts';
import { tokenise } from '../understand/tokens.ts';
import type { Draft, Reading } from '../understand/types.ts';
import { amountsIn, cellMeant } from './cell-meant.ts';
import { type Flock, momentOn } from './flock.ts';
import { searchBook } from './search-book.ts';

/** Said in place of a reason by somebody who has none to give. */
const noReason = /^(?:skip|none|no|nope|no reason|nothing|just because|because|never ?mind|-+|n\/?a)[.!]?$/i;

/** How much it speaks for a table that it goes by what another amount in the words measures, such as an age. */
const axisWeight = 2;
/** How much it speaks for a figure that its measure is said in full, such as "birds an hour". */
const measureWeight = 6;
const mostOffered = 5;

/** How much it speaks for a figure that its whole name is said: "dressing" is no "dressing-high". */
const nameWeight = 2;

const withPer = (text: string): string =>
  text
    .toLowerCase()
    .replace(/\bhrs?\b/g, 'hour')
    .replace(/\b(?:in )?(?:an?|each|every)\b/g, 'per');

/** The share of a figure's own name that the words say. */
const shareOfName = (id: string, words: string): number => {
  const said = new Set(
    words
      .toLowerCase()
      .split(/[^a-z]+/)
      .map(stemOf),
  );
  const name = (id.split('/')[1] ?? id).split('-').map(stemOf);
  return name.filter((stem) => said.has(stem)).length / name.length;
};

/** Whether the words name the measure of a figure; one of a single word, such as days, is said of too much to count. */
const saysMeasure = (flock: Flock, figure: Figure, words: string): boolean => {
  const measure = withPer(flock.book.units.byId[figure.unit]?.many ?? '').trim();
  return measure.includes(' ') && withPer(words).includes(measure);
};

/** Figures that the words may be about, of those that measure what an amount in them measures; likeliest first. */
const figuresMeant = (
  flock: Flock,
  words: string,
  amounts: readonly Quantity[],
): readonly { readonly id: string; readonly score: number }[] => {
  const { book } = flock;
  const measure = (unit: string): string => dimensionOf(book.units, unit);
  const said = amounts.map(({ unit }) => measure(unit));
  // The amount is the new value: it must not speak for figures that have it already.
  const bare = words.replace(/\d+(?:\.\d+)?/g, ' ');
  const found = new Map(
    searchBook(book, bare, 'us').flatMap(({ kind, id, score }) =>
      kind === 'figure' ? [[id, score] as const] : [],
    ),
  );
  // The search passes over the words of measures, so a figure known by nothing else is not among what it found.
  const byMeasure = Object.values(book.figures).filter((each) => saysMeasure(flock, each, words));
  return [...new Set([...found.keys(), ...byMeasure.map(({ id }) => id)])]
    .flatMap((id) => {
      const figure = book.figures[id];
      const score = found.get(id) ?? 0;
      const isNamed = figure !== undefined && saysMeasure(flock, figure, words);
      if (figure === undefined || (said.length > 0 && !isNamed && !said.includes(measure(figure.unit))))
        return [];
      const others = said.filter((each) => each !== measure(figure.unit));
      const entered = figure.by.filter(({ unit }) => unit !== null && others.includes(measure(unit))).length;
      const named = isNamed ? measureWeight : 0;
      return [{ id, score: score + entered * axisWeight + named + shareOfName(id, words) * nameWeight }];
    })
    .sort((a, b) => b.score - a.score || (a.id < b.id ? -1 : 1));
};

const figureMeant = (flock: Flock, words: string, amounts: readonly Quantity[]): string | null => {
  const [best, next] = figuresMeant(flock, words, amounts);
  return best === undefined || best.score === next?.score ? null : best.id;
};

/** What helps to answer the field asked for: figures that may be meant, or the measure of the value. */
export const figureHints = (
  flock: Flock,
  { kind, fields }: Draft,
  field: string,
  words: string,
): readonly string[] => {
  if (kind !== 'figure') return [];
  const { figures } = flock.book;
  if (field === 'figure')
    return figuresMeant(flock, words, amountsIn(flock, words))
      .slice(0, mostOffered)
      .map(({ id }) => `${id}: ${figures[id]?.description ?? ''}`);
  const figure = typeof fields.figure === 'string' ? figures[fields.figure] : undefined;
  const unit = figure === undefined ? undefined : flock.book.units.byId[figure.unit];
  return field === 'value' && figure !== undefined && unit !== undefined
    ? [`${figure.id} is published in ${unit.many.trim()}`]
    : [];
};

const textOf = (value: unknown): string | null => (typeof value === 'string' ? value : null);

const figureOf = (flock: Flock, said: string | null, words: string): Figure | undefined => {
  const { figures } = flock.book;
  if (said !== null && Object.hasOwn(figures, said)) return figures[said];
  // Asked for, it may be said without its value.
  const id = figureMeant(flock, said ?? words, said === null ? amountsIn(flock, words) : []);
  return id === null ? undefined : figures[id];
};

const measures = (flock: Flock, figure: Figure | undefined, { unit }: Quantity): boolean =>
  figure !== undefined && dimensionOf(flock.book.units, unit) === dimensionOf(flock.book.units, figure.unit);

/** The value as the ledger has it: what was stated, or the first amount that measures what the figure measures. */
const valueTold = (
  flock: Flock,
  figure: Figure | undefined,
  stated: string | null,
  words: string,
): string | null => {
  const said = readQuantity(flock.book.units, stated ?? '');
  if (said !== undefined && (figure === undefined || measures(flock, figure, said))) return stated;
  // A number apart from its measure, as in "birds an hour to 9", is the value where it is the only one.
  const amounts = amountsIn(flock, words);
  const amount = amounts.find((each) => measures(flock, figure, each));
  const [number, ...others] = findNumbers(tokenise(words)).filter(({ value }) => value > 0);
  const isLone = number !== undefined && others.length === 0;
  if (figure !== undefined && isLone && (saysMeasure(flock, figure, words) || amounts.length === 0))
    return `${number.value} ${figure.unit}`;
  return amount === undefined ? null : `${amount.value} ${amount.unit}`;
};

/** The one group that the words name before any reason; `slow` in "our grass is slow" names none. */
const groupOf = ({ fields }: Draft, words: string, { groups }: Reading): string | undefined => {
  const [said = ''] = words.split(/\b(?:because|since|as)\b/i);
  const stems = new Set(
    said
      .toLowerCase()
      .split(/[^a-z0-9]+/)
      .map(stemOf),
  );
  const named = groups.filter((name) =>
    name
      .toLowerCase()
      .split(/\s+/)
      .some((word) => stems.has(stemOf(word))),
  );
  return textOf(fields.group) ?? (named.length === 1 ? named[0] : undefined);
};

const atOf = (
  flock: Flock,
  figure: Figure | undefined,
  said: string | null,
  words: string,
  group: string | undefined,
): string | undefined => {
  const cells = figure === undefined ? [] : cellNamesOf(figure);
  if (figure === undefined || cells.length === 0) return undefined;
  if (said !== null && cells.includes(said)) return said;
  const { groups } = flock.engine().state(momentOn(flock, flock.today));
  const amounts = amountsIn(flock, said ?? words);
  const value = said === null ? amounts.find((each) => measures(flock, figure, each)) : undefined;
  return cellMeant(flock, figure, {
    words: said ?? words,
    amounts: amounts.filter((each) => each !== value),
    kind: groups.find(({ name }) => name === group)?.kind,
    isBare: said !== null,
  });
};

/** The draft with all that its words tell of the figure, and what is still to be asked for. Other records stay as they are. */
export const figureTold = (flock: Flock, draft: Draft, words: string, reading: Reading): Draft => {
  if (draft.kind !== 'figure') return draft;
  const figure = figureOf(flock, textOf(draft.fields.figure), words);
  const value = valueTold(flock, figure, textOf(draft.fields.value), words);
  const group = groupOf(draft, words, reading);
  const at = atOf(flock, figure, textOf(draft.fields.at), words, group);
  const reason =
    textOf(draft.fields.reason)
      ?.replace(/^because\s+/i, '')
      .trim() ?? null;
  const isGiven = reason !== null && !noReason.test(reason);
  const isTable = figure !== undefined && figure.by.length > 0;
  return {
    ...draft,
    fields: {
      ...(figure === undefined ? {} : { figure: figure.id }),
      ...(at === undefined ? {} : { at }),
      ...(value === null ? {} : { value }),
      ...(group === undefined ? {} : { group }),
      ...(isGiven ? { reason } : {}),
    },
    missing: [
      ...(figure === undefined ? ['figure'] : []),
      ...(isTable && at === undefined ? ['at'] : []),
      ...(value === null ? ['value'] : []),
      ...(reason === null ? ['reason'] : []),
    ],
  };
};
