/** A number told in parts that are added up: `one cock and six pullets`, `9 whole 3 cut up`, `one roasted, one in the soup`. */
import { numberAt } from '../find/number.ts';
import { numbers, type Told } from './told.ts';

/** What birds are counted apart by. */
const apart = new Set(
  'rooster cock cockerel roo pullet hen male female whole portioned part portion piece half joint cut layer'.split(
    ' ',
  ),
);
const joints = new Set(['and', 'plus', '+', '&', ',', '-']);
const reach = 3;

interface Part {
  readonly value: number;
  /** The word that it is counted under; null for a bare number. */
  readonly word: string | null;
  readonly from: number;
}

const partsIn = (
  { line }: Told,
  whole: readonly { from: number; to: number; value: number }[],
): readonly Part[] => {
  const { tokens } = line;
  const wordAt = (at: number): string | null => {
    for (const token of tokens.slice(at, at + reach)) {
      if (token.isMark || joints.has(token.word) || numberAt(tokens, tokens.indexOf(token)) !== null)
        return null;
      if (apart.has(token.stem) || apart.has(token.word)) return token.stem;
    }
    return null;
  };
  const counted = whole.map(({ from, to, value }) => ({ value, word: wordAt(to), from }));
  const alone = tokens.flatMap((token, at): Part[] => {
    const word = ['a', 'an'].includes(token.word) ? wordAt(at + 1) : null;
    return word === null || counted.some(({ from }) => from === at) ? [] : [{ value: 1, word, from: at }];
  });
  return [...counted, ...alone].sort((one, other) => one.from - other.from);
};

/** The sum of the parts, or null where the line does not count in parts. */
export const sumOfParts = (told: Told): number | null => {
  const whole = numbers(told)
    .filter(({ value }) => Number.isInteger(value) && value > 0)
    .map(({ from, to, value }) => ({ from, to, value }));
  const { tokens } = told.line;
  const ones = whole.filter(({ from, to }) => to === from + 1 && tokens[from]?.word === 'one');
  const isEveryOne = whole.length > 1 && ones.length === whole.length;
  if (isEveryOne && ['loss', 'eat'].includes(told.kind)) return ones.length;
  if (!['keep', 'process'].includes(told.kind)) return null;
  const parts = partsIn(told, whole);
  const named = parts.filter(({ word }) => word !== null);
  const words = new Set(named.map(({ word }) => word));
  if (named.length === 0 || words.size < named.length) return null;
  // "6 and a rooster": the first is counted under nothing
  const [bare] = parts.filter(({ word, from }) => word === null && joints.has(tokens[from + 1]?.word ?? ''));
  const summed = named.length > 1 ? named : bare === undefined ? [] : [bare, ...named];
  if (summed.length < 2) return null;
  return summed.reduce((sum, { value }) => sum + value, 0);
};
