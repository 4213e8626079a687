/** Every fact, figure, source, unit, question and rule that a file names must exist; a misspelt one gets the nearest known name. */
import type { Problem } from '../../problem.ts';
import { leavesOf, placeholdersIn, wordingsOf } from '../conditions.ts';
import type { Path } from '../document.ts';
import { nearest } from '../nearest.ts';
import type { RulebookCheck } from './index.ts';

/** Names that a wording may use besides facts and figures. */
const alwaysThere = ['group', 'on', 'until'];

export const unknownNames: RulebookCheck = ({ book, documents }, { facts }) => {
  const problems: Problem[] = [];
  const factIds = facts.map((fact) => fact.id);
  // A file that is there but faulty has told so itself: its name is known all the same.
  const filesOf = (kind: string): string[] =>
    [...documents.keys()].flatMap((part) => (part.startsWith(kind) ? [part.slice(kind.length)] : []));
  const figureIds = filesOf('figure:');
  const sourceIds = filesOf('source:');
  const questionIds = filesOf('question:');
  const ruleIds = filesOf('rule:');
  const recordIds = filesOf('record:');
  const unitIds = book.units.list.map((unit) => unit.id);
  const expect = (part: string, path: Path, what: string, name: string, known: readonly string[]): void => {
    if (known.includes(name)) return;
    const suggestion = nearest(name, known);
    const found = documents.get(part)?.problemAt(path, `unknown-${what}`, {
      found: name,
      ...(suggestion === undefined ? {} : { suggestion }),
    });
    if (found !== undefined) problems.push(found);
  };

  const expectIn = (part: string, path: Path, wording: string): void => {
    for (const name of placeholdersIn(wording)) {
      if (alwaysThere.includes(name)) continue;
      if (name.includes('/')) expect(part, path, 'figure', name, figureIds);
      else expect(part, path, 'fact', name, factIds);
    }
  };

  for (const figure of Object.values(book.figures)) {
    const part = `figure:${figure.id}`;
    expect(part, ['unit'], 'unit', figure.unit, unitIds);
    figure.by.forEach((axis, index) => {
      expect(part, ['by', index, 'fact'], 'fact', axis.fact, factIds);
      if (axis.unit !== null) expect(part, ['by', index, 'unit'], 'unit', axis.unit, unitIds);
    });
    figure.values.forEach((value, index) => {
      expect(part, ['values', index, 'source'], 'source', value.source, sourceIds);
    });
  }
  for (const rule of Object.values(book.rules)) {
    const part = `rule:${rule.id}`;
    expect(part, ['gives'], 'question', rule.question, questionIds);
    expect(part, ['source'], 'source', rule.source, sourceIds);
    rule.outranks.forEach((other, index) => {
      expect(part, ['outranks', index], 'rule', other, ruleIds);
    });
    if (rule.chore !== null && rule.chore.by !== null)
      expect(part, ['chore', 'by'], 'fact', rule.chore.by, factIds);
    if (rule.chore !== null && rule.chore.remind !== null)
      expect(part, ['chore', 'remind'], 'figure', rule.chore.remind, figureIds);
    rule.chore?.givesWayTo.forEach((other, index) => {
      expect(part, ['chore', 'gives-way-to', index], 'rule', other, ruleIds);
    });
    for (const { leaf, path } of leavesOf(rule.when)) {
      expect(part, [...path, 'fact'], 'fact', leaf.fact, factIds);
      if (leaf.figure !== null) expect(part, [...path, 'figure'], 'figure', leaf.figure, figureIds);
      if (leaf.other !== null) expect(part, [...path, 'other'], 'fact', leaf.other, factIds);
    }
    for (const { text, path } of wordingsOf(rule)) expectIn(part, path, text);
    if (rule.chore !== null && rule.chore.doneBy !== null) {
      const [kind = '', sign] = rule.chore.doneBy.split(':');
      expect(part, ['chore', 'done-by'], 'record', kind, recordIds);
      if (sign !== undefined) expect(part, ['chore', 'done-by'], 'sign', sign, Object.keys(book.words.signs));
    }
  }
  for (const question of Object.values(book.questions)) {
    const part = `question:${question.id}`;
    if (question.concerns !== null)
      expect(part, ['concerns', 'fact'], 'fact', question.concerns.fact, factIds);
    question.results.forEach((result, index) => {
      if (result.fact !== 'when') expect(part, ['results', index, 'fact'], 'fact', result.fact, factIds);
      if (result.unit !== null) expect(part, ['results', index, 'unit'], 'unit', result.unit, unitIds);
    });
    for (const [slot, fact] of Object.entries(question.takes))
      expect(part, ['takes', slot], 'fact', fact, factIds);
    for (const [fact, other] of Object.entries(question.foretells)) {
      expect(part, ['foretells', fact], 'fact', fact, factIds);
      expect(part, ['foretells', fact], 'question', other, questionIds);
    }
    if (question.picture !== null) expect(part, ['picture'], 'fact', `${question.picture}-series`, factIds);
    const { names: _names, plans: _plans, instead: _instead, ...tried } = question.tries ?? {};
    for (const [key, fact] of Object.entries(tried)) expect(part, ['tries', key], 'fact', fact, factIds);
    const { name: _name, ...imagined } = question.imagines ?? {};
    for (const [key, fact] of Object.entries(imagined))
      expect(part, ['imagines', key], 'fact', fact, factIds);
    question.gathers.forEach((other, index) => {
      expect(part, ['gathers', index], 'question', other, questionIds);
    });
  }
  for (const { id, how, shown } of Object.values(book.facts)) {
    expectIn(`words:${id}`, [id, 'how'], how);
    if (shown === null) continue;
    expect(`words:${id}`, [id, 'shown', 'us'], 'unit', shown.us, unitIds);
    expect(`words:${id}`, [id, 'shown', 'metric'], 'unit', shown.metric, unitIds);
  }
  return problems;
};
