/** An answer as a sheet that stands alone: for somebody who knows nothing of the birds, to be printed and taken along. */
import type { Answer, StepToDo } from '../../engine/types.ts';
import { claimingIn, sayClaims, sayMissing, sayTogether, stepsOf } from './answer.ts';
import { capital, phrase } from './phrase.ts';
import { sayDay, sayWhenDue } from './quantity.ts';
import type { Speech } from './speech.ts';
import type { Token } from './tokens.ts';

/** A group as somebody who never saw it has to be told of it. */
export interface Birds {
  readonly name: string;
  /** Birds alive. */
  readonly alive: number;
  /** Days since the hatch. */
  readonly age: number;
  /** A value of the fact `place`. */
  readonly place: string;
}

const detail = (text: string): Token => ({ t: 'detail', text });
const heading = (text: string): Token => ({ t: 'heading', text });
const blank: Token = { t: 'blank' };

/** When a task comes, as the head of a stretch of the sheet. */
const times: Readonly<Record<string, string>> = {
  now: 'Before all else',
  morning: 'In the morning',
  midday: 'Around noon',
  evening: 'In the evening',
  soon: 'In the next days, if there is time',
  dated: 'On their days',
};

const whereIs = ({ book }: Speech, place: string): string => book.sheet?.where[place] ?? place;

const sayBirds = (speech: Speech, birds: readonly Birds[]): Token[] =>
  birds.map(({ name, alive, age, place }) =>
    detail(
      `The ${name}: ${alive} ${alive === 1 ? 'bird' : 'birds'}, ${age} days old, ${whereIs(speech, place)}.`,
    ),
  );

const sayTask = (speech: Speech, step: StepToDo, n: number, birds: readonly Birds[]): Token => {
  const place = birds.find(({ name }) => name === step.group)?.place;
  const notes = [
    ...(place === undefined ? [] : [`Where: ${whereIs(speech, place)}.`]),
    ...(step.by === null ? [] : [`By: ${sayWhenDue(speech, step.by)}.`]),
    ...(step.rightWhen === null ? [] : [`Right when: ${phrase(speech, step.rightWhen)}.`]),
    ...(step.ringWhen === null ? [] : [`Ring when: ${phrase(speech, step.ringWhen)}.`]),
  ];
  return { t: 'task', n, text: capital(phrase(speech, step.says)), notes };
};

/** What is still to do, numbered through from the first hour of the day on; what is done is named at the end. */
const sayTasks = (speech: Speech, steps: readonly StepToDo[], birds: readonly Birds[]): Token[] => {
  const stretches = Object.entries(times).map(([at, head]) => ({
    head,
    tasks: steps.filter((step) => !step.done && step.at === at),
  }));
  const inOrder = stretches.flatMap(({ tasks }) => tasks);
  const done = steps.filter((step) => step.done);
  return [
    ...stretches.flatMap(({ head, tasks }) =>
      tasks.length === 0
        ? []
        : [
            blank,
            heading(head),
            ...tasks.map((step) => sayTask(speech, step, inOrder.indexOf(step) + 1, birds)),
          ],
    ),
    ...(done.length === 0
      ? []
      : [blank, detail(`Done already: ${done.map((step) => phrase(speech, step.says)).join(' ')}`)]),
  ];
};

const sayStanding = (speech: Speech, answer: Answer): Token[] => {
  const claims = sayClaims(speech, claimingIn(answer));
  const together = sayTogether(speech, answer);
  return [...claims, ...(together === null ? [] : [together])].map((text) => ({ t: 'claim', text }));
};

const listUnder = (head: string, lines: readonly string[]): Token[] =>
  lines.length === 0 ? [] : [blank, heading(head), ...lines.map((line) => detail(`– ${line}`))];

/**
 * The sheet; all of it comes from the answer and the rulebook.
 * @param birds those that the answer speaks of
 * @param isSupposed whether the answer was to a what-if
 */
export const saySheet = (
  speech: Speech,
  answer: Answer,
  birds: readonly Birds[],
  isSupposed: boolean,
): readonly Token[] => {
  const { on } = answer.request.moment;
  const words = speech.book.sheet;
  const question = speech.book.questions[answer.question];
  const cautions = answer.parts.flatMap((part) => part.cautions.map(({ says }) => phrase(speech, says)));
  const unknown = answer.parts.flatMap((part) => part.unknown.map((each) => sayMissing(speech, each).ask));
  return [
    heading(`For whoever helps with the birds, ${sayDay(on, speech.today)}`),
    detail(`About ${question?.offer ?? answer.question}.`),
    ...(isSupposed
      ? [{ t: 'caution', text: 'This was asked as a what-if and is not how things are.' } as const]
      : []),
    ...(words === undefined ? [] : [detail(words.before)]),
    ...sayBirds(speech, birds),
    ...(sayStanding(speech, answer).length === 0 ? [] : [blank, ...sayStanding(speech, answer)]),
    ...sayTasks(speech, stepsOf(answer.parts), birds),
    ...listUnder('Ask before you begin', [...new Set(unknown)]),
    ...listUnder('Watch for', [...new Set([...cautions, ...(words?.mind ?? [])])]),
    ...listUnder('Ring at once when', words?.ring ?? []),
    blank,
    detail('Keeper: ____________________   Vet: ____________________'),
  ];
};
