/** Rule files of the keeper's over a published rulebook: what they put in place, what they leave, and what they cannot do. */
import { describe, expect, test } from 'vitest';
import { sayProblem } from '../../../cli/say/problem.ts';
import { layOwnRules } from '../../../engine/ask/own-book.ts';
import type { RuleFile } from '../../../engine/rulebook/document.ts';
import type { Rulebook } from '../../../engine/types.ts';
import { smallKnown, smallRulebook } from '../../helpers/small-rulebook.ts';

const { book: base } = smallRulebook();

const filesOf = (over: Readonly<Record<string, string>>): RuleFile[] =>
  Object.entries(over).map(([file, text]) => ({ file, text }));

const lay = (over: Readonly<Record<string, string>>, on: Rulebook = base) =>
  layOwnRules(on, filesOf(over), smallKnown);

const messages = async (over: Readonly<Record<string, string>>): Promise<readonly string[]> => {
  const { book, problems } = await lay(over);
  if (problems.length > 0) expect(book).toBe(base);
  return problems.map((problem) => sayProblem(problem)[0] ?? '');
};

const rule = (gives: string, more = ''): string => `gives: ${gives}
when:
  all:
    - fact: place
      operator: is
      value: brooder
      because: they live in the brooder
says: The {group} stay in until we say so.
why-right: we have seen it go wrong
source: own-judgement
${more}cases:
  - {name: in the brooder, facts: {place: brooder}, expect: held}
  - {name: in the pen, facts: {place: pen}, expect: failed}
  - {name: not known, facts: {}, expect: unknown}
`;

const youngest = `description: age below which none goes out here
unit: day
values:
  - {from: 2026-05-01, source: our-notes, value: 21}
`;
const notes = 'author: us\ntitle: Our Notes\nyear: 2026\nwhere: the shed\nstanding: judgement\n';

describe('own files that are right', () => {
  test('put a figure in the place of the published one, which stays beside it', async () => {
    const { book, problems } = await lay({
      'figures/out/youngest.yaml': youngest,
      'sources/our-notes.yaml': notes,
    });
    expect(problems).toEqual([]);
    expect(book.figures['out/youngest']).toEqual({
      id: 'out/youngest',
      description: 'age below which none goes out here',
      unit: 'day',
      shown: null,
      by: [],
      values: [{ from: '2026-05-01', source: 'our-notes', value: 21, note: null }],
      own: { published: base.figures['out/youngest'] },
    });
    expect(book.figures['out/lowest-night']).toBe(base.figures['out/lowest-night']);
    expect(Object.keys(book.sources)).toEqual(['own-judgement', 'our-notes']);
    expect(book.rules).toEqual(base.rules);
  });

  test('put a new rule beside the published ones, above or below them as they say', async () => {
    const above = await lay({
      'decisions/go-out/we-say.yaml': rule('no', 'outranks: [may-go, too-young]\n'),
    });
    expect(above.problems).toEqual([]);
    expect(Object.keys(above.book.rules)).toEqual(['go-out/may-go', 'go-out/too-young', 'go-out/we-say']);
    expect(above.book.rules['go-out/we-say']).toMatchObject({
      gives: 'no',
      outranks: ['go-out/may-go', 'go-out/too-young'],
      own: { published: null },
    });
    const below = await lay({
      'decisions/go-out/we-say.yaml': rule('yes', 'outranked-by: [may-go, too-young]\n'),
    });
    expect(below.problems).toEqual([]);
    expect(below.book.rules['go-out/may-go']?.outranks).toEqual(['go-out/we-say']);
    expect(below.book.rules['go-out/we-say']?.outranks).toEqual([]);
    expect(base.rules['go-out/may-go']?.outranks).toEqual([]);
  });

  test('put a rule in the place of a published one by its id', async () => {
    const { book, problems } = await lay({
      'decisions/go-out/too-young.yaml': rule('no', 'outranks: [may-go]\n'),
    });
    expect(problems).toEqual([]);
    expect(book.rules['go-out/too-young']).toMatchObject({
      whyRight: 'we have seen it go wrong',
      own: { published: base.rules['go-out/too-young'] },
    });
  });

  test('add ways of asking to a question and change nothing else of it', async () => {
    const { book, problems } = await lay({ 'questions/go-out.yaml': 'phrasings: [is it tractor time]\n' });
    expect(problems).toEqual([]);
    expect(book.questions['go-out']).toEqual({ ...base.questions['go-out'], own: ['is it tractor time'] });
  });

  test('change the hash of the book, each change to another one; no files leave it', async () => {
    const hashes = await Promise.all(
      [
        {},
        { 'questions/go-out.yaml': 'phrasings: [a b]\n' },
        { 'questions/go-out.yaml': 'phrasings: [a c]\n' },
      ].map(async (over) => (await lay(over)).book.hash),
    );
    expect(new Set([base.hash, ...hashes]).size).toBe(4);
    expect(hashes.every((hash) => /^[0-9a-f]{8}$/.test(hash))).toBe(true);
  });
});

describe('own files are checked like published ones', () => {
  test.each([
    [
      'a fact that is misspelt',
      {
        'decisions/go-out/we-say.yaml': rule('no', 'outranks: [may-go, too-young]\n').replace(
          'fact: place',
          'fact: plaec',
        ),
      },
      'decisions/go-out/we-say.yaml, line 4, column 13: there is no fact called plaec.',
    ],
    [
      'a rule without an order to the published ones',
      { 'decisions/go-out/we-say.yaml': rule('no') },
      'decisions/go-out/we-say.yaml, line 1, column 1: go-out/we-say and go-out/may-go can hold at once.',
    ],
    [
      'a rule of a question that is not there',
      { 'decisions/go-away/we-say.yaml': rule('no') },
      'decisions/go-away/we-say.yaml, line 1, column 8: there is no question called go-away.',
    ],
    [
      'a figure that nothing uses',
      { 'figures/out/oldest.yaml': youngest.replace('our-notes', 'own-judgement') },
      'figures/out/oldest.yaml, line 1, column 14: no rule and no fact uses out/oldest.',
    ],
    [
      'a source that is not there',
      { 'figures/out/youngest.yaml': youngest },
      'figures/out/youngest.yaml, line 4, column 32: there is no source called our-notes.',
    ],
    [
      'a phrasing of a question that is not there',
      { 'questions/go-outt.yaml': 'phrasings: [x y]\n' },
      'questions/go-outt.yaml, line 1, column 1: there is no question called go-outt.',
    ],
    [
      'more of a question than its phrasings',
      { 'questions/go-out.yaml': 'phrasings: [x y]\nkind: amount\n' },
      'questions/go-out.yaml, line 2, column 1: kind is not a key that belongs here.',
    ],
    [
      'a rule above it that is not there',
      {
        'decisions/go-out/we-say.yaml': rule('no', 'outranks: [may-go, too-young]\noutranked-by: [maygo]\n'),
      },
      'decisions/go-out/we-say.yaml, line 12, column 16: there is no rule called go-out/maygo.',
    ],
  ] as const)('%s', async (_, over, message) => {
    expect(await messages(over)).toContain(message);
  });

  test('a rule that takes the last verdict from its question is told at its own file', async () => {
    const only = smallRulebook({ 'decisions/go-out/too-young.yaml': null }).book;
    const caution = { 'decisions/go-out/may-go.yaml': rule('caution') };
    const { book, problems } = await lay(caution, only);
    expect(problems.map(({ code, at }) => [code, at.file])).toEqual([
      ['question-without-rule', 'decisions/go-out/may-go.yaml'],
    ]);
    expect(book).toBe(only);
  });

  test('a published book without phrasings and cases, as it is shipped, is laid over all the same', async () => {
    const shipped: Rulebook = {
      ...base,
      questions: Object.fromEntries(
        Object.entries(base.questions).map(([id, question]) => [id, { ...question, phrasings: [], not: [] }]),
      ),
      rules: Object.fromEntries(Object.entries(base.rules).map(([id, each]) => [id, { ...each, cases: [] }])),
    };
    const { problems } = await lay(
      { 'decisions/go-out/we-say.yaml': rule('no', 'outranks: [may-go, too-young]\n') },
      shipped,
    );
    expect(problems).toEqual([]);
  });
});

describe('a file from elsewhere', () => {
  const shell = (line: string): string => rule('no', `outranks: [may-go, too-young]\n${line}\n`);

  test.each([
    [
      'reaches for another path',
      {
        'decisions/go-out/x.yaml': rule('no').replace(
          '      value: brooder',
          "      value: brooder\n      path: '$.secret'",
        ),
      },
    ],
    [
      'hands parameters on',
      {
        'decisions/go-out/x.yaml': rule('no').replace(
          '      value: brooder',
          '      value: brooder\n      params: {id: x}',
        ),
      },
    ],
    ['names an event', { 'decisions/go-out/x.yaml': shell('event: {type: run}') }],
    ['brings code by a tag', { 'decisions/go-out/x.yaml': shell('why: !!js/function "function () {}"') }],
    [
      'names a file as a fact',
      { 'decisions/go-out/x.yaml': rule('no').replace('fact: place', 'fact: ../../etc/passwd') },
    ],
    ['has a prototype for a key', { 'decisions/go-out/x.yaml': shell('__proto__: {gives: yes}') }],
    [
      'has a prototype in a table',
      {
        'figures/out/lowest-night.yaml':
          'description: x\nunit: F\nby: [{fact: age, unit: day, between: step}]\nvalues: [{from: 2026-01-01, source: own-judgement, table: {__proto__: 5}}]\n',
      },
    ],
    ['is a prototype by its name', { 'decisions/go-out/__proto__.yaml': rule('no') }],
    ['names a question by what every object has', { 'decisions/constructor/x.yaml': rule('no') }],
    ['climbs out of its folder', { 'decisions/../../x.yaml': rule('no') }],
    [
      'has endless numbers',
      { 'figures/out/youngest.yaml': youngest.replace('21', '1e999').replace('our-notes', 'own-judgement') },
    ],
    [
      'has numbers that overflow',
      { 'figures/out/youngest.yaml': youngest.replace('21', '-1e308').replace('our-notes', 'own-judgement') },
    ],
    ['is a wall of brackets', { 'decisions/go-out/x.yaml': '['.repeat(100_000) }],
    ['is a stair of dashes', { 'decisions/go-out/x.yaml': `${'- '.repeat(50_000)}x` }],
    [
      'nests conditions without end',
      { 'decisions/go-out/x.yaml': rule('no').replace('  all:', `  ${'not: {'.repeat(60)}all:`) },
    ],
    ['has no end of a phrase', { 'questions/go-out.yaml': `phrasings: ['${'x '.repeat(5000)}']\n` }],
    ['is no text', { 'decisions/go-out/x.yaml': '\u0000\u0001\ufffd' }],
    ['is empty', { 'decisions/go-out/x.yaml': '' }],
  ] as const)('that %s is refused with a place, and changes nothing', async (_, over) => {
    const { book, problems } = await lay(over);
    expect(book).toBe(base);
    expect(problems.length).toBeGreaterThan(0);
    expect(problems.every(({ at }) => Object.hasOwn(over, at.file) && at.line >= 1 && at.column >= 1)).toBe(
      true,
    );
    expect(({} as Record<string, unknown>).gives).toBeUndefined();
  });

  test('that unfolds into billions is refused before it is unfolded', async () => {
    const steps = Array.from({ length: 9 }, (_, n) => {
      const name = 'abcdefghij'[n];
      const inner =
        n === 0 ? Array.from({ length: 9 }, () => 'x') : ['*', '*'].map(() => `*${'abcdefghij'[n - 1]}`);
      return `${name}: &${name} [${inner.join(', ')}]`;
    });
    const { problems } = await lay({ 'questions/go-out.yaml': `${steps.join('\n')}\nphrasings: *i\n` });
    expect(problems.map(({ code }) => code)).toContain('wrong-alias');
  });

  test('whose aliases stand for a little text is taken', async () => {
    const { problems } = await lay({
      'decisions/go-out/we-say.yaml': rule('no', 'outranks: [may-go, too-young]\n')
        .replace('says: The', 'says: &s The')
        .replace('why-right: we have seen it go wrong', 'why-right: *s'),
    });
    expect(problems).toEqual([]);
  });
});
