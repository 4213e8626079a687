/** An answer as data for scripts: fixed keys, units of the place, nothing rounded away and nothing left out. */
import { stepOf } from '../../engine/explain/drill.ts';
import type { Answer, Change, Gives, Part, Reason, Value } from '../../engine/types.ts';
import { fromBase, toBase } from '../../engine/units.ts';
import { claimingIn, sayClaims, sayMissing, sayTogether, sayTurnsOn, stepsOf } from './answer.ts';
import { sayAssumed } from './assumed.ts';
import { phrase } from './phrase.ts';
import { inShownUnit } from './quantity.ts';
import { sayCompared } from './reason.ts';
import { saySource } from './source.ts';
import type { Speech } from './speech.ts';

export interface Heard {
  readonly question: string | null;
  readonly group: string | null;
  readonly on: string | null;
  readonly until: string | null;
  readonly slots: Readonly<Record<string, unknown>>;
  readonly supposing: readonly {
    readonly what: string;
    readonly value: unknown;
    readonly unit: string | null;
  }[];
  readonly assumed: readonly string[];
  /** What of a record was not taken in, in the keeper's words; there only where something was left. */
  readonly leftOut?: readonly string[];
}

/** The one shape of `--json`; every key is always there. */
export interface JsonAnswer {
  asked: string;
  heard: Heard;
  verdict: 'yes' | 'no' | 'cannot-say' | 'amount' | 'list' | 'which' | 'not-understood' | 'recorded';
  headline: string;
  results: readonly object[];
  when: string | null;
  'turns-on': readonly object[];
  reasons: readonly object[];
  unknown: readonly object[];
  cautions: readonly object[];
  steps: readonly (string | object)[];
  choices: readonly object[];
  /** Under suppositions: the answer without them, and what makes the difference; for what has changed: every change with its causes; null for any other. */
  difference: object | null;
  /** The rules that could have decided otherwise, and where each stopped. */
  'passed-over': readonly object[];
  picture: { lines: readonly string[]; says: string } | null;
  ref: string | null;
}

export const emptyJson = (asked: string, heard: Heard): JsonAnswer => ({
  asked,
  heard,
  verdict: 'not-understood',
  headline: '',
  results: [],
  when: null,
  'turns-on': [],
  reasons: [],
  unknown: [],
  cautions: [],
  steps: [],
  choices: [],
  difference: null,
  'passed-over': [],
  picture: null,
  ref: null,
});

/** Digits past what a double holds exactly are noise of the conversions, not information. */
const tidy = (value: number): number => Number(value.toPrecision(12));

/** A value with its unit, in units of the place or in a fixed one. */
export const valued = (
  speech: Speech,
  value: Value | null,
  unit: string | null,
  fact: string,
  as: string | null = null,
): { readonly value: Value | null; readonly unit: string | null } => {
  if (typeof value !== 'number' || unit === null) return { value, unit };
  const { units } = speech.book;
  if (as !== null) return { value: tidy(fromBase(units, toBase(units, { value, unit }), as)), unit: as };
  // A ratio stays a ratio for scripts; only people are shown percent.
  if (unit === 'ratio') return { value: tidy(value), unit };
  const shown = inShownUnit(speech, value, unit, fact);
  return { value: tidy(shown.value), unit: shown.unit };
};

/** The unit a result is fixed to for scripts; null where it is the one it is shown in. */
const unitOfResult = (speech: Speech, answer: Answer, id: string): string | null =>
  speech.book.questions[answer.question]?.results.find((each) => each.id === id)?.unit ?? null;

const figureOf = (speech: Speech, answer: Answer, reason: Omit<Reason, 'n'>): object | null => {
  if (reason.figure !== null) {
    const { id, value, unit, from, own, published } = reason.figure;
    const before = published === undefined ? null : valued(speech, published.value, published.unit, id);
    return { id, ...valued(speech, value, unit, id), from, ...(own ? { own, published: before } : {}) };
  }
  if (reason.other === null) return null;
  const use = stepOf(answer, reason.other.id, reason.group)?.figures[0];
  return {
    id: use?.id ?? reason.other.id,
    ...valued(speech, reason.other.value, reason.other.unit, reason.other.id),
    from: use?.from ?? null,
  };
};

const sourceOf = (speech: Speech, answer: Answer, reason: Omit<Reason, 'n'>): string => {
  const step = stepOf(answer, reason.other?.id ?? reason.fact.id, reason.group);
  const id = reason.figure?.source ?? step?.figures[0]?.source ?? reason.source;
  return saySource(speech, id);
};

const changeAsJson = (speech: Speech, { fact, from, to, unit }: Change): object => ({
  fact,
  from: valued(speech, from, unit, fact).value,
  to: valued(speech, to, unit, fact).value,
  unit: valued(speech, to, unit, fact).unit,
});

/** One comparison of a rule, in units of the place. */
export const comparedAsJson = (speech: Speech, answer: Answer, reason: Omit<Reason, 'n'>): object => ({
  rule: reason.rule,
  outcome: reason.outcome,
  says: sayCompared(speech, reason),
  fact: { id: reason.fact.id, ...valued(speech, reason.fact.value, reason.fact.unit, reason.fact.id) },
  operator: reason.operator,
  figure: figureOf(speech, answer, reason),
  source: sourceOf(speech, answer, reason),
  why: reason.why,
});

/** One verdict for several groups: theirs when they agree, else the one that asks for the most care. */
export const jointVerdict = (parts: readonly Part[]): Gives => {
  const careful: readonly Gives[] = ['cannot-say', 'no', 'yes', 'amount', 'list'];
  return careful.find((each) => parts.some((part) => part.verdict === each)) ?? 'cannot-say';
};

/** The answer to a question as the one JSON shape. */
export const answerAsJson = (speech: Speech, asked: string, heard: Heard, answer: Answer): JsonAnswer => {
  const together = sayTogether(speech, answer);
  const claims = sayClaims(speech, claimingIn(answer));
  const steps = stepsOf(answer.parts);
  const todo = steps.filter((step) => !step.done).length;
  const listHeadline = `${todo} still to do, ${steps.length - todo} done.`;
  const verdict = jointVerdict(answer.parts);
  return {
    ...emptyJson(asked, {
      ...heard,
      assumed: [...heard.assumed, ...answer.assumed.map((each) => sayAssumed(speech, each))],
    }),
    verdict: verdict as JsonAnswer['verdict'],
    headline:
      verdict === 'list' && claims.length === 0
        ? listHeadline
        : [...claims, ...(together === null ? [] : [together])].join(' '),
    results: answer.results.map(({ id, fact, group, value, unit }) => ({
      id,
      ...valued(speech, value, unit, fact, unitOfResult(speech, answer, id)),
      group,
    })),
    when: answer.parts.map((part) => part.when?.on).find((day) => day !== undefined) ?? null,
    'turns-on': answer.parts.flatMap((part) =>
      part.turnsOn.map((turn) => ({
        ...changeAsJson(speech, turn),
        and: turn.and === undefined ? null : changeAsJson(speech, turn.and),
        says: sayTurnsOn(speech, turn),
      })),
    ),
    reasons: answer.parts.flatMap((part) =>
      part.reasons.map((reason) => ({ n: reason.n, ...comparedAsJson(speech, answer, reason) })),
    ),
    unknown: answer.parts.flatMap((part) =>
      part.unknown.map((missing) => ({ fact: missing.fact, ...sayMissing(speech, missing) })),
    ),
    cautions: answer.parts.flatMap((part) =>
      part.cautions.map(({ rule, says, source }) => ({
        rule,
        says: phrase(speech, says),
        source: saySource(speech, source),
      })),
    ),
    steps: steps.map((step) => ({
      id: step.id,
      says: phrase(speech, step.says),
      due: step.by ?? step.at,
      done: step.done,
      rule: step.rule,
    })),
    'passed-over': answer.parts.flatMap(({ group, passedOver }) =>
      passedOver.map(({ rule, gives, outcome, stoppedBy }) => ({
        rule,
        group,
        gives,
        outcome,
        'stopped-by': stoppedBy.map((each) => comparedAsJson(speech, answer, each)),
      })),
    ),
    ref: answer.ref,
  };
};
