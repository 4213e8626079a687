/** What a line of plain words asks or tells: tokens, finds, form, matches, then readings, or a question back. */
import { completeDraft } from './complete.ts';
import { decide } from './decide.ts';
import type { Line } from './find/all.ts';
import { finderFor } from './finder.ts';
import { weighForm } from './form.ts';
import type { Lexicon } from './lexicon.ts';
import { matchTopics } from './match.ts';
import { mentionsIn } from './mentions.ts';
import { rankWithBefore } from './rank.ts';
import { readFollowUp, readQuestion, readRecord } from './read.ts';
import { type Clause, cutClauses, splitTold } from './split.ts';
import type { ToldDraft } from './tell.ts';
import { mostCharacters } from './tokens.ts';
import type { About, Heard, Reading } from './types.ts';

/** A line asked more plainly than this does not answer the field that was asked for. */
const plainlyAsked = 1;

const outside = (words: string, nearest: readonly string[]): Heard => ({
  words,
  readings: [],
  sure: false,
  nearest,
});

/** The reading that fills the field asked for in the last turn, if this line does. */
const answerAsked = (words: string, about: About, find: (words: string) => Line): Heard | null => {
  const done = completeDraft(words, about, find);
  if (done === null) return null;
  const reading: Reading = {
    topic: `tell:${done.draft.kind}`,
    groups: typeof done.draft.fields.group === 'string' ? [done.draft.fields.group] : [],
    on: done.draft.on,
    until: null,
    days: null,
    slots: {},
    mentions: mentionsIn(find(words)),
    supposing: [],
    entries: [done.draft],
    assumed: done.assumed,
    evidence: [{ idea: 'answers what was asked', words, weight: 1 }],
    score: 1,
  };
  return { words, readings: [reading], sure: true, nearest: [] };
};

/** Several records in one breath, each whole but perhaps for its group, leave no doubt about what is told. */
const isPlainlySeveral = (several: readonly ToldDraft[] | null): boolean =>
  several?.every((each) => each.draft.missing.every((name) => name === 'group')) ?? false;

/**
 * Understands one line. Pure: the same words about the same things are always heard alike, and nothing is thrown.
 */
export const understand = (words: string, about: About, lexicon: Lexicon): Heard => {
  const find = finderFor(about, lexicon);
  const line = find(words);
  if (line.tokens.every((token) => token.isMark)) return outside(words, []);
  const { follows, ...ranking } = rankWithBefore(matchTopics(words, line, lexicon), line, about, lexicon);
  const decision = decide(ranking);

  const family = decision.sure ? decision.taken[0]?.topic.family : undefined;
  const isElse = family === 'about' || (family === 'ask' && weighForm(line) >= 0);
  const mayAnswer = about.asking !== null && !isElse && weighForm(line) <= plainlyAsked;
  const answered = mayAnswer ? answerAsked(words, about, find) : null;
  if (answered !== null) return answered;

  const readClause = (text: string): Clause => {
    const own = find(text);
    return { words: text, line: own, matches: matchTopics(text, own, lexicon).matches };
  };
  const isTold = decision.taken[0]?.topic.family === 'tell';
  const several = isTold ? splitTold(cutClauses(words, line.tokens), readClause, about) : null;
  const last = about.before?.readings[0];
  const cut = words.length > mostCharacters ? [`only the first ${mostCharacters} characters were read`] : [];
  const readings = decision.taken.map((match, at): Reading => {
    const own =
      match.topic.family === 'tell'
        ? readRecord(match, words, line, about, at === 0 ? several : null)
        : match === follows && last !== undefined
          ? readFollowUp(match, words, line, about, last)
          : readQuestion(match, words, line, about);
    return { ...own, assumed: [...own.assumed, ...cut] };
  });
  return {
    words,
    readings,
    sure: decision.sure || isPlainlySeveral(several),
    nearest: decision.nearest,
    hazard: decision.hazard,
  };
};
