/** One reason in words: what was compared, how it came out, and which figure from which source stands behind it. */
import type { Answer, FigureUse, Reason } from '../../engine/types.ts';
import { capital, listed, phrase } from './phrase.ts';
import { sayDay, sayValue } from './quantity.ts';
import type { Speech } from './speech.ts';
import type { OutcomeWord, Token } from './tokens.ts';

export const outcomeWords: Readonly<Record<Reason['outcome'], OutcomeWord>> = {
  held: 'held',
  failed: 'failed',
  unknown: 'not known',
};

/** A source as it is named beside a figure. */
export const saySource = (speech: Speech, id: string): string => {
  const source = speech.book.sources[id];
  if (source === undefined) return id;
  if (source.standing === 'judgement' || source.standing === 'practice') return source.title.toLowerCase();
  const standing = source.standing === 'memory' ? ', from memory' : source.standing === 'derived' ? ', worked out' : '';
  return `${source.author}, ${source.year}${standing}`;
};

/** A figure with its number, its beginning and its source: `50 °F (pasture/lowest-night, since 2026; own judgement)`. */
export const sayFigure = (speech: Speech, use: FigureUse): string => {
  const number = sayValue(speech, { value: use.value, unit: use.unit });
  if (use.own) return `${use.id} ${number}, set by you on ${sayDay(use.from, speech.today)}`;
  return `${use.id} ${number}, ${saySource(speech, use.source)}`;
};

/** Figures that a reason rests on: its own, or those that went straight into the facts it compares. */
export const figuresOf = (answer: Answer, reason: Reason): readonly FigureUse[] => {
  if (reason.figure !== null) return [reason.figure];
  const facts = [reason.fact.id, ...(reason.other === null ? [] : [reason.other.id])];
  return facts.flatMap(
    (fact) =>
      answer.workings.find((step) => step.fact === fact && (step.group === null || step.group === reason.group))?.figures ?? [],
  );
};

export const sayReason = (speech: Speech, answer: Answer, reason: Reason): Token => {
  const figures = figuresOf(answer, reason).map((use) => sayFigure(speech, use));
  return {
    t: 'reason',
    n: reason.n,
    text: capital(phrase(speech, reason.says)),
    outcome: outcomeWords[reason.outcome],
    note: figures.length > 0 ? listed(figures) : `rule ${reason.rule}, ${saySource(speech, reason.source)}`,
  };
};
