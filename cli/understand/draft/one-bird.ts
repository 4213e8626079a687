/** Whether a line that counts nothing speaks of a single bird: `another gone`, `the speckled hen`, `found him stiff`. */
import { spansOf } from '../spans.ts';
import type { Told } from './told.ts';

const single = new Set(
  'bird chick chicken hen rooster roo cockerel cock pullet carcass casualty body baby broiler runt fella fellow lad lady dead'.split(
    ' ',
  ),
);
const determiners = new Set('a an another my the one that this his her our your their'.split(' '));
/** Words that stand for one of them by themselves. */
const pronouns = new Set(['another', 'him', 'casualty']);
/** How many words may stand between `the` and the bird: `the wee speckled hen`. */
const adjectives = 3;

/** Whether one bird is meant, in a line without a number. */
export const isOneBird = ({ line }: Told): boolean => {
  const { tokens } = line;
  const groups = spansOf(line.spans, 'group');
  return tokens.some((token, at) => {
    if (pronouns.has(token.word)) return true;
    if (!determiners.has(token.word)) return false;
    const mark = tokens.slice(at + 1).findIndex((next) => next.isMark);
    const end = Math.min(at + 2 + adjectives, mark < 0 ? tokens.length : at + 1 + mark);
    const named = tokens.slice(at + 1, end).some((next) => single.has(next.word));
    return named || groups.some((group) => group.from > at && group.from < end && group.one);
  });
};
