/** "why" and "why 2" in words: all reasons with their rules, or the working of one of them down to figures and entries. */
import { partsOf, stepOf, stepsBehind, stepsInto } from '../../engine/explain/drill.ts';
import type { Answer, Reason, Rule, Shown, Step } from '../../engine/types.ts';
import { claimingIn, sayClaims } from './answer.ts';
import { sayAllAssumed } from './assumed.ts';
import { nameOf } from './names.ts';
import { capital, fill } from './phrase.ts';
import { sayValue } from './quantity.ts';
import { sayFigure, sayReason } from './reason.ts';
import { saySource } from './source.ts';
import type { Speech } from './speech.ts';
import type { Token } from './tokens.ts';

/** A rule by its id, why it is right, and the source of that: one sentence, however its own words end. */
export const sayRight = (speech: Speech, rule: Pick<Rule, 'id' | 'whyRight' | 'source'>): string =>
  `${rule.id}: ${rule.whyRight.replace(/\.$/, '')} (${saySource(speech, rule.source)}).`;

/** Every reason of the answer, each with the rule behind it and why that rule is right. */
export const sayWhy = (speech: Speech, answer: Answer): readonly Token[] => {
  const tokens: Token[] = [];
  const claims = sayClaims(speech, answer.parts);
  for (const [at, part] of answer.parts.entries()) {
    if (claimingIn(answer).includes(part)) tokens.push({ t: 'claim', text: claims[at] ?? '' });
    if (part.rule !== null) {
      const rule = speech.book.rules[part.rule];
      if (rule !== undefined)
        tokens.push({
          t: 'detail',
          text: `Rule ${sayRight(speech, rule)}`,
        });
    }
    for (const reason of part.reasons) tokens.push(sayReason(speech, answer, reason));
    for (const step of part.steps.filter((each) => each.rule !== part.rule)) {
      const rule = speech.book.rules[step.rule];
      if (rule !== undefined)
        tokens.push({
          t: 'detail',
          text: `Rule ${sayRight(speech, rule)}`,
        });
    }
  }
  const assumed = sayAllAssumed(speech, answer.assumed);
  if (assumed !== null) tokens.push({ t: 'detail', text: assumed });
  const count = answer.parts.flatMap((part) => part.reasons).length;
  return count === 0
    ? tokens
    : [
        ...tokens,
        { t: 'next', text: `Say "why 1"${count > 1 ? ` to "why ${count}"` : ''} to open one of them.` },
      ];
};

const valuesAround =
  (answer: Answer, step: Step): ((name: string) => Shown | undefined) =>
  (name) => {
    if (name === 'group') return { value: step.group, unit: null };
    const figure = step.figures.find((use) => use.id === name);
    if (figure !== undefined) return { value: figure.value, unit: figure.unit };
    const fact = stepOf(answer, name, step.group);
    return fact === undefined ? undefined : { value: fact.value, unit: fact.unit };
  };

/** The working in words, its values filled in; a value that this answer never needed is left as its name. */
const sayHow = (speech: Speech, answer: Answer, step: Step): string => {
  const how = speech.book.facts[step.fact]?.how ?? '';
  const shownOf = valuesAround(answer, step);
  return how.replace(/\{([^}]+)\}/g, (_, name: string) => {
    const value = shownOf(name);
    return value === undefined ? nameOf(speech, name) : fill(speech, `{${name}}`, { [name]: value });
  });
};

/** A value, where an empty text is nothing named. */
const sayWorth = (speech: Speech, step: Step): string =>
  step.value === '' ? 'none' : sayValue(speech, step, step.fact);

/** A step with its formula, its figures and its entries, and what went into it, each part with the number that opens it. */
const sayStep = (
  speech: Speech,
  answer: Answer,
  lines: readonly string[],
  step: Step,
  numberOf: (part: number) => string,
): Token[] => {
  const value = sayWorth(speech, step);
  const how = step.supposed ? 'supposed' : sayHow(speech, answer, step);
  const assumed = sayAllAssumed(speech, step.assumed);
  return [
    { t: 'heading', text: `${capital(nameOf(speech, step.fact))}: ${value}` },
    { t: 'detail', text: `${capital(how)}.` },
    ...stepsInto(answer, step).map(
      (each, at): Token => ({
        t: 'detail',
        text: `${numberOf(at + 1)} ${capital(nameOf(speech, each.fact))}: ${sayWorth(speech, each)}.`,
      }),
    ),
    ...step.figures.map((use): Token => ({ t: 'figure', text: sayFigure(speech, use) })),
    ...step.entries.map(
      ({ line }): Token => ({ t: 'detail', text: `Line ${line}: ${lines[line - 1] ?? ''}` }),
    ),
    ...(assumed === null ? [] : [{ t: 'detail', text: assumed } as const]),
  ];
};

const sayOpening = (answer: Answer, steps: readonly Step[], from: string): Token[] => {
  const count = partsOf(answer, steps).length;
  const one: Token = { t: 'next', text: `Say "why ${from}.1" to go on down.` };
  return count === 0
    ? []
    : [
        count === 1
          ? one
          : { t: 'next', text: `Say "why ${from}.1" to "why ${from}.${count}" to go on down.` },
      ];
};

const sayAll = (
  speech: Speech,
  answer: Answer,
  lines: readonly string[],
  steps: readonly Step[],
  from: string,
): Token[] => {
  let before = 0;
  const tokens: Token[] = [];
  for (const step of steps) {
    const first = before;
    tokens.push(...sayStep(speech, answer, lines, step, (part) => `${from}.${first + part}`));
    before += stepsInto(answer, step).length;
  }
  return tokens;
};

/**
 * Steps in full. Their parts are numbered on through all of them, below the number they stand under.
 * @param lines raw lines of the ledger, line 1 first
 */
export const saySteps = (
  speech: Speech,
  answer: Answer,
  lines: readonly string[],
  steps: readonly Step[],
  from: string,
): readonly Token[] => [...sayAll(speech, answer, lines, steps, from), ...sayOpening(answer, steps, from)];

/** The working of one reason: its facts, each with formula, parts, figures and entries; then the rule. */
export const sayWorking = (
  speech: Speech,
  answer: Answer,
  lines: readonly string[],
  reason: Reason,
): readonly Token[] => {
  const rule = speech.book.rules[reason.rule];
  const steps = stepsBehind(answer, reason);
  const from = String(reason.n);
  return [
    sayReason(speech, answer, reason),
    ...sayAll(speech, answer, lines, steps, from),
    {
      t: 'detail',
      text: `Rule ${sayRight(speech, rule ?? { id: reason.rule, whyRight: reason.why, source: reason.source })}`,
    },
    ...sayOpening(answer, steps, from),
  ];
};
