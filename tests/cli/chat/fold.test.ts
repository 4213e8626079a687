/** Long answers folded: what always stands, what is counted, and that nothing is lost on the way to the last "more". */
import { describe, expect, test } from 'vitest';
import { foldTokens, opensFold } from '../../../cli/chat/fold.ts';
import { foldLong } from '../../../cli/chat/fold-long.ts';
import { layOut } from '../../../cli/say/lay-out.ts';
import type { Token } from '../../../cli/say/tokens.ts';

const claim: Token = { t: 'claim', text: 'Yes.' };
const caution: Token = { t: 'caution', text: 'shut the pen at night' };
const reason = (n: number): Token => ({
  t: 'reason',
  n,
  text: `reason ${n}`,
  outcome: 'held',
  note: 'a source',
});
const detail = (n: number): Token => ({ t: 'detail', text: `note ${n}` });
const next: Token = { t: 'next', text: 'It would turn to no if it rained.' };
const heading = (text: string): Token => ({ t: 'heading', text });
const picture: Token = { t: 'picture', drawings: [Array(12).fill('####')], says: 'Weight rises.' };
const upTo = (count: number): readonly number[] => Array.from({ length: count }, (_, at) => at + 1);

const small = { columns: 80, rows: 18 };

test('what fits stands as it is', () => {
  const tokens = [claim, ...upTo(5).map(reason), caution];
  expect(foldTokens(tokens, small)).toEqual({ shown: tokens, hidden: [] });
});

test('the first reasons stand, the rest is counted by what it is; claims and cautions are never hidden', () => {
  const tokens = [claim, ...upTo(9).map(reason), next, picture, detail(1), detail(2), caution];
  expect(foldTokens(tokens, small)).toEqual({
    shown: [
      claim,
      ...upTo(4).map(reason),
      next,
      detail(1),
      caution,
      { t: 'next', text: 'Folded: 5 reasons, 1 picture and 1 note, in 24 rows. Say "more" to open.' },
    ],
    hidden: [...upTo(9).slice(4).map(reason), picture, detail(2)],
  });
});

test('each part keeps its deciding reason, and a heading stands over whatever of its part is there', () => {
  const part = (name: string, from: number): Token[] => [
    heading(name),
    ...upTo(4).map((n) => reason(n + from)),
    detail(from),
  ];
  const { shown, hidden } = foldTokens([claim, ...part('The whites', 0), ...part('The reds', 4)], small);
  expect(shown.slice(0, -1)).toEqual([
    claim,
    heading('The whites'),
    reason(1),
    reason(2),
    reason(3),
    detail(0),
    heading('The reds'),
    reason(5),
  ]);
  expect(hidden).toEqual([
    heading('The whites'),
    reason(4),
    heading('The reds'),
    reason(6),
    reason(7),
    reason(8),
    detail(4),
  ]);
});

test('a round of tasks stands from its first on, and those that are hidden are counted as tasks', () => {
  const tasks = upTo(20).map(
    (n): Token => ({ t: 'step', id: `${n}`, text: `task ${n}`, at: 'morning', done: false }),
  );
  const unknown: Token = { t: 'unknown', text: 'the low tonight', tell: null };
  const { shown, hidden } = foldTokens([caution, ...tasks, unknown], small);
  const text = 'Folded: 9 tasks and 1 open question, in 10 rows. Say "more" to open.';
  expect(shown).toEqual([caution, ...tasks.slice(0, 11), { t: 'next', text }]);
  expect(hidden).toEqual([...tasks.slice(11), unknown]);
});

test('what would hide no more than it says is not folded', () => {
  const tokens = [claim, ...upTo(13).map(detail)];
  expect(layOut(tokens, small.columns)).toHaveLength(14);
  expect(foldTokens(tokens, small).hidden).toEqual([]);
  expect(foldTokens([...tokens, detail(14)], small).hidden).toHaveLength(3);
});

test.each(['more', ' More. ', 'show more', 'show me the rest', 'the rest'])('%j opens', (words) => {
  expect(opensFold(words)).toBe(true);
});

test.each(['more chicks', 'how many more', 'no more'])('%j does not', (words) => {
  expect(opensFold(words)).toBe(false);
});

describe('a folding turn', () => {
  const tokens = [claim, ...upTo(50).map(detail)];
  const play = async (...lines: readonly string[]) => {
    const heard: string[] = [];
    const turn = foldLong(
      async (words) => {
        heard.push(words);
        return { tokens: words === 'long' ? tokens : [claim] };
      },
      () => small,
      false,
    );
    const told: (readonly Token[])[] = [];
    for (const words of lines) told.push((await turn(words)).tokens);
    return { heard, told };
  };

  test('gives all of it over several "more", each of them within the window', async () => {
    const { told, heard } = await play('long', ...Array(4).fill('more'));
    const opened = told.flatMap((each) => each.filter(({ t }) => t !== 'next'));
    expect(opened).toEqual(tokens);
    for (const each of told) expect(layOut(each, small.columns).length).toBeLessThanOrEqual(small.rows - 4);
    expect(heard).toEqual(['long']);
  });

  test('forgets what is folded at the next line; then "more" is a line like any other', async () => {
    const { heard } = await play('long', 'short', 'more');
    expect(heard).toEqual(['long', 'short', 'more']);
  });
});

test('to one who listens it is not counted in rows', () => {
  const said = (isHeard: boolean) =>
    foldTokens([claim, ...upTo(50).map(detail)], small, isHeard).shown.at(-1);
  expect(said(true)).toEqual({
    t: 'next',
    text: expect.stringMatching(/^Folded: \d+ notes\. Say "more" to open\.$/),
  });
  expect(said(false)).toEqual({
    t: 'next',
    text: expect.stringMatching(/^Folded: \d+ notes, in \d+ rows\. /),
  });
});
