/** What has changed between two moments in words: each difference, its decisive cause, and what it is without that. */
import { isDay } from '../../engine/day.ts';
import type { Cause, Comparison, Doubt, Explained, Value } from '../../engine/types.ts';
import { sayClaim } from './answer.ts';
import { sayCause, sayCauses } from './cause.ts';
import { listed } from './listed.ts';
import { nameOf } from './names.ts';
import { capital, phrase } from './phrase.ts';
import { sayDay, sayValue } from './quantity.ts';
import type { Speech } from './speech.ts';
import type { Token } from './tokens.ts';

/** What else the wording needs: the ledger's raw lines, and whether the earlier answer was really given then. */
export interface Telling {
  readonly lines: readonly string[];
  readonly wasSaid: boolean;
}

const sayVerdict = (verdict: Value | null): string => {
  if (verdict === null) return 'no question';
  if (verdict === 'cannot-say') return 'not to be said';
  return verdict === 'amount' ? 'neither yes nor no' : String(verdict);
};

const whose = (group: string | null): string => (group === null ? '' : ` for the ${group}`);

/** A day found by looking ahead stands for itself and not for a fact. */
const isFirstDay = ({ fact }: Explained): boolean => fact === 'when';

const nameOfResult = (speech: Speech, each: Explained): string =>
  isFirstDay(each) ? 'the first day' : each.fact === null ? each.id : nameOf(speech, each.fact);

const sayPoint = (speech: Speech, { fact, unit }: Explained, value: Value | null): string => {
  if (value === null) return 'not known';
  // A first day may be "at once", which is no date.
  const isText = typeof value === 'string' && !isDay(value.slice(0, 10));
  return sayValue(speech, { value, unit: isText && unit === 'date' ? null : unit }, fact ?? '');
};

const sayTask = (
  speech: Speech,
  { was, is }: Comparison,
  { id, group, from, to, unit }: Explained,
): string => {
  const steps = (to === null ? was : is)?.parts.flatMap((part) => part.steps) ?? [];
  const step = steps.find((each) => each.rule === id && each.group === group);
  const says = step === undefined ? `${id}${whose(group)}` : capital(phrase(speech, step.says));
  if (to === null) return `No longer to do: ${says}`;
  if (from === null) return `New to do: ${says}`;
  return `Moved from ${sayValue(speech, { value: from, unit })} to ${sayValue(speech, { value: to, unit })}: ${says}`;
};

const sayTurn = (speech: Speech, comparison: Comparison, wasSaid: boolean, each: Explained): string => {
  const { group, from, to } = each;
  const day = sayDay(comparison.earlier.on, speech.today);
  const now = to === 'cannot-say' ? 'now I cannot say' : `now it is ${sayVerdict(to)}`;
  if (from === 'cannot-say') {
    const then = wasSaid ? `On ${day} I could not say` : `By what was known on ${day} I could not have said`;
    return `${then}${whose(group)}; ${now}.`;
  }
  const then = wasSaid ? `On ${day} I said` : `By what was known on ${day} it was`;
  return `${then} ${sayVerdict(from)}${whose(group)}; ${now}.`;
};

/** The difference itself: what it was and what it is. */
const sayDifference = (
  speech: Speech,
  comparison: Comparison,
  { wasSaid }: Telling,
  each: Explained,
): string => {
  const { what, group, from, to } = each;
  if (what === 'task') return sayTask(speech, comparison, each);
  if (what === 'verdict') return sayTurn(speech, comparison, wasSaid, each);
  if (what === 'rule')
    return `Still the same${whose(group)}, but by another rule: ${to ?? 'none'} instead of ${from ?? 'none'}.`;
  return `${capital(nameOfResult(speech, each))}${whose(group)}: ${sayPoint(speech, each, from)} then, ${sayPoint(speech, each, to)} now.`;
};

const doubts: Readonly<Record<Doubt, string>> = {
  'rules-not-kept': 'The rules of then are not at hand: what they had to do with it cannot be proved.',
  'program-changed': 'The program itself works this out otherwise than it did then.',
  'file-edited': 'Lines of the flock file that were there then have been edited since.',
};

/** What a difference would be without a cause, as far as it is a value to be said. */
const sayWithout = (speech: Speech, each: Explained, value: Value | null): string => {
  if (each.what === 'verdict') return sayVerdict(value);
  if (each.what === 'task')
    return value === null ? 'not to do' : value === true ? 'to do' : sayPoint(speech, each, value);
  return sayPoint(speech, each, value);
};

const isSame = (one: readonly Cause[], other: readonly Cause[]): boolean =>
  JSON.stringify(one) === JSON.stringify(other);

/** Why: the decisive cause and what it is without it, then what else would have undone it alone, or moved it a little. */
const sayWhy = (speech: Speech, { lines }: Telling, n: number, shared: readonly Explained[]): Token[] => {
  const [first] = shared;
  if (first === undefined) return [];
  const { causes, effects, from } = first;
  if (causes.length === 0) return [];
  // Of several differences one value would not do for all.
  const isOne = shared.every((each) => each.from === from && each.what === first.what);
  const is = isOne ? sayWithout(speech, first, from) : 'as it was';
  const text =
    causes.length === 1
      ? `Because ${sayCauses(speech, lines, causes)}. Without that: ${is}.`
      : `Because of these together: ${sayCauses(speech, lines, causes)}. Without all of them: ${is}.`;
  const others = effects.filter(({ cause }) => !causes.includes(cause));
  const alone = others.filter(({ isUndone }) => isUndone).map(({ cause }) => sayCause(speech, lines, cause));
  const parts = causes.length > 1 && first.size !== null ? effects : [];
  const moved = parts.map(
    ({ cause, without }) =>
      `${sayCause(speech, lines, cause)} (${sayPoint(speech, first, without)} without it)`,
  );
  return [
    { t: 'reason', n, text, outcome: null },
    ...(moved.length === 0 ? [] : [{ t: 'detail', text: `One by one: ${moved.join('; ')}.` } as const]),
    ...(alone.length === 0
      ? []
      : [{ t: 'detail', text: `It would be so again without this, too: ${listed(alone)}.` } as const]),
  ];
};

/** Results that are shown beside a verdict are no news by themselves, but for days. */
const isMinor = (kind: string | undefined, each: Explained): boolean =>
  each.what === 'result' && kind === 'yes-no' && each.unit !== 'date' && !isFirstDay(each);

/** A difference too small to be seen in the numbers as they are shown is none to be told. */
const isSeen = (speech: Speech, each: Explained, all: readonly Explained[]): boolean => {
  if (each.what !== 'result') return true;
  // That it is "at once" no longer is what the turned verdict says already.
  const isSaid = all.some(({ what, group }) => what === 'verdict' && group === each.group);
  if (isFirstDay(each) && isSaid && [each.from, each.to].includes('at once')) return false;
  return sayPoint(speech, each, each.from) !== sayPoint(speech, each, each.to);
};

/** More of them than this are not read any more; `--json` has them all. */
const mostMinor = 4;

const sayMinor = (speech: Speech, minor: readonly Explained[]): Token[] => {
  if (minor.length === 0) return [];
  const said = minor
    .slice(0, mostMinor)
    .map(
      (each) =>
        `${nameOfResult(speech, each)}${whose(each.group)} ${sayPoint(speech, each, each.from)} then and ${sayPoint(speech, each, each.to)} now`,
    );
  return [{ t: 'detail', text: `Also: ${said.join('; ')}.` }];
};

/** Differences with the same causes are told together, in the order of the first of each. */
const byCauses = (differences: readonly Explained[]): readonly (readonly Explained[])[] => {
  const groups: Explained[][] = [];
  for (const each of differences) {
    const group = groups.find(([first]) => first !== undefined && isSame(first.causes, each.causes));
    if (group === undefined) groups.push([each]);
    else group.push(each);
  }
  return groups;
};

/** That a verdict is what it was, where only numbers beside it have moved. */
const sayStill = ({ is }: Comparison): Token[] =>
  is.parts.map(({ group, verdict }) => ({
    t: 'claim',
    text: `Still ${sayVerdict(verdict)}${whose(group)}.`,
  }));

/**
 * The tokens of one comparison; none of them when nothing is different.
 * @param from the number that its first reason gets
 */
export const sayChanged = (
  speech: Speech,
  comparison: Comparison,
  telling: Telling,
  from = 1,
): readonly Token[] => {
  const kind = speech.book.questions[comparison.question]?.kind;
  const seen = comparison.differences.filter((each, _, all) => isSeen(speech, each, all));
  const major = seen.filter((each) => !isMinor(kind, each));
  const minor = seen.filter((each) => isMinor(kind, each));
  const claims = comparison.is.parts.filter(
    ({ group, headline }) =>
      headline !== null && major.some((each) => each.what === 'verdict' && each.group === group),
  );
  const isStill = kind === 'yes-no' && major.length === 0 && minor.length > 0;
  return [
    ...(isStill ? sayStill(comparison) : []),
    ...byCauses(major).flatMap((shared, at): Token[] => [
      ...shared.map(
        (each): Token => ({
          t: each.what === 'verdict' ? 'claim' : 'detail',
          text: sayDifference(speech, comparison, telling, each),
        }),
      ),
      ...sayWhy(speech, telling, from + at, shared),
    ]),
    ...claims.map((part): Token => ({ t: 'detail', text: `Now: ${capital(sayClaim(speech, part))}` })),
    ...sayMinor(speech, minor),
    ...(comparison.doubt === null ? [] : [{ t: 'caution', text: doubts[comparison.doubt] } as const]),
  ];
};
