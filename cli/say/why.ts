/** "why" and "why 2" in words: all reasons with their rules, or the working of one of them down to figures and entries. */
import { stepOf, stepsBehind, stepsInto } from '../../engine/explain/drill.ts';
import type { Answer, Reason, Shown, Step } from '../../engine/types.ts';
import { sayClaim } from './answer.ts';
import { sayAllAssumed } from './assumed.ts';
import { nameOf } from './names.ts';
import { capital, fill } from './phrase.ts';
import { sayValue } from './quantity.ts';
import { sayFigure, sayReason, saySource } from './reason.ts';
import type { Speech } from './speech.ts';
import type { Token } from './tokens.ts';

/** Every reason of the answer, each with the rule behind it and why that rule is right. */
export const sayWhy = (speech: Speech, answer: Answer): readonly Token[] => {
  const tokens: Token[] = [];
  for (const part of answer.parts) {
    if (part.headline !== null || part.verdict !== 'list')
      tokens.push({ t: 'claim', text: capital(sayClaim(speech, part)) });
    if (part.rule !== null) {
      const rule = speech.book.rules[part.rule];
      if (rule !== undefined)
        tokens.push({
          t: 'detail',
          text: `Rule ${rule.id}: ${rule.whyRight} (${saySource(speech, rule.source)}).`,
        });
    }
    for (const reason of part.reasons) tokens.push(sayReason(speech, answer, reason));
    for (const step of part.steps.filter((each) => each.rule !== part.rule)) {
      const rule = speech.book.rules[step.rule];
      if (rule !== undefined)
        tokens.push({
          t: 'detail',
          text: `Rule ${rule.id}: ${rule.whyRight} (${saySource(speech, rule.source)}).`,
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

const sayStep = (speech: Speech, answer: Answer, lines: readonly string[], step: Step): Token[] => {
  const value = sayValue(speech, step, step.fact);
  const how = step.supposed ? 'supposed' : sayHow(speech, answer, step);
  return [
    { t: 'heading', text: `${capital(nameOf(speech, step.fact))}: ${value}` },
    { t: 'detail', text: `${capital(how)}.` },
    ...stepsInto(answer, step).map(
      (each): Token => ({
        t: 'detail',
        text: `${capital(nameOf(speech, each.fact))}: ${sayValue(speech, each, each.fact)}.`,
      }),
    ),
    ...step.figures.map((use): Token => ({ t: 'figure', text: sayFigure(speech, use) })),
    ...step.entries.map(
      ({ line }): Token => ({ t: 'detail', text: `Line ${line}: ${lines[line - 1] ?? ''}` }),
    ),
  ];
};

/**
 * The working of one reason: its fact, and the fact it was held against, each with formula, parts, figures and entries.
 * @param lines raw lines of the ledger, line 1 first
 */
export const sayWorking = (
  speech: Speech,
  answer: Answer,
  lines: readonly string[],
  reason: Reason,
): readonly Token[] => {
  const rule = speech.book.rules[reason.rule];
  return [
    sayReason(speech, answer, reason),
    ...stepsBehind(answer, reason).flatMap((step) => sayStep(speech, answer, lines, step)),
    {
      t: 'detail',
      text: `Rule ${reason.rule}: ${rule?.whyRight ?? reason.why} (${saySource(speech, reason.source)}).`,
    },
  ];
};
