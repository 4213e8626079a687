/** Whether a line asks why an answer is not another one: `why not saturday`, `why can't they`, `what is wrong with april`. */
import type { Token } from '../tokens.ts';

/** Openings, by their words; `*` stands for a word or none, such as who it is about. */
const openings = `
why not|why * can * not|why * could * not|why * should * not|why * must * not|why * may * not|why * will * not|why * would * not
why * do * not|why * does * not|why * is * not|why * are * not|why * did * not
what is wrong with|what was wrong with|what is against|what speaks against|what would be wrong with|what rules out|what keeps us from|what is stopping
`
  .trim()
  .split(/[|\n]/)
  .map((opening) => opening.split(' '));

/** The end of an opening that begins at a token, or null. */
const endOf = (opening: readonly string[], tokens: readonly Token[], from: number): number | null => {
  let at = from;
  for (const [n, word] of opening.entries()) {
    if (word === '*') {
      // Who it is about may be left out: "why can not" as well as "why can they not".
      if (tokens[at]?.word !== opening[n + 1]) at += 1;
      if (tokens[at]?.word !== opening[n + 1]) at += 1;
      continue;
    }
    if (tokens[at]?.word !== word) return null;
    at += 1;
  }
  return at;
};

/** The token behind such an opening, where what is asked instead begins; null when the line has none. */
export const findWhyNot = (tokens: readonly Token[]): number | null => {
  for (let at = 0; at < tokens.length; at += 1) {
    for (const opening of openings) {
      const end = endOf(opening, tokens, at);
      if (end !== null) return end;
    }
  }
  return null;
};
