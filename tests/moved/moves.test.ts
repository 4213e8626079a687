/** Two programs' answers set beside each other: turns and amounts are found, what rounding hides is not, and an example tells where. */
import { describe, expect, test } from 'vitest';
import { speechIn } from '../helpers/small-speech.ts';
import { compareAnswers, type Given } from './moves.ts';
import { showMoves } from './show.ts';

const speech = speechIn('us');

const given = (verdict: 'yes' | 'no', degrees: number, more: Partial<Given> = {}): Given => ({
  flock: 'a spring batch',
  on: '2026-05-08',
  question: 'go-out',
  verdicts: [{ group: 'whites', verdict, rule: `go-out/${verdict}` }],
  amounts: [{ id: 'night-low', fact: 'night-low', group: 'whites', value: degrees, unit: 'C' }],
  ...more,
});

describe('answers set beside each other', () => {
  test('a turn and an amount that reads otherwise are counted and shown by an example', () => {
    expect(showMoves(speech, compareAnswers(speech, [given('no', 4)], [given('yes', 10)]))).toEqual([
      '1 answers in both, 1 turned, 1 amounts read otherwise',
      'go-out: 1 answers, 1 turned, 1 amounts read otherwise',
      '  no → yes: 1 times',
      '    as a spring batch, Friday 8 May, the whites: no (go-out/no) → yes (go-out/yes)',
      '  night-low: 1 times',
      '    as a spring batch, Friday 8 May, the whites: night-low 39 °F → 50 °F',
    ]);
  });

  test('what rounding hides has not moved', () => {
    expect(showMoves(speech, compareAnswers(speech, [given('no', 4)], [given('no', 4.01)]))).toEqual([
      '1 answers in both, 0 turned, 0 amounts read otherwise',
      'Not moved: go-out',
    ]);
  });

  test('the same question is compared on the same day of the same flock alone', () => {
    const elsewhere = given('yes', 20, { on: '2026-05-09' });
    const { moved } = compareAnswers(speech, [given('no', 4)], [elsewhere]);
    expect(moved).toEqual([
      { question: 'go-out', compared: 0, turned: [], changed: [], added: [], dropped: [] },
    ]);
  });

  test('questions and results that only one of them has are named, not counted', () => {
    const without = given('no', 4, { amounts: [] });
    const [old, young] = [given('no', 4, { question: 'old' }), given('no', 4, { question: 'young' })];
    expect(showMoves(speech, compareAnswers(speech, [without, old], [given('no', 4), young]))).toEqual([
      '1 answers in both, 0 turned, 0 amounts read otherwise',
      'go-out: 1 answers, 0 turned, 0 amounts read otherwise',
      '  told only now: night-low',
      'Answered only now: young',
      'Answered no more: old',
    ]);
  });
});
