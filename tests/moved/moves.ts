/** What moved between two programs' answers over the same flocks: turns of verdict, and amounts that read otherwise. */
import { sayValue } from '../../cli/say/quantity.ts';
import type { Speech } from '../../cli/say/speech.ts';
import type { Part, Result } from '../../engine/types.ts';

/** One question answered on one day over one flock. */
export interface Given {
  readonly flock: string;
  readonly on: string;
  readonly question: string;
  readonly verdicts: readonly Pick<Part, 'group' | 'verdict' | 'rule'>[];
  readonly amounts: readonly Pick<Result, 'id' | 'fact' | 'group' | 'value' | 'unit'>[];
}

/** One thing said otherwise: where, and what was said before and after. */
export interface Move {
  readonly flock: string;
  readonly on: string;
  readonly group: string | null;
  /** The result that moved; null for the verdict. */
  readonly what: string | null;
  readonly from: string;
  readonly to: string;
}

/** How the answers to one question moved. Counts are of answers for a group, or for the flock. */
export interface Moved {
  readonly question: string;
  /** Answers that both programs gave. */
  readonly compared: number;
  readonly turned: readonly Move[];
  /** Amounts that read otherwise, as both would be said today; what rounding hides has not moved. */
  readonly changed: readonly Move[];
  /** Results that only the later program gives, or only the earlier one gave. */
  readonly added: readonly string[];
  readonly dropped: readonly string[];
}

export interface Comparison {
  readonly moved: readonly Moved[];
  /** Questions that only one of them answers. */
  readonly added: readonly string[];
  readonly dropped: readonly string[];
}

const keyOf = ({ flock, on, question }: Given): string => JSON.stringify([flock, on, question]);

/** Both sides' items by a key, where both have one. */
const inBoth = <T>(
  before: readonly T[],
  after: readonly T[],
  key: (item: T) => string,
): readonly (readonly [T, T])[] => {
  const earlier = new Map(before.map((item) => [key(item), item]));
  return after.flatMap((item) => {
    const then = earlier.get(key(item));
    return then === undefined ? [] : [[then, item] as const];
  });
};

const only = (these: readonly string[], others: readonly string[]): readonly string[] =>
  [...new Set(these.filter((each) => !others.includes(each)))].sort();

const idsOf = (given: readonly Given[]): readonly string[] => given.map(({ question }) => question);
const resultsOf = (given: readonly Given[]): readonly string[] =>
  given.flatMap(({ amounts }) => amounts.map(({ id }) => id));

const movedIn = (
  speech: Speech,
  question: string,
  before: readonly Given[],
  after: readonly Given[],
): Moved => {
  const turned: Move[] = [];
  const changed: Move[] = [];
  let compared = 0;
  for (const [then, now] of inBoth(before, after, keyOf)) {
    const where = { flock: now.flock, on: now.on };
    for (const [earlier, later] of inBoth(then.verdicts, now.verdicts, ({ group }) => group ?? '')) {
      compared += 1;
      if (earlier.verdict !== later.verdict)
        turned.push({
          ...where,
          group: later.group,
          what: null,
          from: `${earlier.verdict} (${earlier.rule})`,
          to: `${later.verdict} (${later.rule})`,
        });
    }
    for (const [earlier, later] of inBoth(then.amounts, now.amounts, ({ id, group }) => `${id} ${group}`)) {
      const [from, to] = [sayValue(speech, earlier, earlier.fact), sayValue(speech, later, later.fact)];
      if (from !== to) changed.push({ ...where, group: later.group, what: later.id, from, to });
    }
  }
  const [earlier, later] = [resultsOf(before), resultsOf(after)];
  return {
    question,
    compared,
    turned,
    changed,
    added: only(later, earlier),
    dropped: only(earlier, later),
  };
};

/** Sets the answers of an earlier and a later program beside each other, question by question. */
export const compareAnswers = (
  speech: Speech,
  before: readonly Given[],
  after: readonly Given[],
): Comparison => {
  const shared = [...new Set(idsOf(after).filter((id) => idsOf(before).includes(id)))].sort();
  const about = (given: readonly Given[], id: string): readonly Given[] =>
    given.filter(({ question }) => question === id);
  return {
    moved: shared.map((id) => movedIn(speech, id, about(before, id), about(after, id))),
    added: only(idsOf(after), idsOf(before)),
    dropped: only(idsOf(before), idsOf(after)),
  };
};
