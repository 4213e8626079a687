/** A question with its rules, as an adviser reads them: what is said, when, why, from whom, and what it rests on. */
import type { Gives, Question, Rule } from '../../../engine/types.ts';
import { sayConditions } from '../../say/condition.ts';
import { capital } from '../../say/phrase.ts';
import { sayUnfilled, sayWhyRight } from '../../say/rulebook-page.ts';
import { saySource } from '../../say/source.ts';
import type { Speech } from '../../say/speech.ts';
import { linkTo, placeOf, withLinks } from './anchors.ts';

/** Rules under what they are for, in the order in which an answer is read. */
const headings: readonly { readonly heading: string; readonly gives: readonly Gives[] }[] = [
  { heading: 'What decides', gives: ['yes', 'no', 'cannot-say', 'amount', 'list'] },
  { heading: 'Warnings', gives: ['caution'] },
  { heading: 'Tasks', gives: ['step'] },
  { heading: 'Remarks', gives: ['remark'] },
];

const says: Readonly<Record<Gives, string>> = {
  yes: 'Says yes',
  no: 'Says no',
  'cannot-say': 'Says that nothing can be said',
  amount: 'Gives an amount',
  list: 'Gives a list',
  caution: 'Warns',
  step: 'Sets a task',
  remark: 'Adds a remark',
};

const when: Readonly<Record<string, string>> = {
  now: 'before all else',
  soon: 'as something to buy or book',
  dated: 'on its day',
};

/** The task that a rule puts on the daily round. */
const choreOf = (speech: Speech, { chore }: Rule): string[] => {
  if (chore === null) return [];
  const at = when[chore.at] ?? `in the ${chore.at}`;
  return [
    `On the daily round, ${at}: “${capital(sayUnfilled(speech, chore.says))}”`,
    ...(chore.rightWhen === null ? [] : [`Done right when ${sayUnfilled(speech, chore.rightWhen)}.`]),
    ...(chore.ringWhen === null
      ? []
      : [`A helper rings the keeper when ${sayUnfilled(speech, chore.ringWhen)}.`]),
  ];
};

const rulePart = (speech: Speech, rule: Rule): readonly string[] => {
  const linked = withLinks(speech);
  const conditions = sayConditions(linked, rule.when);
  const before = rule.outranks.map((id) => linkTo('rule', id, id));
  return [
    `##### ${placeOf('rule', rule.id)}${rule.id}`,
    '',
    `> ${capital(sayUnfilled(linked, rule.says))}`,
    '',
    `${says[rule.gives]} when ${conditions.length > 1 ? 'all of this holds' : 'this holds'}:`,
    '',
    ...conditions.map((condition) => `- ${condition}`),
    '',
    `Why: ${sayWhyRight(rule)} Source: ${linkTo('source', rule.source, saySource(speech, rule.source))}.`,
    ...choreOf(linked, rule).flatMap((line) => ['', line]),
    ...(before.length === 0 ? [] : ['', `Where several hold, it goes before ${before.join(', ')}.`]),
    '',
  ];
};

/** A question under a heading of its own, with all its rules. */
export const questionPart = (speech: Speech, question: Question): readonly string[] => {
  const rules = Object.values(speech.book.rules).filter((rule) => rule.question === question.id);
  const gathered = question.gathers.map((id) =>
    linkTo('question', id, speech.book.questions[id]?.offer ?? id),
  );
  return [
    `### ${placeOf('question', question.id)}${capital(question.offer)}`,
    '',
    `Asked as “${question.example}”; answered ${question.per === 'group' ? 'for each group of birds' : 'once for all birds'}.`,
    ...(gathered.length === 0 ? [] : ['', `It gathers the tasks of: ${gathered.join('; ')}.`]),
    '',
    ...headings.flatMap(({ heading, gives }) => {
      const under = rules.filter((rule) => gives.includes(rule.gives));
      return under.length === 0
        ? []
        : [`#### ${heading}`, '', ...under.flatMap((rule) => rulePart(speech, rule))];
    }),
  ];
};
