/** The rules and figures that some words name, and those that an answer rests on. */
import type { Answer, Figure, FigureUse, Rule, Rulebook } from '../../engine/types.ts';
import { sayOwnFigure } from './own.ts';
import { capital } from './phrase.ts';
import { sayDay, sayValue } from './quantity.ts';
import { figuresOf } from './reason.ts';
import { saySource } from './source.ts';
import type { Speech } from './speech.ts';
import type { Token } from './tokens.ts';

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

/** Figures that an answer's reasons rest on, as they were used, each once. */
const figuresUsed = (answer: Answer): readonly FigureUse[] => {
  const used = answer.parts.flatMap((part) => part.reasons.flatMap((reason) => figuresOf(answer, reason)));
  return used.filter((use, at) => used.findIndex(({ id }) => id === use.id) === at);
};

const sayUse = (speech: Speech, use: FigureUse): string => {
  const value = sayValue(speech, { value: use.value, unit: use.unit }, use.id);
  const about = capital(speech.book.figures[use.id]?.description ?? use.id);
  return use.own
    ? `${about}: ${sayOwnFigure(speech, use)} (${use.id}).`
    : `${about}: ${value}, since ${sayDay(use.from, speech.today)}; ${saySource(speech, use.source)} (${use.id}).`;
};

/** The sources behind an answer: of the rules that spoke, and of every figure that its reasons rest on. */
export const sayAnswerSources = (speech: Speech, answer: Answer): readonly Token[] => {
  const rules = [
    ...new Set(answer.parts.flatMap((part) => [part.rule, ...part.reasons.map((reason) => reason.rule)])),
  ].flatMap((id) => (id === null ? [] : (speech.book.rules[id] ?? [])));
  const figures = figuresUsed(answer);
  const example = figures[0]?.id ?? rules[0]?.id;
  return [
    ...rules.map(
      (rule): Token => ({
        t: 'detail',
        text: `${rule.own === undefined ? 'Rule' : 'Your rule'} ${rule.id}: ${rule.whyRight} (${saySource(speech, rule.source)}).`,
      }),
    ),
    ...figures.map((use): Token => ({ t: 'figure', text: sayUse(speech, use) })),
    ...(example === undefined
      ? []
      : [
          {
            t: 'next',
            text: `Say "rule 1" for what is behind one reason, or a name such as "${example}".`,
          } as const,
        ]),
  ];
};
