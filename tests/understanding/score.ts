/** How well labelled lines are understood: right, asked back, wrong or turned away. */
import type { About, Heard } from '../../cli/understand/types.ts';
import { understand } from '../../cli/understand/understand.ts';
import { lexiconFor } from '../helpers/learned.ts';

/** One line with its label, in the shape of the labelled files. `none` is a line that nothing here answers. */
export interface Labelled {
  readonly text: string;
  readonly topic: string;
  readonly also?: readonly string[];
  readonly after?: string;
  /** The danger that a line outside speaks of. */
  readonly hazard?: string;
}

/** `right` and `wrong` were taken as sure; `asked` has the right one among the choices, `astray` has not; `away` is turned away. */
export type Outcome = 'right' | 'asked' | 'astray' | 'wrong' | 'away';

export interface Scored {
  readonly line: Labelled;
  readonly heard: Heard;
  readonly outcome: Outcome;
  /** False for a line on what cannot be asked yet, which is right to turn away. */
  readonly askable: boolean;
  /** Turned away, and yet the right one is among what is offered with it. */
  readonly offered: boolean;
}

/** Reads a file of one JSON object a line. */
export const readLabelled = (text: string): readonly Labelled[] =>
  text
    .split('\n')
    .filter((line) => line.trim() !== '')
    .map((line) => JSON.parse(line) as Labelled);

const judge = (heard: Heard, wanted: ReadonlySet<string>): Outcome => {
  const [best] = heard.readings;
  if (best === undefined) return 'away';
  if (heard.sure) return wanted.has(best.topic) ? 'right' : 'wrong';
  return heard.readings.some((reading) => wanted.has(reading.topic)) ? 'asked' : 'astray';
};

/** Hears every line, each after the line it follows up on. */
export const scoreLines = (lines: readonly Labelled[], about: About): readonly Scored[] => {
  const lexicon = lexiconFor(about.book);
  const known = new Set(lexicon.topics.map((topic) => topic.id));
  return lines.map((line): Scored => {
    const before = line.after === undefined ? null : understand(line.after, about, lexicon);
    const heard = understand(line.text, { ...about, before }, lexicon);
    const wanted = new Set([line.topic, ...(line.also ?? [])].filter((topic) => known.has(topic)));
    const offered = heard.readings.length === 0 && heard.nearest.some(({ topic }) => wanted.has(topic));
    return { line, heard, outcome: judge(heard, wanted), askable: known.has(line.topic), offered };
  });
};

/** Counts by outcome. */
export const countOutcomes = (scored: readonly Scored[]): Readonly<Record<Outcome, number>> => {
  const counts = { right: 0, asked: 0, astray: 0, wrong: 0, away: 0 };
  for (const each of scored) counts[each.outcome] += 1;
  return counts;
};
