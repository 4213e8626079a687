/** One reason in words: what was compared, how it came out, and which figure from which source stands behind it. */
import { stepOf } from '../../engine/explain/drill.ts';
import type { Answer, FigureUse, Reason } from '../../engine/types.ts';
import { listed } from './listed.ts';
import { nameOf } from './names.ts';
import { sayOwnFigure } from './own.ts';
import { capital, phrase } from './phrase.ts';
import { sayValue } from './quantity.ts';
import { saySource } from './source.ts';
import type { Speech } from './speech.ts';
import type { OutcomeWord, Token } from './tokens.ts';

export const outcomeWords: Readonly<Record<Reason['outcome'], OutcomeWord>> = {
  held: 'held',
  failed: 'failed',
  unknown: 'not known',
};

/** A figure with its number, its beginning and its source: `pasture/lowest-night 50 °F, own judgement`. */
export const sayFigure = (speech: Speech, use: FigureUse): string => {
  const number = sayValue(speech, { value: use.value, unit: use.unit }, use.id);
  if (use.own) return `${use.id} ${sayOwnFigure(speech, use)}`;
  return `${use.id} ${number}, ${saySource(speech, use.source)}`;
};

/** Figures that a reason rests on: its own, or those that went straight into the facts it compares, what it was held against first. */
export const figuresOf = (answer: Answer, reason: Reason): readonly FigureUse[] => {
  if (reason.figure !== null) return [reason.figure];
  const facts = [...(reason.other === null ? [] : [reason.other.id]), reason.fact.id];
  const used = facts.flatMap((fact) => stepOf(answer, fact, reason.group)?.figures ?? []);
  // Both sides may rest on the same figure.
  return used.filter(
    (use, index) => used.findIndex((other) => other.id === use.id && other.value === use.value) === index,
  );
};

/** More than this many figures beside one reason are not read any more; "why" opens the rest. */
const mostFigures = 4;

/** Figures under their sources, each source named once. */
const sayFigures = (speech: Speech, figures: readonly FigureUse[]): string => {
  const own = figures.filter((use) => use.own).map((use) => sayFigure(speech, use));
  const bySource = new Map<string, string[]>();
  for (const use of figures.filter((each) => !each.own)) {
    const names = bySource.get(use.source) ?? [];
    bySource.set(use.source, [
      ...names,
      `${use.id} ${sayValue(speech, { value: use.value, unit: use.unit }, use.id)}`,
    ]);
  }
  return [
    ...own,
    ...[...bySource].map(([source, names]) => `${listed(names)}, ${saySource(speech, source)}`),
  ].join('; ');
};

/** A comparison in its rule's words; with a side missing those words would limp, so only the fact is named. */
export const sayCompared = (speech: Speech, reason: Omit<Reason, 'n'>): string => {
  if (reason.outcome !== 'unknown') return capital(phrase(speech, reason.says));
  const missing = reason.fact.value === null || reason.other === null ? reason.fact.id : reason.other.id;
  return capital(nameOf(speech, missing));
};

export const sayReason = (speech: Speech, answer: Answer, reason: Reason): Token => {
  const figures = figuresOf(answer, reason);
  const shown = sayFigures(speech, figures.slice(0, mostFigures));
  return {
    t: 'reason',
    n: reason.n,
    text: sayCompared(speech, reason),
    outcome: outcomeWords[reason.outcome],
    note: figures.length > 0 ? shown : `rule ${reason.rule}, ${saySource(speech, reason.source)}`,
  };
};
