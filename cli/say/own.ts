/** What is the keeper's own in an answer: own figures beside the published ones, and own rules that had a say. */
import type { Problem } from '../../engine/problem.ts';
import type { Answer, FigureUse } from '../../engine/types.ts';
import { capital } from './phrase.ts';
import { sayProblem } from './problem.ts';
import { sayDay, sayValue } from './quantity.ts';
import { saySource } from './source.ts';
import type { Speech } from './speech.ts';
import type { Token } from './tokens.ts';

/** `yours: 60 days, since Sunday 3 May; published: 365 days, common practice`. */
export const sayOwnFigure = (
  speech: Speech,
  { id, value, unit, from, source, published }: FigureUse,
): string => {
  const yours = sayValue(speech, { value, unit }, id);
  const since = source.startsWith('line ')
    ? `, since ${sayDay(from, speech.today)}`
    : `, from your rule file, ${saySource(speech, source)}`;
  const theirs =
    published === undefined
      ? 'nothing is published'
      : `published: ${sayValue(speech, published, id)}, ${saySource(speech, published.source)}`;
  return `yours: ${yours}${since}; ${theirs}`;
};

/** Own figures that went into an answer, each once. */
const ownFiguresIn = (answer: Answer): readonly FigureUse[] => {
  const used = [
    ...answer.parts.flatMap((part) => part.reasons.flatMap(({ figure }) => figure ?? [])),
    ...answer.workings.flatMap((step) => step.figures),
  ].filter((use) => use.own);
  return used.filter(
    (use, index) => used.findIndex(({ id, value }) => id === use.id && value === use.value) === index,
  );
};

/** Own rules that speak in an answer: that decided, gave a reason, a task or something to mind. */
const ownRulesIn = ({ book }: Speech, answer: Answer): readonly string[] => {
  const speaking = answer.parts.flatMap((part) => [
    ...(part.rule === null ? [] : [part.rule]),
    ...part.reasons.map(({ rule }) => rule),
    ...part.steps.map(({ rule }) => rule),
    ...part.cautions.map(({ rule }) => rule),
    ...part.remarks.map(({ rule }) => rule),
  ]);
  return [...new Set(speaking)].filter((id) => book.rules[id]?.own !== undefined);
};

/** One line for each own rule and figure behind an answer; none where all of it is published. */
export const sayOwn = (speech: Speech, answer: Answer): readonly Token[] => [
  ...ownRulesIn(speech, answer).map(
    (id): Token => ({
      t: 'detail',
      text: `Your rule: ${speech.book.rules[id]?.whyRight ?? id} (${id}${speech.book.rules[id]?.own?.published ? ', in place of the published one' : ''}).`,
    }),
  ),
  ...ownFiguresIn(answer).map(
    (use): Token => ({
      t: 'figure',
      text: `${capital(speech.book.figures[use.id]?.description ?? use.id)} – ${sayOwnFigure(speech, use)}.`,
    }),
  ),
];

/** Said beside every answer while something is wrong with the own rule files: they are then all left out. */
export const sayOwnLeftOut = (problems: readonly Problem[]): readonly Token[] => {
  const [first] = problems;
  if (first === undefined) return [];
  const more = problems.length === 1 ? '' : ` (and ${problems.length - 1} more)`;
  return [
    {
      t: 'caution',
      text: `Your own rules are left out, and this is by the published ones alone: ${sayProblem(first)[0] ?? ''}${more} "penside rules --own" shows all of it.`,
    },
  ];
};
