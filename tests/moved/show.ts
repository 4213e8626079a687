/** A comparison of answers in lines: by question how many moved, and an example of each kind. */
import { sayDay } from '../../cli/say/quantity.ts';
import type { Speech } from '../../cli/say/speech.ts';
import type { Comparison, Move, Moved } from './moves.ts';

/** Long values, such as plans, are cut: an example is to be recognised, not read whole. */
const longest = 60;
const short = (text: string): string => (text.length > longest ? `${text.slice(0, longest - 1)}…` : text);

const example = (speech: Speech, { flock, on, group, what, from, to }: Move): string =>
  `${flock}, ${sayDay(on, speech.today)}${group === null ? '' : `, the ${group}`}: ${what === null ? '' : `${what} `}${short(from)} → ${short(to)}`;

/** Moves of the same kind together: turns between the same two verdicts, or one result. */
const alike = (
  moves: readonly Move[],
  kind: (move: Move) => string,
): readonly (readonly [string, readonly Move[]])[] => {
  const kinds = new Map<string, Move[]>();
  for (const move of moves) kinds.set(kind(move), [...(kinds.get(kind(move)) ?? []), move]);
  return [...kinds].sort(([, one], [, other]) => other.length - one.length);
};

const linesOf = (
  speech: Speech,
  { question, compared, turned, changed, added, dropped }: Moved,
): string[] => {
  const turns = alike(turned, ({ from, to }) => `${from.split(' ')[0]} → ${to.split(' ')[0]}`);
  const amounts = alike(changed, ({ what }) => what ?? '');
  if (turns.length + amounts.length + added.length + dropped.length === 0) return [];
  const shown = (kinds: typeof turns): string[] =>
    kinds.flatMap(([kind, [first, ...others]]) =>
      first === undefined
        ? []
        : [`  ${kind}: ${others.length + 1} times`, `    as ${example(speech, first)}`],
    );
  return [
    `${question}: ${compared} answers, ${turned.length} turned, ${changed.length} amounts read otherwise`,
    ...shown(turns),
    ...shown(amounts),
    ...(added.length === 0 ? [] : [`  told only now: ${added.join(', ')}`]),
    ...(dropped.length === 0 ? [] : [`  told no more: ${dropped.join(', ')}`]),
  ];
};

/** The comparison as lines for somebody who writes the changelog. */
export const showMoves = (speech: Speech, { moved, added, dropped }: Comparison): readonly string[] => {
  const still = moved.filter((each) => linesOf(speech, each).length === 0).map(({ question }) => question);
  const sum = (count: (each: Moved) => number): number =>
    moved.reduce((total, each) => total + count(each), 0);
  return [
    `${sum(({ compared }) => compared)} answers in both, ${sum(({ turned }) => turned.length)} turned, ${sum(({ changed }) => changed.length)} amounts read otherwise`,
    ...moved.flatMap((each) => linesOf(speech, each)),
    ...(still.length === 0 ? [] : [`Not moved: ${still.join(', ')}`]),
    ...(added.length === 0 ? [] : [`Answered only now: ${added.join(', ')}`]),
    ...(dropped.length === 0 ? [] : [`Answered no more: ${dropped.join(', ')}`]),
  ];
};
