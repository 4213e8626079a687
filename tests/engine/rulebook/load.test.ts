/** Rule files → one rulebook: whole parts, problems from every file at once, and a hash that notices any change. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { buildRulebook, readRuleFiles } from '../../../engine/rulebook/load.ts';
import { changed, smallFiles, smallKnown, smallRulebook } from '../../helpers/small-rulebook.ts';

describe('a small rulebook', () => {
  const { book, problems } = smallRulebook();

  test('has nothing wrong with it', () => {
    expect(problems).toEqual([]);
  });

  test('has every part under the id that its path gives it', () => {
    expect(Object.keys(book.rules)).toEqual(['go-out/may-go', 'go-out/too-young']);
    expect(Object.keys(book.figures)).toEqual(['out/lowest-night', 'out/youngest']);
    expect([book.questions, book.records, book.sources].map((each) => Object.keys(each))).toEqual([
      ['go-out'],
      ['out'],
      ['own-judgement'],
    ]);
    expect(Object.keys(book.facts)).toEqual(['age', 'night-floor', 'night-low', 'place']);
  });

  test('has what was left out as null or empty', () => {
    expect(book.rules['go-out/too-young']).toEqual({
      id: 'go-out/too-young',
      question: 'go-out',
      gives: 'no',
      when: {
        all: [
          {
            fact: 'age',
            operator: 'less-than',
            figure: 'out/youngest',
            other: null,
            value: null,
            because: 'they are {age} old, and the least is {out/youngest}',
          },
        ],
      },
      says: 'Not yet: the {group} are too young.',
      whyRight: 'a younger bird cannot hold its warmth',
      source: 'own-judgement',
      outranks: [],
      chore: null,
      daily: false,
      cases: [
        { name: 'a day short', facts: { age: '13 day' }, figures: {}, expect: 'held' },
        { name: 'old enough', facts: { age: '14 day' }, figures: {}, expect: 'failed' },
        { name: 'not known', facts: {}, figures: {}, expect: 'unknown' },
      ],
    });
    expect(book.rules['go-out/may-go']?.chore).toEqual({
      id: 'go-out/may-go',
      at: 'morning',
      order: 10,
      says: 'Move the {group} out.',
      doneBy: 'out',
      givesWayTo: [],
      by: null,
      remind: null,
      rightWhen: null,
      ringWhen: null,
    });
    expect(book.figures['out/lowest-night']).toEqual({
      id: 'out/lowest-night',
      description: 'lowest night that they stand',
      unit: 'F',
      shown: null,
      by: [{ fact: 'age', unit: 'day', between: 'step' }],
      values: [{ from: '2026-01-01', source: 'own-judgement', value: { 14: 65, 21: 50 }, note: null }],
    });
    expect(book.questions['go-out']).toEqual({
      id: 'go-out',
      offer: 'whether a group can go out',
      example: 'can the reds go out',
      kind: 'yes-no',
      per: 'group',
      concerns: { fact: 'place', oneOf: ['brooder'] },
      days: 0,
      phrasings: ['can the reds go out'],
      results: [
        { id: 'age', fact: 'age', total: null, unit: null },
        { id: 'first-day', fact: 'when', total: null, unit: null },
      ],
      together: null,
      gathers: [],
      tries: null,
      imagines: null,
      looksBack: false,
      takes: {},
      foretells: {},
      picture: null,
      turns: true,
      ahead: null,
    });
    expect(book.facts['night-low']).toEqual({
      id: 'night-low',
      name: 'the coldest night',
      how: 'as told',
      ask: 'How cold will it be?',
      tell: 'low of 48 tonight',
      shown: null,
      fixed: false,
      supposedBy: [],
    });
    expect(book.units.list.map(({ id, offset }) => [id, offset])).toEqual([
      ['C', 0],
      ['F', -32],
      ['day', 0],
    ]);
    expect(book.sources['own-judgement']?.year).toBe('2026');
  });
});

describe('a rulebook with mistakes', () => {
  test('tells of all of them at once and keeps the parts that are whole', () => {
    const { book, problems } = smallRulebook({
      ...changed('decisions/go-out/too-young.yaml', 'less-than', 'fewer-than'),
      ...changed('figures/out/youngest.yaml', 'unit: day', 'unit: dog'),
      ...changed('sources/own-judgement.yaml', 'standing: judgement', 'standing: hearsay'),
    });
    // Not told: that nobody knows the faulty source, or that a rule ties with another while its comparison is not even one.
    expect(problems.map(({ code, at }) => [at.file, at.line, code])).toEqual([
      ['sources/own-judgement.yaml', 5, 'wrong-shape'],
      ['figures/out/youngest.yaml', 2, 'unknown-unit'],
      ['decisions/go-out/too-young.yaml', 5, 'unknown-operator'],
    ]);
    expect(Object.keys(book.rules)).toEqual(['go-out/may-go', 'go-out/too-young']);
    expect(book.sources).toEqual({});
  });

  test('without any file is empty and says which facts have no words', () => {
    const { book, problems } = buildRulebook([], smallKnown);
    expect(book.units.list).toEqual([]);
    expect(problems.map(({ code, data }) => [code, data.fact])).toEqual(
      smallKnown.facts.map(({ id }) => ['fact-without-words', id]),
    );
  });
});

describe('the hash', () => {
  const { hash } = smallRulebook().book;

  test('is the same for the same files', () => {
    expect(hash).toMatch(/^[0-9a-f]{8}$/);
    expect(smallRulebook().book.hash).toBe(hash);
  });

  test('is another one for another number, another name, or one file less', () => {
    const others = [
      changed('figures/out/youngest.yaml', 'value: 14', 'value: 15'),
      { 'sources/nobody.yaml': smallFiles().find(({ file }) => file.startsWith('sources/'))?.text ?? '' },
      { 'assumptions.yaml': null },
    ].map((over) => smallRulebook(over).book.hash);
    expect(new Set([hash, ...others]).size).toBe(4);
  });
});

describe('a folder of rule files', () => {
  test('is read in the order of its paths, templates and other files left out', () => {
    const folder = mkdtempSync(join(tmpdir(), 'penside-rules-'));
    try {
      mkdirSync(join(folder, 'figures', 'out'), { recursive: true });
      for (const path of [
        'words.yaml',
        'figures/out/b.yaml',
        'figures/out/a.yaml',
        'figures/_template.yaml',
        'notes.md',
      ])
        writeFileSync(join(folder, path), `# ${path}`);
      expect(readRuleFiles(folder)).toEqual([
        { file: 'figures/out/a.yaml', text: '# figures/out/a.yaml' },
        { file: 'figures/out/b.yaml', text: '# figures/out/b.yaml' },
        { file: 'words.yaml', text: '# words.yaml' },
      ]);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});
