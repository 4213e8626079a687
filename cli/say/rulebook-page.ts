/** A rule or a figure whole, as a person would read it: what it says, when, why, from whom, since when, and what rests on it. */
import type { Figure, FigureTable, OwnFigure, Rule } from '../../engine/types.ts';
import { sayConditions } from './condition.ts';
import { listed } from './listed.ts';
import { nameOf } from './names.ts';
import { capital } from './phrase.ts';
import { sayAsTyped, sayDay, sayValue } from './quantity.ts';
import { saySourceInFull } from './source.ts';
import type { Speech } from './speech.ts';
import type { Token } from './tokens.ts';
import { figuresUnder, questionsUsing } from './uses.ts';

const detail = (text: string): Token => ({ t: 'detail', text });

/** A wording with the names of what fills it in brackets. */
export const sayUnfilled = (speech: Speech, template: string): string =>
  template.replace(
    /\{([^}]+)\}/g,
    (_, name: string) =>
      `[${name.includes('/') ? (speech.book.figures[name]?.description ?? name) : nameOf(speech, name)}]`,
  );

const offerOf = ({ book }: Speech, question: string): string => book.questions[question]?.offer ?? question;

/** How a rule speaks, by what it gives. */
const gives: Readonly<Record<Rule['gives'], string>> = {
  yes: 'It says yes',
  no: 'It says no',
  'cannot-say': 'It says that nothing can be said',
  amount: 'It gives an amount',
  list: 'It gives a list',
  caution: 'It warns',
  step: 'It sets a task',
  remark: 'It adds a remark',
};

const named = (id: string): string => (id.split('/')[1] ?? id).replaceAll('-', ' ');

/** Why a rule is right, as one whole sentence. */
export const sayWhyRight = ({ whyRight }: Rule): string => `${whyRight.replace(/\.$/, '')}.`;

/** A rule in full. */
export const sayRulePage = (speech: Speech, rule: Rule): readonly Token[] => [
  {
    t: 'heading',
    text: `${rule.own === undefined ? 'A rule' : 'Your rule'} on ${offerOf(speech, rule.question)}`,
  },
  { t: 'claim', text: `“${capital(sayUnfilled(speech, rule.says))}”` },
  detail(
    `${gives[rule.gives]} when ${sayConditions(speech, rule.when).length > 1 ? 'all of this holds' : 'this holds'}:`,
  ),
  ...sayConditions(speech, rule.when).map((text) => detail(`– ${text}`)),
  detail(`Why: ${sayWhyRight(rule)}`),
  detail(saySourceInFull(speech, rule.source)),
  ...(rule.outranks.length === 0
    ? []
    : [detail(`Where several hold, it goes before: ${listed(rule.outranks.map(named))}.`)]),
  ...(rule.own?.published
    ? [detail(`It stands in place of the published rule: “${sayUnfilled(speech, rule.own.published.says)}”`)]
    : []),
  ...figuresUnder(speech.book, rule).map(
    (figure): Token => ({ t: 'figure', text: `${figure.description}, ${figure.id}` }),
  ),
  detail(`Its name: ${rule.id}.`),
];

/** A key of an axis in words: `from 28 days`, `at 56 days`, `slow`. */
export const sayKey = (speech: Speech, { by }: Figure, depth: number, key: string): string => {
  const axis = by[depth];
  if (axis === undefined || axis.between === 'name') return key.replaceAll('-', ' ');
  const at = axis.unit === null ? key : sayAsTyped(speech, { value: Number(key), unit: axis.unit });
  return axis.between === 'step' ? `from ${at}` : `at ${at}`;
};

const sayCells = (speech: Speech, figure: Figure, cell: number | FigureTable, depth = 0): string => {
  if (typeof cell === 'number') return sayValue(speech, { value: cell, unit: figure.unit }, figure.id);
  const isLast = depth === figure.by.length - 1;
  return Object.entries(cell)
    .map(([key, inner]) => {
      const said = sayCells(speech, figure, inner, depth + 1);
      return `${sayKey(speech, figure, depth, key)}: ${isLast || typeof inner === 'number' ? said : `(${said})`}`;
    })
    .join(', ');
};

const sayAxes = (speech: Speech, { by }: Figure): string =>
  by.length === 0
    ? ''
    : `, by ${listed(by.map(({ fact }) => nameOf(speech, fact)))}${by.at(-1)?.between === 'line' ? ' and on straight lines between' : ''}`;

const sayPublished = (speech: Speech, figure: Figure): Token[] =>
  figure.values
    .toSorted((a, b) => (a.from < b.from ? -1 : 1))
    .flatMap(({ from, source, value, note }): Token[] => [
      {
        t: 'figure',
        text: `since ${sayDay(from, speech.today)}${sayAxes(speech, figure)}: ${sayCells(speech, figure, value)}`,
      },
      detail(saySourceInFull(speech, source)),
      ...(note === null ? [] : [detail(note)]),
    ]);

/** What the keeper set of a figure, oldest first. */
const saySet = (speech: Speech, figure: Figure, own: readonly OwnFigure[]): Token[] =>
  own
    .filter((each) => each.figure === figure.id)
    .map(({ on, line, quantity, at, group, reason }) => {
      const where = [
        ...(at === undefined ? [] : [` ${cellInWords(speech, figure, at)}`]),
        ...(group === undefined ? [] : [` for the ${group}`]),
      ].join('');
      const why = reason === null ? '' : `, because ${reason}`;
      return {
        t: 'figure',
        text: `yours${where}, since ${sayDay(on, speech.today)}: ${sayAsTyped(speech, quantity)}${why} (line ${line})`,
      };
    });

/** A cell of a table by its keys: `from 28 days`, `slow, at 56 days`. */
export const cellInWords = (speech: Speech, figure: Figure, cell: string): string =>
  cell
    .split('/')
    .map((key, depth) => sayKey(speech, figure, depth, key))
    .join(', ');

/** A figure in full, with what the keeper set of it. */
export const sayFigurePage = (
  speech: Speech,
  figure: Figure,
  own: readonly OwnFigure[] = [],
): readonly Token[] => {
  const users = questionsUsing(speech.book, figure.id).map((id) => offerOf(speech, id));
  const before = figure.own?.published ?? null;
  return [
    { t: 'heading', text: `${figure.own === undefined ? 'A figure' : 'Your figure'}: ${figure.description}` },
    ...sayPublished(speech, figure),
    ...(before === null
      ? []
      : [detail('It stands in place of the published figure:'), ...sayPublished(speech, before)]),
    ...saySet(speech, figure, own),
    detail(
      users.length === 0 ? 'No answer rests on it directly.' : `Answers that rest on it: ${listed(users)}.`,
    ),
    detail(`Its name: ${figure.id}.`),
  ];
};
