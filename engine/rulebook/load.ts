/** Rule files → one checked rulebook with all problems found on the way. The only reader of rule files. */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import type { z } from 'zod';
import type { Problem } from '../problem.ts';
import type { FactWords, Figure, Question, RecordWords, Rule, Rulebook, Source } from '../types.ts';
import { checkRulebook, type Known } from './checks/index.ts';
import { type RuleDocument, type RuleFile, readDocument } from './document.ts';
import { firstRunShape } from './first-run-shape.ts';
import { figureFrom, questionFrom, recordFrom, ruleFrom, unitsFrom } from './parse.ts';
import { shaped } from './shaped.ts';
import * as shapes from './shapes.ts';
import { takeFrom } from './take.ts';

/** Every rule file below a folder, in the order of their paths; names that start with `_` are templates and left out. */
export const readRuleFiles = (folder: string): RuleFile[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.yaml') && !entry.name.startsWith('_'))
    .map((entry) => join(entry.parentPath ?? entry.path, entry.name))
    .sort()
    .map((path) => ({ file: relative(folder, path).split(sep).join('/'), text: readFileSync(path, 'utf8') }));

/** What a loaded rulebook rests on, for the checks: each part with the document it came from. */
export interface Loaded {
  readonly book: Rulebook;
  /** `figure:heat/floor` → its document, and likewise `rule:`, `question:`, `source:`, `fact:`, `record:`. */
  readonly documents: ReadonlyMap<string, RuleDocument>;
}

/**
 * Builds a rulebook from rule files. Whatever has the right shape is in the book even when problems remain,
 * so that every check can run and all problems come at once.
 * @param known the facts the engine can work out, and the figures it reads by itself
 */
export const buildRulebook = (
  files: readonly RuleFile[],
  known: Known,
): { readonly book: Rulebook; readonly problems: readonly Problem[] } => {
  const problems: Problem[] = [];
  const documents = new Map<string, RuleDocument>();
  const all = files.map(readDocument);

  const take = takeFrom(all, documents, problems);
  const single = <S>(file: string, schema: z.ZodType<S>): S | undefined => {
    const document = all.find((each) => each.file === file);
    if (document === undefined) return undefined;
    documents.set(`file:${file}`, document);
    const { data, problems: found } = shaped(document, schema);
    problems.push(...found);
    return data;
  };

  const units = single('units.yaml', shapes.unitsShape);
  const words = single('words.yaml', shapes.wordsShape);
  const assumptions = single('assumptions.yaml', shapes.assumptionsShape);
  const sheet = single('sheet.yaml', shapes.sheetShape);
  const firstRun = single('first-run.yaml', firstRunShape);
  const figures: Record<string, Figure> = take('figures', 'figure', shapes.figureShape, figureFrom);
  const sources: Record<string, Source> = take('sources', 'source', shapes.sourceShape, (id, data) => ({
    id,
    ...data,
  }));
  const questions: Record<string, Question> = take(
    'questions',
    'question',
    shapes.questionShape,
    questionFrom,
  );
  const records: Record<string, RecordWords> = take('records', 'record', shapes.recordShape, recordFrom);
  const rules: Record<string, Rule> = take('decisions', 'rule', shapes.ruleShape, ruleFrom);
  const topics = take('facts', 'fact', shapes.factWordsShape, (_, data) => data);
  const factWords: [string, FactWords][] = [];
  for (const [topic, entries] of Object.entries(topics)) {
    for (const [id, data] of Object.entries(entries)) {
      const document = documents.get(`fact:${topic}`);
      if (document === undefined) continue;
      const before = documents.get(`words:${id}`);
      if (before !== undefined)
        problems.push(document.problemAtKey([id], 'words-twice', { found: id, file: before.file }));
      documents.set(`words:${id}`, document);
      factWords.push([
        id,
        {
          id,
          name: data.name,
          how: data.how,
          ask: data.ask ?? null,
          tell: data.tell ?? null,
          shown: data.shown ?? null,
          fixed: data.fixed ?? false,
          supposedBy: (data['supposed-by'] ?? []).map((each) => ({
            kind: each.kind,
            as: each.as,
            takes: each.takes,
            takesAway: each['takes-away'] ?? false,
            tells: each.tells ?? null,
            shareOf: each['share-of'] ?? null,
            from: each.from ?? null,
            narrow: each.narrow ?? false,
            unsaid: each.unsaid ?? null,
          })),
        },
      ]);
    }
  }

  const hash = createHash('sha256');
  for (const { file, text } of files) hash.update(`${file}\0${text}\0`);
  const book: Rulebook = {
    units: units === undefined ? { list: [], byId: {}, base: {}, shown: {} } : unitsFrom(units),
    figures,
    sources,
    questions,
    records,
    rules,
    facts: Object.fromEntries(factWords),
    assumptions: assumptions ?? {},
    sheet,
    firstRun,
    words: words ?? { ideas: {}, causes: {}, signs: {}, kinds: {}, settings: {}, hazards: {} },
    hash: hash.digest('hex').slice(0, 8),
  };
  problems.push(...checkRulebook({ book, documents }, known));
  return { book, problems };
};
