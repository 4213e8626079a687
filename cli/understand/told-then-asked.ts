/** Where one breath tells something and asks something: `four of us, one pen 10 by 12, when do I order`, `two dead, is that normal`. */
import { findClauses } from './find/clauses.ts';
import { findHousehold } from './find/household.ts';
import { weighForm } from './form.ts';
import { spansOf } from './spans.ts';
import { type Clause, cutClauses, isBare, ownKind, type ReadClause, splitTold } from './split.ts';
import { isAhead, type ToldDraft, tell } from './tell.ts';
import type { Token } from './tokens.ts';
import type { About } from './types.ts';

/** The two halves of such a line, in the keeper's words, and the settings or other records that the first one makes. */
export interface ToldThenAsked {
  readonly told: string;
  readonly asked: string;
  readonly drafts: readonly ToldDraft[];
  /** Whether it only says how the place is, rather than what has happened. */
  readonly isSettings: boolean;
}

/** Further ends of a clause: behind a question mark, or at a dash that stands by itself. */
const besides = /(?<=\?)\s+|\s+[-–—]+\s+/;

/** A clause without a value asks when one question is likelier than this. */
const plainlyAbout = 0.7;

/** A clause behind a question tells something when its form is as plain as this. */
const plainlyTold = -1.5;

/** A clause by itself tells a setting when it is at least so likely to. */
const likelyTold = 0.3;

/** Settings of an idea that stand by their measure alone: where birds will live, and where their meat will lie. */
const roomy = new Set(['freezer', 'freezer-free', 'pen', 'brooder', 'ground']);

/** A setting by what the clause is about, or so many of a household; a number beside some noun is none yet. */
const settingIn = (text: string, { line, matches }: Clause, about: About): ToldDraft | null => {
  const told = tell('setting', text, line, about, null);
  if (told === null || told.draft.missing.length > 0) return null;
  const isLikely = matches.some(({ topic, score }) => topic.id === 'tell:setting' && score >= likelyTold);
  // "200 l free in the freezer" may be a question by its words, and is none by its form.
  const isMeasured =
    roomy.has(String(told.draft.fields.what)) &&
    line.spans.some(({ kind }) => kind === 'size' || kind === 'quantity');
  const isOfHousehold = ['eaters', 'birds-a-week'].includes(String(told.draft.fields.what));
  return isLikely || isMeasured || isOfHousehold ? told : null;
};

/** `a chicken a week` is a value without a number. */
const hasValue = ({ tokens, spans }: Clause['line']): boolean =>
  spans.some(({ kind }) => ['number', 'quantity', 'size', 'money'].includes(kind)) ||
  findHousehold(tokens).spans.length > 0;

const namesMouths = ({ tokens }: Clause['line']): boolean => findHousehold(tokens).mouths > 0;

/** The settings of some clauses; null where one of them has a value that is none. */
const settingsOf = (
  texts: readonly string[],
  read: ReadClause,
  about: About,
): readonly ToldDraft[] | null => {
  const pieces: string[] = [];
  for (const text of texts) {
    const clause = read(text);
    const last = pieces.at(-1);
    if (!hasValue(clause.line) && !namesMouths(clause.line)) continue;
    // "me, my wife and two kids" are one household
    const isMore = last !== undefined && namesMouths(read(last).line) && namesMouths(clause.line);
    if (last !== undefined && (isBare(clause.line) || isMore)) pieces[pieces.length - 1] = `${last}, ${text}`;
    else pieces.push(text);
  }
  const drafts = pieces
    .filter((text) => hasValue(read(text).line))
    .map((text) => settingIn(text, read(text), about));
  return drafts.every((draft) => draft !== null) ? drafts : null;
};

/** Whether every day named is plainly gone by or today: `on saturday we slaughter 30` may be to come. */
const isPast = ({ spans }: Clause['line'], { today }: About): boolean =>
  spansOf(spans, 'day').every(({ plain, past }) => plain && past <= today);

/** Weather to come, or of no day at all, belongs to the question: `low of 30 tonight, will they be all right`. */
const isWeatherAskedOf = (drafts: readonly ToldDraft[], { line }: Clause): boolean =>
  drafts.every(({ draft }) => draft.kind === 'weather') &&
  (spansOf(line.spans, 'day').length === 0 || drafts.some(({ draft }) => draft.fields.forecast === true));

/** Records of what has happened, each plain and lacking nothing; none where any of it is in doubt. */
const happeningsOf = (
  texts: readonly string[],
  told: string,
  read: ReadClause,
  about: About,
): readonly ToldDraft[] => {
  const one = read(told);
  if (isAhead(one.line) || !isPast(one.line, about)) return [];
  const kind = ownKind(one, about);
  const single = kind === null ? null : tell(kind, told, one.line, about, null);
  const drafts = splitTold(texts, read, about) ?? (single === null ? [] : [single]);
  const isDoubtful = drafts.some(({ draft }) => draft.missing.length > 0 || draft.kind === 'note');
  return isDoubtful || isWeatherAskedOf(drafts, one) ? [] : drafts;
};

const isAskedByForm = ({ line }: Clause): boolean => weighForm(line) > 0;

/** `plan the year` has the form of something told, and is plainly a question by what it is about. */
const isAskedAbout = ({ line, matches: [best] }: Clause): boolean =>
  !hasValue(line) && !namesMouths(line) && best?.topic.family === 'ask' && best.score >= plainlyAbout;

/** Halves in either order: the question stands last, or first. */
const halvesOf = (
  texts: readonly string[],
  read: ReadClause,
): { readonly told: readonly string[]; readonly asked: readonly string[] } | null => {
  const isAsked = texts.map((text) => isAskedByForm(read(text)));
  const first = isAsked.indexOf(true);
  const last = texts.at(-1) ?? '';
  if (first < 0)
    return isAskedAbout(read(last)) ? { told: texts.slice(0, -1), asked: texts.slice(-1) } : null;
  if (first > 0) return { told: texts.slice(0, first), asked: texts.slice(first) };
  const next = isAsked.indexOf(false);
  return next < 0 ? null : { told: texts.slice(next), asked: texts.slice(0, next) };
};

/** The words of a line from the first of some of its clauses to the end of the last. */
const wordsOf = (words: string, texts: readonly string[]): string => {
  const from = words.indexOf(texts[0] ?? '');
  const last = texts.at(-1) ?? '';
  return words.slice(from, words.lastIndexOf(last) + last.length);
};

/**
 * The halves of a line whose one half is settings, each with its value, and the other a question; null for any other line.
 * A what-if tells nothing, whatever it looks like.
 */
export const findToldThenAsked = (
  words: string,
  tokens: readonly Token[],
  read: ReadClause,
  about: About,
): ToldThenAsked | null => {
  if (findClauses(tokens).length > 0) return null;
  const texts = cutClauses(words, tokens).flatMap((text) => text.split(besides));
  if (texts.length < 2) return null;
  const split = halvesOf(texts, read);
  if (split === null) return null;
  const halves = { told: wordsOf(words, split.told), asked: wordsOf(words, split.asked) };
  const settings = settingsOf(split.told, read, about);
  if (settings !== null && settings.length > 0) return { ...halves, drafts: settings, isSettings: true };
  // Behind a question, "and humidity of 20" is part of what is asked; "and I lost two" is told.
  const isBehind = split.asked[0] === texts[0];
  if (isBehind && weighForm(read(halves.told).line) > plainlyTold) return null;
  const drafts = happeningsOf(split.told, halves.told, read, about);
  return drafts.length === 0 ? null : { ...halves, drafts, isSettings: false };
};
