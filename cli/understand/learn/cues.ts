/** All that the words of a line say of its topic, in the two ways in which they are weighed: by word and by letter. */
import { type Feature, featuresOf } from '../features.ts';
import type { Line } from '../find/all.ts';
import { weighForm } from '../form.ts';
import type { TermSpan } from '../spans.ts';
import { lettersOf } from './letters.ts';

export interface Cues {
  readonly words: readonly Feature[];
  readonly letters: readonly Feature[];
}

/** Counts above these are all alike. */
const most = { ideas: 5, fours: 6, form: 3 };

/** What the line is like as a whole: how long, how many ideas of the trade it names, and whether it looks asked or told. */
const shapeOf = (line: Line): readonly Feature[] => {
  const ideas = new Set(
    line.spans.flatMap((span) => (span.kind === 'term' ? [`${span.list} ${span.id}`] : [])),
  );
  const form = Math.round(Math.max(-most.form, Math.min(most.form, weighForm(line))));
  const names = [
    `<ideas ${Math.min(ideas.size, most.ideas)}>`,
    `<fours ${Math.min(Math.floor(line.tokens.length / 4), most.fours)}>`,
    `<form ${form}>`,
    '<always>',
  ];
  return names.map((id) => ({ id, from: 0, to: line.tokens.length }));
};

/** The cues of one line. */
export const cuesOf = (line: Line, classOf: (span: TermSpan) => string | null): Cues => ({
  words: [...featuresOf(line, classOf), ...shapeOf(line)],
  letters: lettersOf(line),
});

const noValues = new Set(['<day>', '<stretch>', '<group>', '<always>']);

/** Whether a feature is a value of some sort, a measure among them. */
export const isValueCue = (id: string): boolean => /^<[a-z]+>$/.test(id) && !noValues.has(id);

/** What tells the kind of change that a line supposes, in both ways: beside its words, the question and the sorts of values in it. */
export const kindCuesOf = (
  { words, letters }: Cues,
  topic: string,
): Readonly<Record<keyof Cues, readonly string[]>> => {
  const values = words.map((cue) => cue.id).filter(isValueCue);
  const asked = [`about ${topic}`, ...values.map((id) => `about ${topic} ${id}`)];
  return {
    words: [...words.map((cue) => cue.id), ...asked],
    letters: [...letters.map((cue) => cue.id), ...asked],
  };
};
