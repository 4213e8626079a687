import { describe, expect, test } from 'vitest';
import type { Supposition } from '../../../engine/types.ts';
import { settingsOf } from '../../helpers/settings-of.ts';
import { stateOf } from '../../helpers/state-of.ts';
import { workOut } from '../../helpers/work-out.ts';

const say = (fact: string, value: number | string): Supposition => ({ what: { fact }, value, adds: false });
const workings = (...supposing: readonly Supposition[]) =>
  workOut(stateOf({ settings: settingsOf({ 'wanted-carcass': 2 }) }), '2026-06-10', supposing);
const value = (fact: string, ...supposing: readonly Supposition[]) =>
  workings(...supposing).step(fact, null).value;

describe('chilling', () => {
  test('goes by the carcass that is wanted where no weight is named', () => {
    expect([value('chill-weight'), value('chill-class')]).toEqual([2, 'middle']);
  });

  test('goes by the weight that is named', () => {
    expect(value('chill-class', say('carcass-told', 1.5))).toBe('light');
    expect(value('chill-class', say('carcass-told', 4))).toBe('heavy');
  });
});

describe('keeping', () => {
  const months = (...supposing: readonly Supposition[]) =>
    Math.round(Number(value('keep-months', ...supposing)) / 30.436875);
  test('is for whole birds unless parts or giblets are named', () => {
    expect([months(), months(say('asks-parts', 'yes')), months(say('asks-giblets', 'yes'))]).toEqual([
      12, 9, 4,
    ]);
  });

  test('thawing takes a day for each five pounds, a begun day counted whole', () => {
    expect([2.2, 2.3].map((weight) => value('thaw-days', say('carcass-told', weight)))).toEqual([1, 2]);
  });
});

test('what is asked about is chilling where the words say nothing else, and the more urgent where they say several', () => {
  expect(value('meat-asked')).toBe('chilling');
  expect(value('meat-asked', say('asks-to-keep', 'yes'), say('asks-to-cook', 'yes'))).toBe('cooking');
});
