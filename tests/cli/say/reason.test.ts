/** One reason in words: the comparison, its outcome, and the figure with its source; or the rule where there is no figure. */
import { describe, expect, test } from 'vitest';
import { figuresOf, outcomeWords, sayFigure, sayReason } from '../../../cli/say/reason.ts';
import { saySource } from '../../../cli/say/source.ts';
import { answer } from '../../../engine/ask/ask.ts';
import type { Answer, FigureUse, Source } from '../../../engine/types.ts';
import { factsOf, request, world } from '../../helpers/small-flock.ts';
import { smallRulebook } from '../../helpers/small-rulebook.ts';
import { speechIn } from '../../helpers/small-speech.ts';

const use: FigureUse = {
  id: 'out/lowest-night',
  value: 50,
  unit: 'F',
  from: '2026-01-01',
  source: 'own-judgement',
  own: false,
};

describe('a source', () => {
  const { book } = smallRulebook();
  const named = (standing: Source['standing']): string => {
    const source = {
      id: 'x',
      author: 'A. Keeper',
      title: 'Birds On Grass',
      year: '2017',
      where: 'here',
      standing,
    };
    return saySource(speechIn('us', { ...book, sources: { x: source } }), 'x');
  };

  test.each([
    ['published', 'A. Keeper, 2017'],
    ['relayed', 'A. Keeper, 2017'],
    ['memory', 'A. Keeper, from memory'],
    ['derived', 'worked out'],
    ['practice', 'birds on grass'],
    ['judgement', 'birds on grass'],
  ] as const)('that is %s is named as %s', (standing, said) => {
    expect(named(standing)).toBe(said);
  });

  test('that is not in the book, such as a ledger line, is said as it stands', () => {
    expect(saySource(speechIn('us'), 'line 7')).toBe('line 7');
  });
});

test('a figure is said with its number and source, or with the day on which the keeper set it', () => {
  expect(sayFigure(speechIn('metric'), use)).toBe('out/lowest-night 10 °C, own judgement');
  const own = { ...use, value: 8, unit: 'C', own: true, from: '2026-05-01', source: 'line 7' };
  expect(sayFigure(speechIn('us'), own)).toBe(
    'out/lowest-night yours: 46 °F, since Friday 1 May; nothing is published',
  );
});

describe('a reason', () => {
  const told = async (low?: number): Promise<Answer> =>
    answer(world(factsOf({ reds: 21 }, low)), request({ groups: ['reds'] }));

  test('says what was compared, in the units of the place, and the figure behind the other side', async () => {
    const ready = await told(18);
    const tokens = ready.parts.flatMap(({ reasons }) =>
      reasons.map((reason) => sayReason(speechIn('metric'), ready, reason)),
    );
    expect(tokens).toEqual([
      {
        t: 'reason',
        n: 1,
        text: 'They are 21 days old, and the least is 14 days',
        outcome: 'held',
        note: 'out/youngest 14 days, own judgement',
      },
      {
        t: 'reason',
        n: 2,
        text: 'Tonight is 18 °C, and 10 °C is the least',
        outcome: 'held',
        note: 'out/lowest-night 10 °C, own judgement',
      },
    ]);
  });

  test('with a side missing names only what is missing', async () => {
    const open = await told();
    const [reason] = open.parts.flatMap(({ reasons }) => reasons);
    if (reason === undefined) throw new Error('no reason');
    expect(sayReason(speechIn('us'), open, reason)).toMatchObject({
      text: 'The coldest night',
      outcome: 'not known',
    });
  });

  test('without a figure names the rule and its source', async () => {
    const ready = await told(18);
    const [reason] = ready.parts.flatMap(({ reasons }) => reasons);
    if (reason === undefined) throw new Error('no reason');
    const bare = { ...reason, figure: null };
    expect(figuresOf(ready, bare)).toEqual([]);
    expect(sayReason(speechIn('us'), ready, bare)).toMatchObject({
      note: 'rule go-out/may-go, own judgement',
    });
  });

  test('names a source once for all the figures that it gave, and no more than four figures', async () => {
    const ready = await told(18);
    const [, reason] = ready.parts.flatMap(({ reasons }) => reasons);
    if (reason === undefined) throw new Error('no reason');
    const figures = [1, 2, 3, 4, 5].map((n) => ({ ...use, id: `out/night-${n}`, value: n * 10 }));
    const own = { ...use, id: 'out/own', own: true, from: '2026-05-01', source: 'line 7' };
    const workings = ready.workings.map((step) =>
      step.fact === 'night-floor' ? { ...step, figures: [own, ...figures] } : step,
    );
    const note = sayReason(speechIn('us'), { ...ready, workings }, reason);
    expect(note).toMatchObject({
      note: 'out/own yours: 50 °F, since Friday 1 May; nothing is published; out/night-1 10 °F, out/night-2 20 °F and out/night-3 30 °F, own judgement',
    });
  });

  test('has one of three outcomes', () => {
    expect(outcomeWords).toEqual({ held: 'held', failed: 'failed', unknown: 'not known' });
  });
});
