/** Where one breath tells several things, and what each of them is. */
import type { Day } from '../../engine/day.ts';
import type { Line } from './find/all.ts';
import { functionWords } from './function-words.ts';
import type { Match } from './match.ts';
import { type Span, spansOf } from './spans.ts';
import { type ToldDraft, tell } from './tell.ts';
import type { Token } from './tokens.ts';
import type { About } from './types.ts';

/** A part of a line with its own words, finds and matches. */
export interface Clause {
  readonly words: string;
  readonly line: Line;
  readonly matches: readonly Match[];
}

export type ReadClause = (words: string) => Clause;

const joints = new Set(['and', 'then', 'also', 'plus']);
const stops = new Set(['.', ',', ';', '!', '&', '+']);
const leaningOn = [
  'looked like',
  'looks like',
  'probably',
  'maybe',
  'think',
  'because',
  'no idea',
  'not sure',
  'must have',
];

const bounds = { strong: 0.5, lead: 0.15, clauses: 8 };

/** A number, a weight or a volume; a temperature by itself still tells the weather. */
const isAmount = (span: Span): boolean =>
  span.kind === 'number' || (span.kind === 'quantity' && span.dimension !== 'temperature');

/** A bare amount is a part of what stands before it, whatever it may look like by itself. */
export const isBare = ({ tokens, spans }: Line): boolean =>
  spans.every((span) => span.kind !== 'day') &&
  tokens.every(
    (token, at) =>
      token.isMark ||
      functionWords.has(token.word) ||
      spans.some((span) => isAmount(span) && span.from <= at && at < span.to),
  );

/** The texts between stops and joining words. */
export const cutClauses = (
  words: string,
  tokens: readonly Token[],
  spans: readonly Span[] = [],
): readonly string[] => {
  const isInside = (at: number): boolean =>
    spans.some((span) => span.kind !== 'term' && span.from < at && at < span.to - 1);
  const texts: string[] = [];
  let from = 0;
  for (const [at, token] of tokens.entries()) {
    // "five and a quarter pounds" is one amount
    if ((!stops.has(token.word) && !joints.has(token.word)) || isInside(at)) continue;
    texts.push(words.slice(from, token.start));
    from = token.end;
  }
  texts.push(words.slice(from));
  return texts.map((text) => text.trim()).filter((text) => text !== '');
};

/** The kind of record that a clause tells by itself, with nothing required missing but perhaps the group. */
export const ownKind = (clause: Clause, about: About): string | null => {
  const best = clause.matches[0];
  const next = clause.matches.slice(1).find((match) => match.topic.family === 'tell');
  if (best === undefined || best.topic.family !== 'tell' || best.score < bounds.strong) return null;
  if (isBare(clause.line)) return null;
  if (next !== undefined && best.score - next.score < bounds.lead) return null;
  if (leaningOn.some((lead) => clause.words.toLowerCase().startsWith(lead))) return null;
  const kind = best.topic.id.slice('tell:'.length);
  const told = tell(kind, clause.words, clause.line, about, null);
  const lacks = told?.draft.missing.filter((name) => name !== 'group') ?? ['all'];
  return lacks.length === 0 ? kind : null;
};

/** `and the reds 8`: another group with its own number, told in the manner of the clause before. */
const isElliptic = (clause: Clause): boolean => {
  const groups = spansOf(clause.line.spans, 'group');
  const values = clause.line.spans.filter((span) => span.kind === 'number' || span.kind === 'quantity');
  return groups.length === 1 && values.length > 0 && clause.line.tokens.length <= 12;
};

const groupsIn = (line: Line): readonly string[] => [
  ...new Set(spansOf(line.spans, 'group').flatMap((span) => span.names)),
];

interface Piece {
  readonly kind: string;
  readonly text: string;
}

/** Kinds that, right behind another, are a part of it: the dead in a box, what a loss looked like. */
const partOf: readonly (readonly [string, string])[] = [
  ['loss', 'sign'],
  ['arrive', 'loss'],
  ['arrive', 'sign'],
  ['process', 'weigh'],
  ['buy', 'setting'],
  ['note', 'sign'],
];

const namesDay = (line: Line): boolean => spansOf(line.spans, 'day').length > 0;

/** A low and a high told apart, of which only one says the day, are the weather of that day; a night gone by is its own. */
const isOneWeather = (last: Piece, next: Clause, read: ReadClause, about: About): boolean => {
  const before = read(last.text).line;
  const isPast = spansOf(before.spans, 'day').some((day) => day.plain && day.past < about.today);
  if (isPast || (namesDay(before) && namesDay(next.line))) return false;
  const [one, other] = [last.text, next.words].map(
    (words) => tell('weather', words, read(words).line, about, null)?.draft.fields ?? {},
  );
  return !['low', 'high', 'rain', 'wind'].some(
    (field) => one?.[field] !== undefined && other?.[field] !== undefined,
  );
};

/** Kinds whose amounts go on in the next clause: more weights, more birds of the same lot. */
const goingOn = new Set(['weigh', 'keep', 'process']);

/** Whether a clause goes on with the record before it, with no group or day of its own beside one named there. */
const goesOn = (last: Piece | undefined, kind: string, next: Clause, read: ReadClause): boolean => {
  if (last === undefined || last.kind !== kind || !goingOn.has(kind)) return false;
  const before = read(last.text).line;
  const hasOwn = groupsIn(next.line).length > 0 && groupsIn(before).length > 0;
  return !hasOwn && !(namesDay(before) && namesDay(next.line));
};

/** Whether a clause is about one bird, or about another group than the piece before: what it shows is not what died there. */
const isOfAnother = (last: Piece, next: Clause, read: ReadClause): boolean => {
  const [named, before] = [groupsIn(next.line), groupsIn(read(last.text).line)];
  const isOne = spansOf(next.line.spans, 'group').some(({ one }) => one);
  return named.length > 0 && (isOne || before.length > 0) && !named.some((name) => before.includes(name));
};

/** `bedding for 18` behind something else bought for its own price. */
const isOneMoreBought = (last: Piece, next: Clause, read: ReadClause, about: About): boolean => {
  if (last.kind !== 'buy') return false;
  const before = tell('buy', last.text, read(last.text).line, about, null)?.draft.fields;
  const bought = tell('buy', next.words, next.line, about, null)?.draft.fields;
  return [before, bought].every((fields) => fields?.what !== undefined && fields.price !== undefined);
};

const saysValue = ({ spans }: Line): boolean =>
  spans.some(({ kind }) => ['number', 'quantity', 'size', 'money'].includes(kind));

/** Joins what cannot stand by itself to the piece before, and a word or two in front (`done`, `on sunday`) to the first one. */
const gather = (texts: readonly string[], read: ReadClause, about: About): readonly Piece[] | null => {
  const pieces: Piece[] = [];
  const leading: string[] = [];
  for (const text of texts) {
    const clause = read(text);
    const kind = ownKind(clause, about);
    const last = pieces.at(-1);
    const isPart =
      partOf.some(
        ([whole, each]) =>
          whole === last?.kind && each === kind && !(kind === 'sign' && isOfAnother(last, clause, read)),
      ) ||
      (kind === 'weather' && last?.kind === 'weather' && isOneWeather(last, clause, read, about));
    const isNew = kind !== null && !isPart && !goesOn(last, kind, clause, read);
    if (last !== undefined && !isNew && isElliptic(clause) && groupsIn(read(last.text).line).length === 1) {
      pieces.push({ kind: last.kind, text });
    } else if (last !== undefined && isOneMoreBought(last, clause, read, about)) {
      pieces.push({ kind: last.kind, text });
    } else if (isNew) pieces.push({ kind, text: [...leading.splice(0), text].join(', ') });
    else if (last !== undefined)
      pieces[pieces.length - 1] = { kind: last.kind, text: `${last.text}, ${text}` };
    else if (saysValue(clause.line)) return null;
    else leading.push(text);
  }
  return pieces;
};

/** What the drafts of one breath owe each other: a cause said once goes for all losses. */
const shareCause = (drafts: readonly ToldDraft[]): readonly ToldDraft[] => {
  const cause = drafts.map((each) => each.draft.fields.cause).find((each) => each !== undefined);
  return drafts.map((each) =>
    each.draft.kind === 'loss' && each.draft.fields.cause === undefined && cause !== undefined
      ? { ...each, draft: { ...each.draft, fields: { ...each.draft.fields, cause } } }
      : each,
  );
};

/** The groups carried on to a clause: those spoken of before, and for `1 of the others` those that are left. */
const carriedTo = ({ tokens }: Line, groups: readonly string[], about: About): readonly string[] =>
  tokens.some(({ word }) => word === 'others')
    ? about.groups
        .filter(({ name, place, alive }) => place !== 'gone' && alive > 0 && !groups.includes(name))
        .map(({ name }) => name)
    : groups;

/** The drafts of a line that tells several things; null when it tells one. */
export const splitTold = (
  texts: readonly string[],
  read: ReadClause,
  about: About,
): readonly ToldDraft[] | null => {
  if (texts.length < 2 || texts.length > bounds.clauses) return null;
  const pieces = gather(texts, read, about);
  if (pieces === null || pieces.length < 2) return null;
  const drafts: ToldDraft[] = [];
  let before = null as { groups: readonly string[]; on: Day } | null;
  for (const piece of pieces) {
    const clause = read(piece.text);
    const carried = before && { ...before, groups: carriedTo(clause.line, before.groups, about) };
    const told = tell(piece.kind, piece.text, clause.line, about, carried);
    if (told === null) return null;
    const named = groupsIn(clause.line);
    const isNight = ['last night', 'overnight', 'tonight'].some((night) =>
      piece.text.toLowerCase().includes(night),
    );
    before = {
      groups: named.length > 0 ? named : (before?.groups ?? []),
      // a night belongs to its own record; the rest of the breath is about the day itself
      on: isNight || piece.kind === 'weather' ? about.today : told.draft.on,
    };
    drafts.push(told);
  }
  return shareCause(drafts);
};
