/** Rules that could have decided otherwise, and where each stopped. */
import { describe, expect, test } from 'vitest';
import { ask, flockOf, type Line, partOf } from '../../helpers/flock-of.ts';
import { arrive, heatDown, nights, pen, ready, sign, today } from '../ask/go-out-flock.ts';

const near: Line = {
  kind: 'figure',
  on: '2026-05-04',
  figure: 'search/look-ahead',
  value: '1 day',
  reason: 'for this test',
};
const passed = async (...lines: readonly Line[]) => {
  const part = partOf(await ask(flockOf(...lines, near), 'go-out', today));
  return {
    verdict: part.verdict,
    of: (rule: string) => part.passedOver.find((each) => each.rule === rule),
    rules: part.passedOver.map(({ rule, gives }) => [rule, gives]),
    reasons: part.reasons,
  };
};

describe('a rule that stopped', () => {
  test('tells every condition that failed, with value and figure, and no other', async () => {
    const { verdict, of } = await passed(arrive, pen, heatDown('2026-05-28'), ...nights('35 F'));
    expect(verdict).toBe('no');
    const stopped = of('go-out/may-go');
    expect([stopped?.gives, stopped?.outcome]).toEqual(['yes', 'failed']);
    expect(
      stopped?.stoppedBy.map(({ fact, operator, figure, other, outcome }) => [
        fact.id,
        operator,
        figure?.id ?? other?.id,
        outcome,
      ]),
    ).toEqual([
      ['night-low', 'at-least', 'night-floor', 'failed'],
      ['days-of-hardening', 'at-least', 'pasture/hardening-days', 'failed'],
      ['night-low', 'at-least', 'pasture/night-without-feathers', 'failed'],
    ]);
    expect(stopped?.stoppedBy[1]).toMatchObject({ fact: { value: 2 }, figure: { value: 5, unit: 'day' } });
  });

  test('by something that is not known says what', async () => {
    const { of } = await passed(arrive, heatDown('2026-05-20'), ...nights('55 F'));
    const stopped = of('go-out/may-go');
    expect(stopped?.outcome).toBe('unknown');
    expect(stopped?.stoppedBy.map(({ fact, outcome }) => [fact.id, outcome])).toEqual([
      ['pen-room', 'unknown'],
    ]);
  });
});

test('a rule that holds and is outranked stopped nowhere', async () => {
  const { verdict, of } = await passed(...ready, sign('lethargic', today));
  expect(verdict).toBe('no');
  expect(of('go-out/may-go')).toEqual({
    rule: 'go-out/may-go',
    gives: 'yes',
    outcome: 'held',
    stoppedBy: [],
  });
});

test('rules of the same verdict, and those that only warn, are not among them', async () => {
  const { rules } = await passed(...ready);
  expect(rules.filter(([, gives]) => gives === 'yes')).toEqual([]);
  expect(rules.filter(([, gives]) => ['caution', 'step', 'remark'].includes(gives ?? ''))).toEqual([]);
  expect(rules.map(([rule]) => rule)).toContain('go-out/cold-night');
});

test('of amounts, every other one is', async () => {
  const flock = flockOf(arrive, near);
  const part = partOf(await ask(flock, 'order-size', today));
  expect(part.verdict).toBe('amount');
  expect(part.passedOver.map(({ rule }) => rule)).toContain('order-size/none-wanted');
  expect(part.passedOver.map(({ rule }) => rule)).not.toContain(part.rule);
});
