/** What a line of plain words asks or tells: tokens, finds, form, matches, then readings, or a question back. */
import { completeDraft } from './complete.ts';
import { decide } from './decide.ts';
import { findAll, type Grounds, type Line } from './find/all.ts';
import { followUp } from './follow-up.ts';
import { weighForm } from './form.ts';
import { type Lexicon, makeLexicon, readTokens } from './lexicon.ts';
import { type Match, matchTopics } from './match.ts';
import { readFollowUp, readQuestion, readRecord } from './read.ts';
import { type Clause, cutClauses, splitTold } from './split.ts';
import { tell } from './tell.ts';
import { mostCharacters } from './tokens.ts';
import type { About, Heard, Reading } from './types.ts';

/** How a finished or a lacking draft counts for its kind; set by trying on labelled lines. */
const draftWeight = { whole: 0.7, lacks: -0.9, judged: 6 };

const groundsOf = (about: About, lexicon: Lexicon): Grounds => ({
  today: about.today,
  system: about.system,
  groups: about.groups,
  kinds: about.book.words.kinds,
  units: lexicon.units,
  index: lexicon.index,
});

/** A record that can be made whole from the words is likelier meant than one that cannot. */
const judgeDrafts = (matches: readonly Match[], words: string, line: Line, about: About): readonly Match[] =>
  matches
    .map((match, rank): Match => {
      if (match.topic.family !== 'tell' || rank >= draftWeight.judged) return match;
      const told = tell(match.topic.id.slice('tell:'.length), words, line, about, null);
      const lacks = told?.draft.missing.filter((name) => name !== 'group').length ?? 1;
      const weight = lacks === 0 ? draftWeight.whole : lacks * draftWeight.lacks;
      const idea = lacks === 0 ? 'a whole record' : 'parts of the record missing';
      return {
        ...match,
        score: match.score + weight,
        evidence: [...match.evidence, { idea, words: '', weight }],
      };
    })
    .sort((one, other) => other.score - one.score || (one.topic.id < other.topic.id ? -1 : 1));

const outside = (words: string, nearest: readonly string[]): Heard => ({
  words,
  readings: [],
  sure: false,
  nearest,
});

/** The reading that fills the field asked for in the last turn, if this line does. */
const answerAsked = (
  words: string,
  about: About,
  find: (words: string) => Line,
  form: number,
): Heard | null => {
  const done = form > 1 ? null : completeDraft(words, about, find);
  if (done === null) return null;
  const reading: Reading = {
    topic: `tell:${done.draft.kind}`,
    groups: typeof done.draft.fields.group === 'string' ? [done.draft.fields.group] : [],
    on: done.draft.on,
    until: null,
    days: null,
    slots: {},
    supposing: [],
    entries: [done.draft],
    assumed: done.assumed,
    evidence: [{ idea: 'answers what was asked', words, weight: 1 }],
    score: 1,
  };
  return { words, readings: [reading], sure: true, nearest: [] };
};

/**
 * Understands one line. Pure: the same words about the same things are always heard alike, and nothing is thrown.
 * Hand on a lexicon made once by `makeLexicon(about.book)` when many lines are to be heard.
 */
export const understand = (
  words: string,
  about: About,
  lexicon: Lexicon = makeLexicon(about.book),
): Heard => {
  const grounds = groundsOf(about, lexicon);
  const names = about.groups.flatMap((group) => group.name.toLowerCase().split(/\s+/));
  const find = (text: string): Line => findAll(readTokens(text, lexicon, names), grounds);
  const line = find(words);
  if (line.tokens.every((token) => token.isMark)) return outside(words, []);
  const form = weighForm(line);
  const readClause = (text: string): Clause => {
    const own = find(text);
    const at = weighForm(own);
    return {
      words: text,
      line: own,
      matches: judgeDrafts(matchTopics(text, own, at, lexicon), text, own, about),
    };
  };
  const matches = judgeDrafts(matchTopics(words, line, form, lexicon), words, line, about);
  const follows = followUp(line, about.before, lexicon);
  const ranked = (
    follows === null
      ? matches
      : [
          follows,
          ...matches.filter((match) => match.topic.id !== follows.topic.id || match.score > follows.score),
        ]
  ).toSorted((one, other) => other.score - one.score);
  const decision = decide(ranked);
  const surelyElse = decision.sure && decision.taken[0]?.topic.family !== 'tell';
  const asked = about.asking === null || surelyElse ? null : answerAsked(words, about, find, form);
  if (asked !== null) return asked;
  const last = about.before?.readings[0];
  const cut = words.length > mostCharacters ? [`only the first ${mostCharacters} characters were read`] : [];
  const readings = decision.taken.map((match, rank): Reading => {
    const own =
      match.topic.family === 'tell'
        ? readRecord(
            match,
            words,
            line,
            about,
            rank === 0 ? splitTold(cutClauses(words, line.tokens), readClause, about) : null,
          )
        : match === follows && last !== undefined
          ? readFollowUp(match, words, line, about, last)
          : readQuestion(match, words, line, about);
    return { ...own, assumed: [...own.assumed, ...cut] };
  });
  return { words, readings, sure: decision.sure, nearest: decision.nearest };
};
