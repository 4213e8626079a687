/** One answer given as a line of the advice log, and such lines read again. */
import { isDay } from '../day.ts';
import type { Advice, Answer, Gives, Moment, Part, Request, Result, Supposition, Value } from '../types.ts';

/** What is kept of an answer: what was asked, how much was known, and what it came to. */
export const adviceOf = (
  answer: Answer,
  asked: string,
  at: string,
  lines: number,
  print: string,
  alone = false,
): Advice => ({
  at,
  asked,
  ...(alone ? { alone } : {}),
  request: { ...answer.request, moment: { ...answer.request.moment, lines } },
  rules: answer.ref.split('-')[1] ?? '',
  print,
  ref: answer.ref,
  parts: answer.parts.map(({ group, verdict, rule }) => ({ group, verdict, rule })),
  results: answer.results,
});

type Fields = Readonly<Record<string, unknown>>;

const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const isText = (value: unknown): value is string => typeof value === 'string';
const isTextOrNull = (value: unknown): value is string | null => value === null || isText(value);
const isValue = (value: unknown): value is Value =>
  isText(value) || typeof value === 'boolean' || (typeof value === 'number' && Number.isFinite(value));
const isDayOrNull = (value: unknown): boolean => value === null || (isText(value) && isDay(value));
const isListOf = <T>(value: unknown, is: (each: unknown) => each is T): value is readonly T[] =>
  Array.isArray(value) && value.every(is);

const isMoment = (value: unknown): value is Moment =>
  isFields(value) &&
  isText(value.on) &&
  isDay(value.on) &&
  isDayOrNull(value.asOf) &&
  Number.isInteger(value.lines) &&
  value.without === undefined;

const isSupposition = (value: unknown): value is Supposition =>
  isFields(value) && isFields(value.what) && isValue(value.value) && typeof value.adds === 'boolean';

const isRequest = (value: unknown): value is Request =>
  isFields(value) &&
  isText(value.question) &&
  isListOf(value.groups, isText) &&
  isMoment(value.moment) &&
  isDayOrNull(value.until) &&
  isListOf(value.supposing, isSupposition);

const verdicts: readonly unknown[] = ['yes', 'no', 'cannot-say', 'amount', 'list'] satisfies readonly Gives[];

const isPart = (value: unknown): value is Pick<Part, 'group' | 'verdict' | 'rule'> =>
  isFields(value) &&
  isTextOrNull(value.group) &&
  verdicts.includes(value.verdict) &&
  isTextOrNull(value.rule);

const isResult = (value: unknown): value is Result =>
  isFields(value) &&
  isText(value.id) &&
  isText(value.fact) &&
  isTextOrNull(value.group) &&
  isValue(value.value) &&
  isTextOrNull(value.unit);

const isAdvice = (value: unknown): value is Advice =>
  isFields(value) &&
  isText(value.at) &&
  isDay(value.at.slice(0, 10)) &&
  isText(value.asked) &&
  (value.alone === undefined || typeof value.alone === 'boolean') &&
  isRequest(value.request) &&
  isText(value.rules) &&
  isText(value.print) &&
  isText(value.ref) &&
  isListOf(value.parts, isPart) &&
  isListOf(value.results, isResult);

const parsed = (line: string): unknown => {
  try {
    return JSON.parse(line);
  } catch {
    return null;
  }
};

/** What a log holds; `damaged` are the numbers of lines that cannot be read, which stand in nobody's way. */
export interface AdviceLog {
  readonly advice: readonly Advice[];
  readonly damaged: readonly number[];
}

/** Reads the text of a log, oldest line first. Never throws. */
export const readAdvice = (text: string): AdviceLog => {
  const advice: Advice[] = [];
  const damaged: number[] = [];
  for (const [index, line] of text.split('\n').entries()) {
    if (line.trim() === '') continue;
    const value = parsed(line);
    if (isAdvice(value)) advice.push(value);
    else damaged.push(index + 1);
  }
  return { advice, damaged };
};
