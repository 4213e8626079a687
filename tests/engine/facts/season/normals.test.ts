import { describe, expect, test } from 'vitest';
import { defineFact } from '../../../../engine/facts/define.ts';
import { normalFacts, normalFigures, normalsOf } from '../../../../engine/facts/season/normals.ts';
import { openWorkings } from '../../../../engine/facts/workings.ts';
import { settingsOf } from '../../../helpers/settings-of.ts';
import { stateOf } from '../../../helpers/state-of.ts';
import { bookForTests } from '../../../helpers/work-out.ts';

/** The usual night of a day by way of a fact made for it, and what that takes for granted. */
const nightOf = (day: string, settings: Readonly<Record<string, number>> = {}) => {
  const probe = defineFact({
    id: 'probe',
    unit: 'C',
    per: 'flock',
    needs: ['usual-nights'],
    figures: normalFigures,
    compute: (read) => normalsOf(read, 'usual-nights')(day),
  });
  const facts = new Map([...normalFacts, probe].map((fact) => [fact.id, fact]));
  const workings = openWorkings({
    state: stateOf({ settings: settingsOf(settings) }),
    book: bookForTests,
    facts,
    on: '2026-05-08',
    until: null,
    supposing: [],
  });
  return {
    night: Number(workings.step('probe', null).value),
    assumed: workings.step('usual-nights', null).assumed.map((each) => each.id),
  };
};

const names = 'january february march april may june july august september october november december';
const all = Object.fromEntries(names.split(' ').map((name, index) => [`low-${name}`, index]));

describe('usual nights', () => {
  test('in the middle of a month are those of the month', () => {
    expect(nightOf('2026-04-15', { 'low-april': 3 }).night).toBeCloseTo(3, 9);
  });

  test('between two middles lie between both', () => {
    const { night } = nightOf('2026-04-30', { 'low-april': 3, 'low-may': 9 });
    expect(night).toBeGreaterThan(5.5);
    expect(night).toBeLessThan(6.5);
  });

  test('run on over the turn of the year', () => {
    const settings = { 'low-december': -4, 'low-january': -8 };
    expect(nightOf('2026-12-31', settings).night).toBeCloseTo(nightOf('2027-01-01', settings).night, 0);
  });

  test('are taken for granted only where a month is not told', () => {
    expect(nightOf('2026-04-15').assumed).toEqual(['usual-nights']);
    expect(nightOf('2026-04-15', all).assumed).toEqual([]);
  });
});
