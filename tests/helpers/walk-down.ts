/** Walks from what an answer shows down to what it stands on, as a reader who believes nothing would. */
import { sayAnswer } from '../../cli/say/answer.ts';
import { plain } from '../../cli/say/plain.ts';
import type { Speech } from '../../cli/say/speech.ts';
import type { Token } from '../../cli/say/tokens.ts';
import { explainWhy } from '../../cli/talk/why.ts';
import { stepOf, stepsInto } from '../../engine/explain/drill.ts';
import type { Answer, Step } from '../../engine/types.ts';
import { toBase } from '../../engine/units.ts';

/** What an answer claims: not what could be asked next, nor what is not known. */
const claims: readonly Token['t'][] = ['claim', 'reason', 'caution', 'detail', 'step'];

const textOf = (token: Token): string => ('text' in token && claims.includes(token.t) ? token.text : '');

/** Numbers as they are read, dates and times of day among them. */
const numbersIn = (text: string): readonly string[] =>
  [...text.matchAll(/\d+(?:[.,:]\d+)*/g)].map(([n]) => n);

/** The numbers that an answer shows and "why" with that number does not open, each with the text it stands in first. */
export const lostNumbers = (speech: Speech, answer: Answer, lines: readonly string[]): readonly string[] => {
  const shown = new Map<string, string>();
  for (const text of sayAnswer(speech, answer).map(textOf))
    for (const number of numbersIn(text)) if (!shown.has(number)) shown.set(number, text);
  return [...shown].flatMap(([number, text]) => {
    const { isFound, tokens } = explainWhy(speech, answer, lines, `why the ${number}`);
    const told = plain(tokens, 1000).join('\n');
    return isFound && told.includes(number) ? [] : [`${number} in "${text}"`];
  });
};

/** Nothing of the kind is on record: there is no line to point at. */
const isNothing = (step: Step): boolean =>
  step.value === null || ['0', 'false', 'no', 'none', ''].includes(String(step.value));

const isGround = ({ facts, figures, entries, assumed, supposed }: Step): boolean =>
  supposed || [facts, figures, entries, assumed].some((each) => each.length > 0);

/** Every step below some steps, themselves included. */
export const stepsBelow = (
  answer: Answer,
  steps: readonly Step[],
  seen = new Set<Step>(),
): ReadonlySet<Step> => {
  for (const step of steps) {
    if (seen.has(step)) continue;
    seen.add(step);
    stepsBelow(answer, stepsInto(answer, step), seen);
  }
  return seen;
};

/** Facts of the question itself, or of a group that it tries: they rest on what was asked. */
const ofTheQuestion = new Set(['span-days', 'today-is', 'batch-hatch', 'batch-arrives', 'batch-kind']);

/** Where a walk down from these steps ends in the air: at parts never worked out, or values that stand on nothing. */
export const endsInTheAir = (answer: Answer, steps: readonly Step[]): readonly string[] => {
  const all = [...stepsBelow(answer, steps)];
  const lost = all.flatMap((step) =>
    step.facts
      .filter(({ fact, group }) => stepOf(answer, fact, group) === undefined)
      .map(({ fact }) => `${step.fact} rests on ${fact}, which was not worked out`),
  );
  const bare = all.filter((step) => !isGround(step) && !isNothing(step) && !ofTheQuestion.has(step.fact));
  return [...lost, ...bare.map(({ fact, value }) => `${fact} = ${value} stands on nothing`)];
};

type Sum = (one: number, other: number) => number;

const times: Sum = (one, other) => one * other;
const over: Sum = (one, other) => one / other;
const less: Sum = (one, other) => one - other;
const plus: Sum = (one, other) => one + other;

/** What the words between two values of a working may mean; "3 of 48 birds" is a share, "4.5 lb of 30 birds" is not. */
const meanings: Readonly<Record<string, readonly Sum[]>> = {
  times: [times],
  over: [over],
  'divided by': [over],
  'shared by': [over],
  'shared over': [over],
  less: [less],
  plus: [plus],
  // "put in less 3 eaten and 2 handed over" takes both away.
  and: [plus, less],
  of: [times, over],
  at: [times, over],
};

/** Words that make more of a working than one sum. */
const more =
  /\b(else|where|when|unless|until|by|since|from|chance|larger|higher|lower|fewest|expected on|before|never|as a share|in eight weeks|instead|among|for each|in what is left|with a)\b|;/;

interface Working {
  readonly names: readonly string[];
  /** Between each two of them what may be meant. */
  readonly between: readonly (readonly Sum[])[];
  /** Whether the last is a share of the first: "{cost} and {margin} of it". */
  readonly ofItself: boolean;
}

/** A working that is nothing but a sum: `{feed-per-bird-day} times {alive}`, `{boxed} in the box, less {dead} dead in it`. */
const sumIn = (how: string): Working | null => {
  const names = [...how.matchAll(/\{([^}]+)\}/g)].map(([, name = '']) => name);
  const [before = '', ...words] = how.split(/\{[^}]+\}/);
  const after = words.pop() ?? '';
  const between = words.map((each) =>
    Object.entries(meanings).flatMap(([word, sums]) =>
      new RegExp(`\\b${word}\\b`).test(each) ? [sums] : [],
    ),
  );
  const isPlain =
    before.trim() === '' && !more.test(words.join(' ').replace(/(divided|shared) by/g, '') + after);
  if (names.length < 2 || !isPlain || between.some((found) => found.length !== 1)) return null;
  return { names, between: between.map(([sums = []]) => sums), ofItself: /^ of (it|them)\b/.test(after) };
};

const isClose = (one: number, other: number): boolean =>
  Math.abs(one - other) <= 1e-9 * Math.max(1, Math.abs(one), Math.abs(other));

/**
 * What the working of a step comes to, from its recorded parts and left to right, for each way of reading it; none where the
 * working is no plain sum of numbers that are all there.
 */
export const sumsAgain = ({ book }: Speech, answer: Answer, step: Step): readonly number[] => {
  const working = sumIn(book.facts[step.fact]?.how ?? '');
  // "{table} at {age}" is looked up, not summed.
  const isLookedUp = (book.figures[working?.names[0] ?? '']?.by.length ?? 0) > 0;
  if (isLookedUp || working === null || step.supposed || typeof step.value !== 'number') return [];
  const values = working.names.map((name) => {
    const figure = step.figures.find(({ id }) => id === name);
    const value = figure === undefined ? stepOf(answer, name, step.group)?.value : toBase(book.units, figure);
    return typeof value === 'number' ? value : Number.NaN;
  });
  const [first = Number.NaN, share = 0] = values;
  if (values.some(Number.isNaN)) return [];
  if (working.ofItself) return [first * (1 + share), first * (1 - share)];
  const along = (summed: readonly number[]): readonly number[] =>
    summed
      .slice(1)
      .reduce<readonly number[]>(
        (sums, value, at) =>
          sums.flatMap((sum) => (working.between[at] ?? []).map((meant) => meant(sum, value))),
        summed.slice(0, 1),
      );
  const endsInAnd = values.length > 2 && working.between.at(-1)?.includes(plus) === true;
  const [last = 0, lastButOne = 0] = values.toReversed();
  // "over what they had so far and what is to come": the two belong together.
  return [...along(values), ...(endsInAnd ? along([...values.slice(0, -2), lastButOne + last]) : [])];
};

/**
 * The same sum as it may be told: whole things and cents are rounded, nothing falls below none, and what is done in an hour or
 * a week gives hours or weeks where the engine counts days, what lies on a hectare where it is told by the square metre.
 */
const roundings: readonly ((sum: number) => number)[] = [
  (sum) => sum,
  (sum) => Math.max(0, sum),
  Math.round,
  Math.ceil,
  Math.floor,
  (sum) => Math.round(sum * 100) / 100,
  (sum) => sum / 24,
  (sum) => sum * 7,
  (sum) => sum * 10_000,
];

/** Workings that do not come to the value they are told for. */
export const wrongSums = (speech: Speech, answer: Answer): readonly string[] =>
  answer.workings.flatMap((step) => {
    const again = sumsAgain(speech, answer, step);
    const isRight = again.some((sum) => roundings.some((round) => isClose(round(sum), Number(step.value))));
    return again.length === 0 || isRight
      ? []
      : [`${step.fact} of ${step.group} is ${step.value}, its working comes to ${again.join(' or ')}`];
  });
