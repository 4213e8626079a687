/** How much of a long answer stands at once, and what is folded away behind "more". Pure. */
import { layOut } from '../say/lay-out.ts';
import { listed } from '../say/listed.ts';
import type { Token } from '../say/tokens.ts';
import type { Window } from './window-size.ts';

export interface Folded {
  /** What stands, its last token saying how much is hidden and how to open it. */
  readonly shown: readonly Token[];
  /** What is left, in its order; empty where all stands. */
  readonly hidden: readonly Token[];
}

/** Never folded: the answer itself, what is dangerous, and what is offered to choose from. */
const always: ReadonlySet<Token['t']> = new Set(['claim', 'caution', 'choice', 'blank']);

/** Which kinds are given room first, the others in the order in which they stand. */
const firstKinds: readonly Token['t'][] = ['step', 'task', 'unknown', 'next', 'picture'];

/** Rows of the window that are not the answer's: the keeper's own line, what is folded, the gap and the prompt. */
const others = 6;
/** However small the window, this much is worth showing; however large, more is not read at once. */
const [fewest, most] = [8, 30];
const worthFolding = 2;

const openers = /^\s*(show( me)? )?(more|the rest|all of it)\s*[.!]?\s*$/i;

/** Whether a line asks for what is folded. */
export const opensFold = (words: string): boolean => openers.test(words);

/** What a kind of token is called when it is counted; headings and gaps are not. */
const names: Partial<Readonly<Record<Token['t'], readonly [string, string]>>> = {
  step: ['task', 'tasks'],
  task: ['task', 'tasks'],
  unknown: ['open question', 'open questions'],
  reason: ['reason', 'reasons'],
  figure: ['figure', 'figures'],
  picture: ['picture', 'pictures'],
  next: ['remark', 'remarks'],
  detail: ['note', 'notes'],
};

const sayHidden = (hidden: readonly Token[], rows: string): Token => {
  const counted = Object.entries(names).flatMap(([kind, [one, many]]) => {
    const count = hidden.filter(({ t }) => t === kind).length;
    return count === 0 ? [] : [`${count} ${count === 1 ? one : many}`];
  });
  return { t: 'next', text: `Folded: ${listed(counted)}${rows}. Say "more" to open.` };
};

/** The deciding reason of each part is the first after something else: an answer without it would be a mere claim. */
const alwaysStands = (tokens: readonly Token[], at: number): boolean => {
  const kind = tokens[at]?.t;
  return kind === 'reason'
    ? at > 0 && tokens[at - 1]?.t !== 'reason'
    : kind !== undefined && always.has(kind);
};

/** The places of tokens in the order in which room is given to them, those that always stand left out. */
const inOrder = (tokens: readonly Token[]): readonly number[] => {
  const places = tokens.flatMap(({ t }, at) => (alwaysStands(tokens, at) || t === 'heading' ? [] : [at]));
  const kind = (t: Token['t']): readonly number[] => places.filter((at) => tokens[at]?.t === t);
  return [...new Set([...firstKinds.flatMap(kind), ...places])];
};

/** The heading that a place stands under, itself where it is one; undefined where there is none. */
const headingOf = (tokens: readonly Token[], at: number): number | undefined => {
  const place = tokens.slice(0, at + 1).findLastIndex(({ t }) => t === 'heading');
  return place === -1 ? undefined : place;
};

/** Folds what does not fit the window. What fits stands as it is. Rows mean nothing to one who listens. */
export const foldTokens = (tokens: readonly Token[], { columns, rows }: Window, isHeard = false): Folded => {
  const rowsOf = (part: readonly Token[]): number => layOut(part, columns).length;
  const room = Math.min(most, Math.max(fewest, rows - others));
  if (rowsOf(tokens) <= room) return { shown: tokens, hidden: [] };
  const stands = new Set(tokens.flatMap((_, at) => (alwaysStands(tokens, at) ? [at] : [])));
  const full = new Set<Token['t']>();
  const withHeadings = (places: ReadonlySet<number>): ReadonlySet<number> =>
    new Set([...places, ...[...places].flatMap((at) => headingOf(tokens, at) ?? [])]);
  const pick = (places: ReadonlySet<number>): readonly Token[] => tokens.filter((_, at) => places.has(at));
  for (const at of inOrder(tokens)) {
    const token = tokens[at];
    if (token === undefined || full.has(token.t)) continue;
    const fits = rowsOf(pick(withHeadings(new Set([...stands, at])))) <= room;
    // Something must stand, or "more" would never come to an end.
    if (fits || stands.size === 0) stands.add(at);
    // One that is left out leaves out those of its kind behind it, so that none is missed in the middle.
    else full.add(token.t);
  }
  const left = new Set(
    tokens.flatMap(({ t }, at) => (stands.has(at) || t === 'heading' || t === 'blank' ? [] : [at])),
  );
  const hidden = pick(withHeadings(left));
  // A fold that hides no more than it says itself is no help.
  if (rowsOf(hidden) <= worthFolding) return { shown: tokens, hidden: [] };
  return {
    shown: [...pick(withHeadings(stands)), sayHidden(hidden, isHeard ? '' : `, in ${rowsOf(hidden)} rows`)],
    hidden,
  };
};
