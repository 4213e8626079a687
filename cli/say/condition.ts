/** The conditions of a rule in words, for somebody who wants to read the rule itself. */
import type { Condition, Leaf } from '../../engine/types.ts';
import { listed } from './listed.ts';
import { nameOf } from './names.ts';
import { sayValue } from './quantity.ts';
import type { Speech } from './speech.ts';

const operators: Readonly<Record<string, string>> = {
  'less-than': 'is less than',
  'at-most': 'is at most',
  'more-than': 'is more than',
  'at-least': 'is at least',
  is: 'is',
  'is-not': 'is not',
  'one-of': 'is one of',
  'none-of': 'is none of',
  known: 'is known',
};

/** A figure's number on a page: the latest one, or what its table goes by. */
export const sayFigureBriefly = (speech: Speech, id: string): string => {
  const figure = speech.book.figures[id];
  const latest = figure?.values.toSorted((a, b) => (a.from < b.from ? -1 : 1)).at(-1)?.value;
  if (figure === undefined || latest === undefined) return id;
  if (typeof latest === 'number') return sayValue(speech, { value: latest, unit: figure.unit }, id);
  return `by ${listed(figure.by.map(({ fact }) => nameOf(speech, fact)))}`;
};

const sayChoice = (value: string | number | boolean): string =>
  value === true ? 'so' : value === false ? 'not so' : String(value).replaceAll('-', ' ');

const saySide = (speech: Speech, { figure, other, value }: Leaf): string => {
  if (figure !== null)
    return `${sayFigureBriefly(speech, figure)} (${speech.book.figures[figure]?.description ?? figure})`;
  if (other !== null) return nameOf(speech, other);
  if (value === null) return '';
  return typeof value === 'object' ? listed(value.map(sayChoice)) : sayChoice(value);
};

const sayLeaf = (speech: Speech, leaf: Leaf): string =>
  `${nameOf(speech, leaf.fact)}: ${operators[leaf.operator] ?? leaf.operator} ${saySide(speech, leaf)}`.trimEnd();

const joined = (speech: Speech, list: readonly Condition[], word: string): string =>
  list
    .map((each) => ('fact' in each ? sayLeaf(speech, each) : `(${sayWhole(speech, each)})`))
    .join(`; ${word} `);

const sayWhole = (speech: Speech, condition: Condition): string => {
  if ('all' in condition) return joined(speech, condition.all, 'and');
  if ('any' in condition) return joined(speech, condition.any, 'or');
  if ('not' in condition) return `not (${sayWhole(speech, condition.not)})`;
  return sayLeaf(speech, condition);
};

/** What must hold, one line for each condition that stands by itself. */
export const sayConditions = (speech: Speech, condition: Condition): readonly string[] =>
  'all' in condition ? condition.all.map((each) => sayWhole(speech, each)) : [sayWhole(speech, condition)];
