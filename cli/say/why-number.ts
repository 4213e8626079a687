/** "why 7.5 lb": whatever an answer says by a number, opened – a value, a figure, what is taken for granted or how much of it, a sum, or a rule's own words. */
import {
  figuresSaid,
  type SentenceSaid,
  sentencesSaid,
  stepOf,
  stepsSaid,
} from '../../engine/explain/drill.ts';
import type { Answer, Result, Step } from '../../engine/types.ts';
import { isRound } from './answer.ts';
import { sayAssumed, sayEachAssumed, sayHowManyAssumed } from './assumed.ts';
import { nameOf } from './names.ts';
import { capital, phrase } from './phrase.ts';
import { sayValue } from './quantity.ts';
import { sayFigure } from './reason.ts';
import type { Speech } from './speech.ts';
import type { Token } from './tokens.ts';
import { sayRight, saySteps } from './why.ts';

/** Where a value stands that was said and is under no numbered reason: `0.3` is the third of them. */
export const saidAnywhere = 0;

/** Everything worked out for an answer, what it says first: the order in which `0.1`, `0.2` … count. */
export const openable = (answer: Answer): readonly Step[] => [
  ...new Set([...stepsSaid(answer), ...answer.workings]),
];

/** Numbers as they are read, days of the month and times of day among them. */
const numbersIn = (text: string): readonly string[] =>
  [...text.matchAll(/\d+(?:[.,:]\d+)*/g)].map(([n]) => n);

/** Whether a number is read in a text; 1,000 and 1000 are one number, as are 6 and 6.0. */
const isRead = (number: string, text: string): boolean => {
  const plain = (of: string): string => of.replace(/,/g, '');
  const same = (one: string, other: string): boolean =>
    one === other || (!one.includes(':') && !other.includes(':') && Number(one) === Number(other));
  return numbersIn(text).some((each) => same(plain(each), plain(number)));
};

/** A sum over groups that no single step stands for, with what each group adds to it. */
const sayTotal = (speech: Speech, answer: Answer, total: Result): Token[] => {
  const added = answer.results.filter(({ fact, group }) => fact === total.fact && group !== null);
  const steps = openable(answer);
  return [
    {
      t: 'heading',
      text: `${capital(nameOf(speech, total.fact))} together: ${sayValue(speech, total, total.fact)}`,
    },
    ...added.map((each): Token => {
      const step = stepOf(answer, each.fact, each.group);
      const from = step === undefined ? '' : `${saidAnywhere}.${steps.indexOf(step) + 1} `;
      return { t: 'detail', text: `${from}The ${each.group}: ${sayValue(speech, each, each.fact)}.` };
    }),
  ];
};

/** What a round takes for granted, one by one, where the number is how many that is. */
const sayCounted = (speech: Speech, answer: Answer, number: string): Token[] => {
  const counted = isRound(answer) ? sayHowManyAssumed(speech, answer.assumed) : null;
  if (counted === null || !isRead(number, counted)) return [];
  return [
    { t: 'heading', text: counted },
    ...sayEachAssumed(speech, answer.assumed).map(
      (text): Token => ({ t: 'detail', text: `${capital(text)}.` }),
    ),
  ];
};

/** A rule in whose own words the number stands, with what it rests on. */
const sayRule = (speech: Speech, { rule, says }: SentenceSaid): Token[] => {
  const found = speech.book.rules[rule];
  const words = `"${capital(phrase(speech, says))}" are the words of rule`;
  return found === undefined ? [] : [{ t: 'detail', text: `${words} ${sayRight(speech, found)}` }];
};

/** The day asked about, where a sentence names it: it stands on nothing but the question. */
const sayDaysAsked = (speech: Speech, answer: Answer, isShown: (text: string) => boolean): Token[] =>
  sentencesSaid(answer).flatMap(({ says }) =>
    ['on', 'until'].flatMap((name): Token[] => {
      const shown = says.values[name];
      const day = shown === undefined ? '' : sayValue(speech, shown, name);
      const what = name === 'on' ? 'the day asked about' : 'the end of the days asked about';
      return isShown(day) ? [{ t: 'detail', text: `${day} is ${what}.` }] : [];
    }),
  );

const eachOnce = (tokens: readonly Token[]): Token[] => [
  ...new Map(tokens.map((token) => [JSON.stringify(token), token])).values(),
];

/**
 * What stands behind a number that an answer says, wherever it says it; nothing where it does not.
 * @param lines raw lines of the ledger, line 1 first
 */
export const sayNumber = (
  speech: Speech,
  answer: Answer,
  lines: readonly string[],
  number: string,
): readonly Token[] => {
  const steps = openable(answer);
  const isShown = (step: Step): boolean =>
    step.value !== null && isRead(number, sayValue(speech, step, step.fact));
  const open = (step: Step): readonly Token[] =>
    saySteps(speech, answer, lines, [step], `${saidAnywhere}.${steps.indexOf(step) + 1}`);
  const figures = figuresSaid(answer).map((use): Token => ({ t: 'figure', text: sayFigure(speech, use) }));
  const said: readonly Token[] = [
    ...stepsSaid(answer).filter(isShown).flatMap(open),
    ...figures.filter((token) => token.t === 'figure' && isRead(number, token.text.split(', ')[0] ?? '')),
    ...answer.results
      .filter(({ fact, group }) => group === null && stepOf(answer, fact, null) === undefined)
      .filter((total) => isRead(number, sayValue(speech, total, total.fact)))
      .flatMap((total) => sayTotal(speech, answer, total)),
    ...sayCounted(speech, answer, number),
    ...sentencesSaid(answer)
      .filter(({ says }) => isRead(number, says.template.replace(/\{[^}]*\}/g, ' ')))
      .flatMap((each) => sayRule(speech, each)),
    ...sayDaysAsked(speech, answer, (day) => isRead(number, day)),
  ];
  if (said.length > 0) return eachOnce(said);
  const taken = steps.filter((step) => step.assumed.some((each) => isRead(number, sayAssumed(speech, each))));
  return eachOnce((taken.length > 0 ? taken : steps.filter(isShown)).flatMap(open));
};
