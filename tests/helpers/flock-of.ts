/** A flock from a few lines, opened by the engine's own door over the shipped rules, and questions put to it. */
import { type Engine, openText } from '../../engine/index.ts';
import type { Answer, Part, Request, Rulebook } from '../../engine/types.ts';
import { rulebook } from './rulebook-of.ts';

export const shipped: Rulebook = rulebook().book;

/** An entry as it stands in the file. */
export type Line = Readonly<Record<string, unknown>>;

export const flockOf = (...lines: readonly Line[]): Engine =>
  openText(shipped, 'flock.jsonl', lines.map((line) => `${JSON.stringify(line)}\n`).join(''));

/** Asks a question on a day; all is believed and nothing supposed unless said otherwise. */
export const ask = (
  engine: Engine,
  question: string,
  on: string,
  more: Partial<Request> = {},
): Promise<Answer> =>
  engine.ask({
    question,
    groups: [],
    moment: { on, asOf: null, lines: null },
    until: null,
    supposing: [],
    ...more,
  });

/** The answer for the one group that it is about. */
export const partOf = (answer: Answer): Part => {
  const [part] = answer.parts;
  if (part === undefined || answer.parts.length > 1) throw new Error(`${answer.parts.length} parts`);
  return part;
};
