/** Rule files of the keeper's laid over the published rulebook: they put in place only what they declare, and pass the same checks. */
import { createHash } from 'node:crypto';
import type { Problem } from '../problem.ts';
import type { Figure, Question, Rule, Rulebook, Source } from '../types.ts';
import { checkRulebook, type Known } from './checks/index.ts';
import { ownParts } from './checks/own-parts.ts';
import { type RuleDocument, type RuleFile, readDocument } from './document.ts';
import { placeFaults } from './own-places.ts';
import { figureFrom, ruleFrom } from './parse.ts';
import * as shapes from './shapes.ts';
import { takeFrom } from './take.ts';

/** What own files hold, by id. */
export interface OwnParts {
  readonly figures: Readonly<Record<string, Figure>>;
  readonly sources: Readonly<Record<string, Source>>;
  readonly rules: Readonly<Record<string, Rule>>;
  /** Rule id → the published rules of its question that go before it. */
  readonly below: Readonly<Record<string, readonly string[]>>;
  /** Question id → phrasings. */
  readonly phrasings: Readonly<Record<string, readonly string[]>>;
}

export interface Laid {
  /** The published book with the own parts in it. Not to be used while there are problems. */
  readonly book: Rulebook;
  readonly problems: readonly Problem[];
  /** Own rules by id, and the documents that they came from, for running their cases. */
  readonly documents: ReadonlyMap<string, RuleDocument>;
}

/** A published part has no text here; whatever is found wrong with it was brought about by an own file. */
const published = 'published';
const stub: RuleDocument = {
  file: published,
  data: undefined,
  problems: [],
  problemAt: (_path, code, data) => stubProblem(code, data),
  problemAtKey: (_path, code, data) => stubProblem(code, data),
};
const stubProblem = (code: string, data: Problem['data']): Problem => ({
  code,
  at: { file: published, line: 1, column: 1 },
  raw: '',
  data,
  grave: true,
  touches: ['rules'],
});

const stubsFor = (base: Rulebook): [string, RuleDocument][] =>
  (
    [
      ['figure', base.figures],
      ['source', base.sources],
      ['question', base.questions],
      ['rule', base.rules],
      ['record', base.records],
      ['words', base.facts],
    ] as const
  ).flatMap(([kind, parts]) =>
    Object.keys(parts).map((id): [string, RuleDocument] => [`${kind}:${id}`, stub]),
  );

/** The published parts in their order, those taken out whose place is taken; the own ones behind them. */
const over = <T>(base: Readonly<Record<string, T>>, own: Readonly<Record<string, T>>): Record<string, T> => ({
  ...Object.fromEntries(Object.entries(base).filter(([id]) => !Object.hasOwn(own, id))),
  ...own,
});

const withOwn = (base: Rulebook, own: OwnParts, hash: string): Rulebook => {
  const above = (id: string): readonly string[] =>
    Object.entries(own.below).flatMap(([lower, higher]) => (higher.includes(id) ? [lower] : []));
  const rules = Object.fromEntries(
    Object.entries(over(base.rules, own.rules)).map(([id, rule]) => {
      const more = above(id);
      return [id, more.length === 0 ? rule : { ...rule, outranks: [...rule.outranks, ...more] }];
    }),
  );
  const questions = Object.fromEntries(
    Object.entries(base.questions).map(([id, question]): [string, Question] => [
      id,
      Object.hasOwn(own.phrasings, id) ? { ...question, own: own.phrasings[id] ?? [] } : question,
    ]),
  );
  return {
    ...base,
    rules,
    questions,
    figures: over(base.figures, own.figures),
    sources: { ...base.sources, ...own.sources },
    hash,
  };
};

const hashOf = (base: Rulebook, files: readonly RuleFile[]): string => {
  const hash = createHash('sha256').update(base.hash);
  for (const { file, text } of files) hash.update(`\0${file}\0${text}`);
  return hash.digest('hex').slice(0, 8);
};

/** What an own file can do to the rest of its question; anything else at a published part is of no concern here. */
const causedByOwn = new Set(['tie-without-rank', 'outranks-itself', 'question-without-rule']);

/** A problem of an own file as it is; one that shows at a published part at the own rule that brought it about; no other. */
const atOwn = (problem: Problem, own: OwnParts, documents: ReadonlyMap<string, RuleDocument>): Problem[] => {
  const { code, at, data } = problem;
  if (at.file !== published)
    return [...documents.values()].some(({ file }) => file === at.file) ? [problem] : [];
  const question = String(data.question ?? String(data.rule ?? '').split('/')[0]);
  const cause = Object.values(own.rules).find((rule) => rule.question === question);
  const document = cause === undefined ? undefined : documents.get(`rule:${cause.id}`);
  return document === undefined || !causedByOwn.has(code) ? [] : [document.problemAt([], code, data)];
};

/** The part of the book that own files can have spoilt: the questions that have own rules. The rest was checked when it was published. */
const concerned = (book: Rulebook, own: OwnParts): Rulebook => {
  const touched = new Set(Object.values(own.rules).map(({ question }) => question));
  const kept = <T>(parts: Readonly<Record<string, T>>, questionOf: (id: string, part: T) => string) =>
    Object.fromEntries(Object.entries(parts).filter(([id, part]) => touched.has(questionOf(id, part))));
  return {
    ...book,
    rules: kept(book.rules, (_, { question }) => question),
    questions: kept(book.questions, (id) => id),
  };
};

/** Lays own files over a published book. All that is wrong with them comes at once. */
export const layOwn = (base: Rulebook, files: readonly RuleFile[], known: Known): Laid => {
  const documents = new Map<string, RuleDocument>(stubsFor(base));
  const all = files.map(readDocument);
  const problems = all.flatMap(placeFaults);
  const placed = all.filter((each) => placeFaults(each).length === 0);
  const take = takeFrom(placed, documents, problems);
  const below: Record<string, readonly string[]> = {};
  const own: OwnParts = {
    below,
    figures: take('figures', 'figure', shapes.figureShape, (id, data) => ({
      ...figureFrom(id, data),
      own: { published: base.figures[id] ?? null },
    })),
    sources: take('sources', 'own-source', shapes.sourceShape, (id, data) => ({ id, ...data })),
    rules: take('decisions', 'rule', shapes.ownRuleShape, (id, { 'outranked-by': higher, ...data }) => {
      const rule = { ...ruleFrom(id, data), own: { published: base.rules[id] ?? null } };
      if (higher !== undefined) below[id] = higher.map((name) => `${rule.question}/${name}`);
      return rule;
    }),
    phrasings: take('questions', 'own-question', shapes.ownQuestionShape, (_, data) => data.phrasings),
  };
  for (const id of Object.keys(own.sources))
    if (!documents.has(`source:${id}`))
      documents.set(`source:${id}`, documents.get(`own-source:${id}`) ?? stub);
  const book = withOwn(base, own, hashOf(base, files));
  problems.push(...ownParts(base, own, documents));
  const checked = { book: concerned(book, own), documents };
  // What reads a published figure reads the own one in its place, also where nothing else of the question is looked at.
  problems.push(
    ...checkRulebook(checked, known)
      .filter(
        ({ code, data }) => code !== 'unused-figure' || !Object.hasOwn(base.figures, String(data.figure)),
      )
      .flatMap((each) => atOwn(each, own, documents)),
  );
  return { book, problems, documents };
};
