/** What the chat opens with: of the daily round, what cannot wait, in a few rows. */
import type { Day } from '../../engine/day.ts';
import { layOut } from '../say/lay-out.ts';
import type { Token } from '../say/tokens.ts';
import type { Flock } from './flock.ts';
import { nothingYet } from './reply.ts';
import { turn } from './turn.ts';

/** Rows that an opening may fill, its last sentence included. */
const rows = 6;

const round = 'what needs doing today';
const hint = 'Ask or tell anything; "help" shows what, Ctrl-D leaves.';

const isOpen = (token: Token): boolean => token.t === 'step' && !token.done;

/**
 * The most pressing of a daily round that fit, warnings first, then what is due, then what is not known; and how many
 * tasks are left over.
 * @param width terminal columns
 */
export const pickOpening = (
  first: readonly Token[],
  all: readonly Token[],
  width: number,
): readonly Token[] => {
  const end = (left: number): Token => ({
    t: 'next',
    text: left === 0 ? hint : `And ${left} more: "${round}". Also: "help", Ctrl-D.`,
  });
  const due = all.filter(isOpen);
  const leftAfter = (chosen: readonly Token[]): number => due.length - chosen.filter(isOpen).length;
  const wanted = [
    ...all.filter(({ t }) => t === 'caution'),
    ...due,
    ...all.filter(({ t }) => t === 'unknown'),
  ];
  let chosen = first;
  for (const token of wanted) {
    const more = [...chosen, token];
    if (layOut([...more, end(leftAfter(more))], width).length <= rows) chosen = more;
    // What stands further down is never put before what did not fit.
    else if (token.t !== 'caution') break;
  }
  return [...chosen, end(leftAfter(chosen))];
};

/** The opening for a day; `first` are sentences that go before it, as that this is the demo. */
export const openingFor = async (
  flock: Flock,
  on: Day,
  first: readonly Token[],
  width: number,
): Promise<readonly Token[]> => {
  const { tokens } = await turn(flock, round, nothingYet, { on, group: null, write: false });
  return pickOpening(first, tokens, width);
};
