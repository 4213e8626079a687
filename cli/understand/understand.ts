/** What a line of plain words asks or tells: tokens, finds, form, matches, then readings, or a question back. */
import { completeDraft } from './complete.ts';
import { type Decision, decide } from './decide.ts';
import type { Line } from './find/all.ts';
import { findMonth } from './find/month.ts';
import { findWhyNot } from './find/why-not.ts';
import { finderFor } from './finder.ts';
import { fitToFlock } from './fitting.ts';
import { weighForm } from './form.ts';
import { leaningOn } from './leaning.ts';
import type { Lexicon } from './lexicon.ts';
import { type Match, matchTopics } from './match.ts';
import { mentionsIn } from './mentions.ts';
import { rankWithBefore } from './rank.ts';
import { readFollowUp, readQuestion } from './read.ts';
import { type Hearing, readRecord } from './read-record.ts';
import { type Clause, cutClauses, splitTold } from './split.ts';
import { sureOfRecord, wholeFirst } from './sure-of-record.ts';
import type { ToldDraft } from './tell.ts';
import { mostCharacters } from './tokens.ts';
import { findToldThenAsked, type ToldThenAsked } from './told-then-asked.ts';
import type { About, Heard, Reading } from './types.ts';

/** A line asked more plainly than this does not answer the field that was asked for. */
const plainlyAsked = 1;

/** How much a question counts that takes nothing of what is told with it, beside one that takes all. */
const takingNothing = 0.05;

const toldSetting = 'tell:setting';

const nothing = (words: string): Heard => ({ words, readings: [], sure: false, nearest: [] });

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

/** So few words behind "why not" name the day or month and nothing more. */
const curt = 3;

/** "why not april" right after a plan is why the plan is not for April, though it might ask anew when to order. */
const oneWhyNot = (
  decision: Decision,
  matches: readonly Match[],
  { tokens }: Line,
  about: About,
): Decision => {
  const from = findWhyNot(tokens);
  const why = matches.find(({ topic }) => topic.id === 'why');
  const before = about.book.questions[about.before?.readings[0]?.topic ?? ''];
  if (from === null || why === undefined || before?.takes.month === undefined) return decision;
  return findMonth(tokens) === null || tokens.length - from > curt
    ? decision
    : { ...decision, taken: [why], sure: true };
};

/** Whether a question leaves out some of the settings told with it, so that they have to be written first. */
const leavesOut = (question: string, { drafts }: ToldThenAsked, about: About): boolean => {
  const takes = about.book.questions[question]?.takes ?? {};
  return drafts
    .flatMap(({ draft, also }) => [draft, ...also])
    .some(({ fields }) => takes[String(fields.what)] === undefined);
};

/** What a question beside which something plainly happened leaves of that: all of it, where the answer supposes none of it. */
const leftBeside = (asked: Reading, both: ToldThenAsked | null, about: About): Reading => {
  const takes = about.book.questions[asked.topic]?.takes ?? {};
  const isTaken =
    asked.supposing.length > 0 || Object.keys(asked.slots).some((slot) => takes[slot] !== undefined);
  // a sign that is seen is among what the question may suppose
  const isSeen = both?.drafts.every(({ draft }) => draft.kind === 'sign') ?? true;
  return both === null || both.isSettings || isTaken || isSeen ? asked : { ...asked, leftOut: [both.told] };
};

/** A line that tells how the place is and asks something: the question as heard by itself, with what is told beside it. */
const hearBoth = (
  words: string,
  both: ToldThenAsked,
  whole: Decision,
  hearing: Hearing,
  about: About,
  lexicon: Lexicon,
): Heard | null => {
  const kind = both.isSettings ? toldSetting : `tell:${both.drafts[0]?.draft.kind ?? ''}`;
  const topic = lexicon.topics.find(({ id }) => id === kind);
  const heard = understand(both.asked, { ...about, asking: null }, lexicon);
  // A curt question means the one that takes what is told with it: "when do I order" after so many at the table.
  const told = both.drafts.flatMap(({ draft, also }) => [draft, ...also].map(({ fields }) => fields.what));
  const weight = ({ topic: id, score }: Reading): number => {
    const takes = about.book.questions[id]?.takes ?? {};
    const taken = told.filter((what) => takes[String(what)] !== undefined).length;
    return score * (takingNothing + taken / told.length);
  };
  const readings = [...heard.readings].sort((one, other) => weight(other) - weight(one));
  const [asked] = readings;
  if (topic === undefined || asked === undefined) return null;
  if (lexicon.topics.find(({ id }) => id === asked.topic)?.family !== 'ask') return null;
  if (both.isSettings && !leavesOut(asked.topic, both, about)) return null;
  const [likeliest] = whole.taken;
  const isOther = likeliest?.topic.family === 'ask' && likeliest.topic.id !== asked.topic;
  if (both.isSettings) {
    if (likeliest?.topic.id !== toldSetting && told.length < 2) return null;
    if (isOther && whole.sure && told.length < 3) return null;
  } else if (!heard.sure || (isOther && whole.sure)) return null;
  const match = { topic, score: 1, evidence: [] };
  const reading = readRecord(match, both.told, hearing.read(both.told).line, about, both.drafts, hearing);
  return { ...heard, readings, words, told: { words: both.told, reading } };
};

/**
 * Understands one line. Pure: the same words about the same things are always heard alike, and nothing is thrown.
 */
export const understand = (words: string, known: About, lexicon: Lexicon): Heard => {
  const find = finderFor(known, lexicon);
  const line = find(words);
  const about = leaningOn(words, line, known);
  if (line.tokens.every((token) => token.isMark)) return nothing(words);
  const byItself = fitToFlock(matchTopics(words, line, lexicon), about);
  const { follows, ...ranking } = rankWithBefore(byItself, line, about, lexicon);
  const decision = oneWhyNot(decide(ranking), ranking.matches, line, about);

  const family = decision.sure ? decision.taken[0]?.topic.family : undefined;
  const isElse = family === 'about' || (family === 'ask' && weighForm(line) >= 0);
  const mayAnswer = about.asking !== null && !isElse && weighForm(line) <= plainlyAsked;
  const answered = mayAnswer ? answerAsked(words, about, find) : null;
  if (answered !== null) return answered;

  // A clause is looked at from several sides, and its topics are weighed once.
  const clauses = new Map<string, Clause>([[words, { words, line, matches: byItself.matches }]]);
  const readClause = (text: string): Clause => {
    const weighed = clauses.get(text);
    if (weighed !== undefined) return weighed;
    const own = find(text);
    const { matches } = fitToFlock(matchTopics(text, own, lexicon), about);
    const clause: Clause = { words: text, line: own, matches };
    clauses.set(text, clause);
    return clause;
  };
  const split: Hearing['split'] = (text) => {
    const { line: own } = readClause(text);
    return splitTold(cutClauses(text, own.tokens, own.spans), readClause, about);
  };
  const best = decision.taken[0]?.topic;
  const isTold = best?.family === 'tell';
  const both =
    family === 'ask' || isTold || !decision.sure
      ? findToldThenAsked(words, line.tokens, readClause, about)
      : null;
  const heardBoth =
    both === null ? null : hearBoth(words, both, decision, { read: readClause, split }, about, lexicon);
  if (heardBoth !== null) return heardBoth;
  // A note keeps all that is said with it.
  const several = isTold && best?.id !== 'tell:note' ? split(words) : null;
  const last = about.before?.readings[0];
  const cut = words.length > mostCharacters ? [`only the first ${mostCharacters} characters were read`] : [];
  const read = (match: Match, at: number): Reading => {
    const own =
      match.topic.family === 'tell'
        ? readRecord(match, words, line, about, at === 0 ? several : null, { read: readClause, split })
        : match === follows && last !== undefined
          ? readFollowUp(match, words, line, about, last, lexicon)
          : leftBeside(readQuestion(match, words, line, about, lexicon), both, about);
    return { ...own, assumed: [...own.assumed, ...cut] };
  };
  const readings = wholeFirst(decision.taken.map(read));
  return {
    words,
    readings,
    sure: sureOfRecord(readings, line, decision.sure) || isPlainlySeveral(several),
    nearest: decision.nearest.map(read),
    hazard: decision.hazard,
  };
};
