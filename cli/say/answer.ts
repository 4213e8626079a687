/** An answer → tokens: the claim, what it rests on, what is not known, what would turn it, and what to mind. */
import type { Answer, Change, Missing, Part, StepToDo, TurnsOn } from '../../engine/types.ts';
import { sayAllAssumed, sayAssumed, sayHowManyAssumed } from './assumed.ts';
import { listed } from './listed.ts';
import { nameOf } from './names.ts';
import { capital, fill, phrase } from './phrase.ts';
import { sayDay, sayValue, sayWhenDue } from './quantity.ts';
import { sayReason } from './reason.ts';
import type { Speech } from './speech.ts';
import type { Token } from './tokens.ts';

/** What to ask for and what to type for something that is not known. */
export const sayMissing = (
  speech: Speech,
  { fact, group }: Missing,
): { readonly ask: string; readonly tell: string | null } => {
  const words = speech.book.facts[fact];
  const values = { group: { value: group ?? 'birds', unit: null } };
  return {
    ask: fill(speech, words?.ask ?? `Not on record: ${nameOf(speech, fact)}.`, values),
    tell: words?.tell == null ? null : fill(speech, words.tell, values),
  };
};

const sayChange = (speech: Speech, { fact, from, to, unit }: Change): string => {
  const value = (of: Change['from']): string => sayValue(speech, { value: of, unit }, fact);
  return `${nameOf(speech, fact)} were ${value(to)} instead of ${value(from)}`;
};

/** What would turn the verdict, alone or, where nothing does so alone, together. */
export const sayTurnsOn = (speech: Speech, turn: TurnsOn): string => {
  const changes = [turn, ...(turn.and === undefined ? [] : [turn.and])];
  const said = changes.map((change) => sayChange(speech, change)).join(' and ');
  return `It would turn to ${turn.verdict} if ${said}.`;
};

/** The claim of one part; a part without a verdict says what it waits for. */
export const sayClaim = (speech: Speech, part: Part): string => {
  if (part.headline !== null) return phrase(speech, part.headline);
  const names = listed(part.unknown.map((each) => nameOf(speech, each.fact)));
  const group = part.group === null ? '' : ` for the ${part.group}`;
  return names === '' ? `Nothing to say${group} here.` : `I cannot say yet${group}: I do not know ${names}.`;
};

const small = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** The parts that claim something; a list without a headline is a round. */
export const claimingIn = ({ parts }: Answer): readonly Part[] =>
  parts.filter((part) => part.verdict !== 'list' || part.headline !== null);

/** The claims of parts; one whose words do not say of which group it is names it, where the groups' claims differ. */
export const sayClaims = (speech: Speech, parts: readonly Part[]): readonly string[] => {
  const claims = parts.map((part) => capital(sayClaim(speech, part)));
  const isOne = new Set(claims).size < 2;
  return parts.map(({ group, headline }, at) => {
    const claim = claims[at] ?? '';
    const isNamed = group === null || headline === null || 'group' in headline.values;
    return isOne || isNamed ? claim : `The ${group}: ${small(claim)}`;
  });
};

/** All groups together, where the question adds them up. */
export const sayTogether = (speech: Speech, answer: Answer): string | null => {
  const template = speech.book.questions[answer.question]?.together ?? null;
  const totals = answer.results.filter((result) => result.group === null);
  if (template === null || answer.parts.length < 2 || totals.length === 0) return null;
  const values = Object.fromEntries(totals.map(({ fact, value, unit }) => [fact, { value, unit }]));
  // A total that one group's missing record kept from adding up is left out with its clause.
  const complete = [...template.matchAll(/\{([^}]+)\}/g)].every(([, name = '']) => name in values);
  return complete ? fill(speech, template, values) : null;
};

const sayUnless = (speech: Speech, part: Part): Token[] =>
  part.unless.map(({ says }) => ({ t: 'detail', text: `This holds unless: ${phrase(speech, says)}` }));

/** The day on which the verdict is expected to turn, and what that rests on; nothing where none is in sight. */
export const sayWhen = (speech: Speech, part: Part): Token[] => {
  if (part.when === null) return [];
  const rests = part.when.assumed.filter(
    (each, index, all) => all.findIndex((other) => other.id === each.id) === index,
  );
  const on =
    rests.length === 0
      ? ''
      : ` That rests on this: ${rests.map((each) => sayAssumed(speech, each)).join('; ')}.`;
  return [
    {
      t: 'next',
      text: `It is expected to turn to ${part.when.verdict} on ${sayDay(part.when.on, speech.today)}.${on}`,
    },
  ];
};

const sayPart = (speech: Speech, answer: Answer, part: Part): Token[] => [
  ...part.reasons.map((reason) => sayReason(speech, answer, reason)),
  ...sayUnless(speech, part),
  ...part.unknown.map((missing): Token => {
    const { ask, tell } = sayMissing(speech, missing);
    return { t: 'unknown', text: ask, tell };
  }),
  ...sayWhen(speech, part),
  ...part.turnsOn.slice(0, 1).map((turn): Token => ({ t: 'next', text: sayTurnsOn(speech, turn) })),
];

/** Whose reasons follow, where there are several groups'. */
const sayWhose = (answer: Answer, part: Part): Token[] =>
  answer.parts.length > 1 && part.group !== null ? [{ t: 'heading', text: `The ${part.group}` }] : [];

const eachOnce = (tokens: readonly Token[]): Token[] => [
  ...new Map(tokens.map((token) => [JSON.stringify(token), token])).values(),
];

const sayStep = (speech: Speech, step: StepToDo): Token => ({
  t: 'step',
  id: step.id,
  text: capital(phrase(speech, step.says)),
  at: step.at === 'dated' && step.by !== null ? sayWhenDue(speech, step.by) : step.at,
  done: step.done,
});

/** The tasks of all parts; dated ones of several groups stand in the order in which they fall. */
export const stepsOf = (parts: readonly Part[]): readonly StepToDo[] => {
  const steps = parts.flatMap((part) => part.steps);
  const [dated, others] = [
    steps.filter(({ at }) => at === 'dated'),
    steps.filter(({ at }) => at !== 'dated'),
  ];
  return [...others, ...dated.toSorted((a, b) => ((a.by ?? '') < (b.by ?? '') ? -1 : a.by === b.by ? 0 : 1))];
};

/** Whether an answer is a round of tasks: a list without a headline. */
export const isRound = ({ parts }: Answer): boolean =>
  parts.length === 1 && parts[0]?.verdict === 'list' && parts[0].headline === null;

/** A round is to be worked through: what it takes for granted is listed where it is asked about. */
const sayHowMany = (speech: Speech, answer: Answer): string | null => {
  const count = sayHowManyAssumed(speech, answer.assumed);
  return count === null ? null : `${count}: "why" lists them.`;
};

/** The tokens of an answer. */
export const sayAnswer = (speech: Speech, answer: Answer): readonly Token[] => {
  const { on } = answer.request.moment;
  // In a round what to mind comes first.
  const gathered = isRound(answer);
  const together = sayTogether(speech, answer);
  const cautions = answer.parts.flatMap((part) =>
    part.cautions.map((each): Token => ({ t: 'caution', text: phrase(speech, each.says) })),
  );
  const remarks = answer.parts.flatMap((part) =>
    part.remarks.map((each): Token => ({ t: 'detail', text: phrase(speech, each.says) })),
  );
  const assumed = gathered ? sayHowMany(speech, answer) : sayAllAssumed(speech, answer.assumed);
  return eachOnce([
    ...(on === speech.today ? [] : [{ t: 'heading', text: `For ${sayDay(on, speech.today)}` } as const]),
    ...(gathered ? cautions : []),
    ...sayClaims(speech, claimingIn(answer)).map((text): Token => ({ t: 'claim', text })),
    ...(together === null ? [] : [{ t: 'claim', text: together } as const]),
    ...stepsOf(answer.parts.filter((part) => part.verdict === 'list')).map((step) => sayStep(speech, step)),
    ...answer.parts.flatMap((part) => {
      const said = sayPart(speech, answer, part);
      return said.length === 0 ? [] : [...sayWhose(answer, part), ...said];
    }),
    ...(gathered ? [] : cautions),
    ...remarks,
    ...(assumed === null ? [] : [{ t: 'detail', text: assumed } as const]),
  ]);
};
