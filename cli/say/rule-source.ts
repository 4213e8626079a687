/** A rule or a figure in full: what it says, since when, from which source, and which answers use it. */

import { known } from '../../engine/index.ts';
import { leavesOf } from '../../engine/rulebook/conditions.ts';
import type { Answer, Figure, FigureTable, Rule, Rulebook } from '../../engine/types.ts';
import { listed } from './listed.ts';
import { capital } from './phrase.ts';
import { sayDay, sayValue } from './quantity.ts';
import { figuresOf, saySource } from './reason.ts';
import type { Speech } from './speech.ts';
import type { Token } from './tokens.ts';

const sayTable = (speech: Speech, figure: Figure, cell: number | FigureTable): string =>
  typeof cell === 'number'
    ? sayValue(speech, { value: cell, unit: figure.unit })
    : Object.entries(cell)
        .map(
          ([key, inner]) =>
            `${key}: ${typeof inner === 'number' ? sayTable(speech, figure, inner) : `(${sayTable(speech, figure, inner)})`}`,
        )
        .join(', ');

/** Questions whose rules, or whose facts, read a figure. */
const usersOf = (book: Rulebook, figure: string): readonly string[] => {
  const facts = new Set(known.facts.filter((fact) => fact.figures.includes(figure)).map((fact) => fact.id));
  const names = Object.values(book.rules)
    .filter((rule) =>
      leavesOf(rule.when).some(
        ({ leaf }) =>
          leaf.figure === figure || facts.has(leaf.fact) || (leaf.other !== null && facts.has(leaf.other)),
      ),
    )
    .map((rule) => rule.question);
  const results = Object.values(book.questions).filter((question) =>
    question.results.some((each) => facts.has(each.fact)),
  );
  return [...new Set([...names, ...results.map((question) => question.id)])].sort();
};

export const sayFigureInFull = (speech: Speech, figure: Figure): readonly Token[] => {
  const axes =
    figure.by.length === 0
      ? ''
      : ` (by ${figure.by.map((axis) => `${axis.fact}${axis.unit === null ? '' : ` in ${axis.unit}s`}`).join(' and ')})`;
  const users = usersOf(speech.book, figure.id);
  return [
    { t: 'heading', text: `Figure ${figure.id}: ${figure.description}` },
    ...figure.values.flatMap((value): Token[] => {
      const source = speech.book.sources[value.source];
      return [
        {
          t: 'figure',
          text: `since ${sayDay(value.from, speech.today)}${axes}: ${sayTable(speech, figure, value.value)}`,
        },
        {
          t: 'detail',
          text:
            source === undefined
              ? value.source
              : `Source: ${source.author}, ${source.title}, ${source.year}; ${source.where}; ${standings[source.standing]}.`,
        },
        ...(value.note === null ? [] : [{ t: 'detail', text: value.note } as const]),
      ];
    }),
    {
      t: 'detail',
      text: users.length === 0 ? 'No answer rests on it directly.' : `Answers that use it: ${listed(users)}.`,
    },
  ];
};

const standings: Readonly<Record<string, string>> = {
  published: 'read in the source',
  relayed: 'read where another relays it',
  memory: 'from memory, not verified',
  practice: 'common practice, no source',
  judgement: 'own judgement, a rule of thumb',
  derived: 'worked out from other figures',
};

export const sayRuleInFull = (speech: Speech, rule: Rule): readonly Token[] => {
  const source = speech.book.sources[rule.source];
  return [
    { t: 'heading', text: `Rule ${rule.id}` },
    { t: 'detail', text: `${capital(rule.whyRight)}.` },
    {
      t: 'detail',
      text:
        source === undefined
          ? rule.source
          : `Source: ${source.author}, ${source.title}, ${source.year}; ${source.where}; ${standings[source.standing]}.`,
    },
  ];
};

/** Rules and figures that the words name by their ids, such as `pasture/lowest-night`. */
export const namedIn = (
  book: Rulebook,
  words: string,
): { readonly rules: readonly Rule[]; readonly figures: readonly Figure[] } => {
  const ids = words.toLowerCase().match(/[a-z0-9-]+\/[a-z0-9-]+/g) ?? [];
  return {
    rules: ids.flatMap((id) => (Object.hasOwn(book.rules, id) ? [book.rules[id] as Rule] : [])),
    figures: ids.flatMap((id) => (Object.hasOwn(book.figures, id) ? [book.figures[id] as Figure] : [])),
  };
};

/** The sources behind the last answer: its deciding rules and every figure its reasons rest on. */
export const sayAnswerSources = (speech: Speech, answer: Answer): readonly Token[] => {
  const rules = [
    ...new Set(answer.parts.flatMap((part) => [part.rule, ...part.reasons.map((reason) => reason.rule)])),
  ];
  const figures = [
    ...new Set(
      answer.parts.flatMap((part) =>
        part.reasons.flatMap((reason) => figuresOf(answer, reason).map((use) => use.id)),
      ),
    ),
  ];
  return [
    ...rules.flatMap((id) => {
      const rule = id === null ? undefined : speech.book.rules[id];
      return rule === undefined
        ? []
        : [
            {
              t: 'detail',
              text: `Rule ${rule.id}: ${rule.whyRight} (${saySource(speech, rule.source)}).`,
            } as const,
          ];
    }),
    ...figures.flatMap((id) => {
      const figure = speech.book.figures[id];
      return figure === undefined ? [] : sayFigureInFull(speech, figure);
    }),
  ];
};
