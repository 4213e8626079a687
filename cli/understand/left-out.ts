/** What a line tells besides its records: clauses of which nothing was taken, so that nothing said is lost without a word. */
import type { Line } from './find/all.ts';
import { weighForm } from './form.ts';
import type { NumberSpan, Span } from './spans.ts';
import { type Clause, cutClauses, type ReadClause } from './split.ts';
import { isAhead } from './tell.ts';
import type { About, Draft } from './types.ts';

/** Kinds that keep all their words, so that nothing is left out of them. */
const keepingWords = new Set(['note']);

const fewestAsked = 4;

/** What a clause of harm is about by itself. */
const harmful = new Set(['tell:loss', 'tell:sign']);

/** Ideas of a loss, beside signs. */
const losses = new Set(['death', 'dead-found']);

/** Words that make of a loss or a sign that there was none. */
const denials = new Set('no not none never nothing nobody without neither nor free fine'.split(' '));

/** Words that make of a number no count: `one of them`, `number 2`, `the first 2`, `5 minutes`. */
const naming = new Set(['number', 'no', '#', 'lot', 'pen', 'tank', 'ark', 'shed', 'batch', 'box']);
const elsewhere = new Set(
  'minute min hour hr second day night week month year time o past clock people man lad woman dog kid mile trip cup tea'.split(
    ' ',
  ),
);

/** `not 20`, `because they were limping`: what is taken back, and what only explains. */
const isAside = ({ tokens: [first] }: Line): boolean =>
  ['not', 'because', 'since', 'as'].includes(first?.word ?? '');

const isCount = ({ tokens }: Line, span: NumberSpan): boolean =>
  span.value !== 0 &&
  !(span.value <= 1 && span.digits === null) &&
  !naming.has(tokens[span.from - 1]?.word ?? '') &&
  !elsewhere.has(tokens[span.to]?.stem ?? '');

/** Amounts that a clause says, each as the numbers it may stand for in a record; hundredths of money are its sum. */
const amountsIn = (line: Line): readonly number[] =>
  line.spans.flatMap((span): readonly number[] => {
    if (span.kind === 'number') return isCount(line, span) ? [Math.abs(span.value)] : [];
    // a run of time says how long and not how much
    if (span.kind === 'quantity') return span.dimension === 'time' ? [] : [span.value];
    if (span.kind === 'money') return [span.cents / 100];
    return span.kind === 'size' ? span.sides : [];
  });

/** A cause alone is none: `fed it to the dogs`, `off heat`. */
const tellsHarm = (span: Span): boolean =>
  span.kind === 'term' && (span.list === 'sign' || (span.list === 'idea' && losses.has(span.id)));

/** A question of some words; `right?` behind a record asks nothing. */
const isWholeQuestion = (line: Line): boolean =>
  isAsked(line) && weighForm(line) > 0 && line.tokens.filter(({ isMark }) => !isMark).length >= fewestAsked;

const isDenied = ({ tokens }: Line): boolean => tokens.some(({ word }) => denials.has(word));

const isAsked = ({ tokens }: Line): boolean => tokens.some(({ word }) => word === '?');

/** All numbers in the fields of some drafts: as they are, in text such as `25 lb`, and how long a list is. */
const numbersOf = (value: unknown, name = ''): readonly number[] => {
  if (typeof value === 'number') return [value];
  if (Array.isArray(value)) return [value.length, ...value.flatMap((each) => numbersOf(each))];
  if (typeof value !== 'string' || name === 'words' || /^\d{4}-\d{2}-\d{2}/.test(value)) return [];
  return [...value.matchAll(/\d+(?:\.\d+)?/g)].map(([digits]) => Number(digits));
};

/** Drafts in a form to compare, without the keeper's own words, which change with every clause. */
const plainly = (drafts: readonly Draft[]): readonly string[] =>
  drafts.map(({ kind, on, fields: { words: _words, ...fields } }) => JSON.stringify([kind, on, fields]));

/** What the drafts hold: their numbers, and how many birds there are of the groups they speak of. */
const heldBy = (drafts: readonly Draft[], groups: About['groups']): ReadonlySet<number> =>
  new Set([
    ...drafts.flatMap(({ fields }) =>
      Object.entries(fields).flatMap(([name, value]) => numbersOf(value, name)),
    ),
    ...groups
      .filter(({ name }) => drafts.some(({ fields }) => fields.group === name))
      .map(({ alive }) => alive),
  ]);

/** Whether a clause says something that a record should have: an amount none of them holds, or a loss or sign without one. */
const saysMore = (
  { line: clause, matches }: Clause,
  held: ReadonlySet<number>,
  keepsSigns: boolean,
): boolean => {
  if (isAside(clause)) return false;
  const amounts = amountsIn(clause);
  if (amounts.length === 0) {
    const isHeard = keepsSigns || isDenied(clause) || isAhead(clause);
    return !isHeard && clause.spans.some(tellsHarm) && harmful.has(matches[0]?.topic.id ?? '');
  }
  const sum = amounts.reduce((all, amount) => all + amount, 0);
  return !held.has(sum) && !amounts.some((amount) => held.has(amount));
};

/**
 * The clauses, in the keeper's words, that ask, or say an amount, a sign or a loss of which no draft took anything: no field
 * holds it, and the same drafts come of the line without it. `retell` makes the drafts of other words in the same way.
 */
export const findLeftOut = (
  words: string,
  line: Line,
  drafts: readonly Draft[],
  about: Pick<About, 'groups'>,
  read: ReadClause,
  retell: (words: string) => readonly Draft[],
): readonly string[] => {
  const texts = cutClauses(words, line.tokens, line.spans);
  // what is asked back for may stand in any clause
  const isOpen = drafts.some(
    ({ kind, missing }) => keepingWords.has(kind) || missing.some((name) => name !== 'group'),
  );
  if (texts.length < 2 || drafts.length === 0 || isOpen) return [];
  const held = heldBy(drafts, about.groups);
  const keepsSigns = drafts.some(({ kind }) => kind === 'sign');
  let end = 0;
  return texts.filter((text) => {
    const from = words.indexOf(text, end);
    end = from + text.length;
    const clause = read(text);
    if (isAsked(clause.line)) return isWholeQuestion(clause.line) && amountsIn(clause.line).length === 0;
    if (!saysMore(clause, held, keepsSigns)) return false;
    const without = plainly(retell(`${words.slice(0, from)}${words.slice(end)}`));
    return plainly(drafts).every((draft) => without.includes(draft));
  });
};
