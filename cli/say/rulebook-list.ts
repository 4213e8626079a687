/** Rules and figures in lists: rules under the questions that they answer, figures under what they are about. */
import type { Figure, OwnFigure, Rule } from '../../engine/types.ts';
import { sayFigureBriefly } from './condition.ts';
import { capital } from './phrase.ts';
import { sayAsTyped, sayDay } from './quantity.ts';
import { cellInWords, sayUnfilled } from './rulebook-page.ts';
import { saySource } from './source.ts';
import type { Speech } from './speech.ts';
import type { Token } from './tokens.ts';

const says: Readonly<Record<Rule['gives'], string>> = {
  yes: 'yes',
  no: 'no',
  'cannot-say': 'nothing can be said',
  amount: 'amount',
  list: 'list',
  caution: 'warning',
  step: 'task',
  remark: 'remark',
};

/** Under a heading each, in the order in which the headings first come up. */
const under = <T>(
  items: readonly T[],
  headingOf: (item: T) => string,
  lineOf: (item: T) => string,
): Token[] => {
  const groups = new Map<string, T[]>();
  for (const item of items) groups.set(headingOf(item), [...(groups.get(headingOf(item)) ?? []), item]);
  return [...groups].flatMap(([heading, inside]): Token[] => [
    { t: 'heading', text: capital(heading) },
    ...inside.map((item): Token => ({ t: 'detail', text: lineOf(item) })),
  ]);
};

export const sayRuleList = (speech: Speech, rules: readonly Rule[]): readonly Token[] =>
  under(
    rules,
    ({ question }) => speech.book.questions[question]?.offer ?? question,
    (rule) =>
      `${rule.own === undefined ? '' : 'Your rule. '}${capital(says[rule.gives])}: ${sayUnfilled(speech, rule.says)} (${rule.id}, ${saySource(speech, rule.source)})`,
  );

export const sayFigureList = (
  speech: Speech,
  figures: readonly Figure[],
  own: readonly OwnFigure[],
): readonly Token[] =>
  under(
    figures,
    ({ id }) => (id.split('/')[0] ?? id).replaceAll('-', ' '),
    (figure) => {
      const source = figure.values.at(-1)?.source ?? '';
      const set = own.findLast((each) => each.figure === figure.id);
      const yours =
        set === undefined
          ? figure.own === undefined
            ? ''
            : ' Yours, by a rule file.'
          : ` Yours: ${set.at === undefined ? '' : `${cellInWords(speech, figure, set.at)}: `}${sayAsTyped(speech, set.quantity)}${set.group === undefined ? '' : ` for the ${set.group}`}, since ${sayDay(set.on, speech.today)}.`;
      return `${capital(figure.description)}: ${sayFigureBriefly(speech, figure.id)} (${figure.id}, ${saySource(speech, source)}).${yours}`;
    },
  );

/** A rule as data: as it stands in the book, with its source whole. */
export const ruleAsJson = ({ book }: Speech, rule: Rule): object => ({
  id: rule.id,
  question: rule.question,
  gives: rule.gives,
  says: rule.says,
  when: rule.when,
  why: rule.whyRight,
  source: book.sources[rule.source] ?? null,
  outranks: rule.outranks,
  own: rule.own !== undefined,
});

/** A figure as data, in its own unit, with what the keeper set of it. */
export const figureAsJson = ({ book }: Speech, figure: Figure, own: readonly OwnFigure[]): object => ({
  id: figure.id,
  description: figure.description,
  unit: figure.unit,
  by: figure.by,
  values: figure.values.map((each) => ({ ...each, source: book.sources[each.source] ?? null })),
  own: figure.own !== undefined,
  set: own
    .filter((each) => each.figure === figure.id)
    .map(({ on, line, quantity, at, group, reason }) => ({
      on,
      line,
      ...quantity,
      at: at ?? null,
      group: group ?? null,
      reason,
    })),
});
