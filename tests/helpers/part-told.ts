/** A question answered over a plain state with the whole shipped rulebook, its vocabulary too, and with things told in the question. */
import { answer } from '../../engine/ask/ask.ts';
import { allFacts } from '../../engine/facts/index.ts';
import type { State, Value } from '../../engine/types.ts';
import { rulebook } from './rulebook-of.ts';

const { book } = rulebook();

/** The rules of the first part by their short names: the deciding one, cautions and steps; and what is not known. */
export const partTold = async (
  state: State,
  question: string,
  told: Readonly<Record<string, Value>> = {},
) => {
  const supposing = Object.entries(told).map(([fact, value]) => ({ what: { fact }, value, adds: false }));
  const moment = { on: state.on, asOf: null, lines: null };
  const world = { book, facts: allFacts, state, problems: [] };
  const { parts } = await answer(world, { question, groups: [], moment, until: null, supposing });
  const [part] = parts;
  const short = (rule: string): string => rule.replace(`${question}/`, '');
  return {
    rule: short(part?.rule ?? ''),
    cautions: (part?.cautions ?? []).map((each) => short(each.rule)),
    steps: (part?.steps ?? []).map((each) => short(each.rule)),
    unknown: part?.unknown,
  };
};
