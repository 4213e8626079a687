/** How many birds of the year count against a limit, and whose law it is. */
import { describe, expect, test } from 'vitest';
import type { State } from '../../../engine/types.ts';
import { setTo } from '../../helpers/bought.ts';
import { group, stateOf } from '../../helpers/state-of.ts';
import { worth } from '../../helpers/work-out.ts';

const flock = (more: Partial<State> = {}): State => stateOf({ groups: [], ...more });
const selling = (state: State, fact: string) => worth(state, fact, state.on, null);

describe('the country', () => {
  test.each([
    ['the USA', 'yes'],
    ['U.S.A.', 'yes'],
    ['United States', 'yes'],
    ['America', 'yes'],
    ['Ireland', 'no'],
    ['Canada', 'no'],
  ])('%s: %s', (name, law) => {
    expect(selling(flock({ settings: { country: setTo('country', name) } }), 'in-united-states')).toBe(law);
  });

  test('is not told by units or by a place', () => {
    const settings = { 'units-system': setTo('units-system', 'us'), place: setTo('place', 'Ohio') };
    expect(selling(flock({ settings }), 'in-united-states')).toBe('not-told');
  });
});

describe('birds of the year', () => {
  const processed = (on: string, count: number) =>
    group({
      name: on,
      boxed: 60,
      arrived: '2025-11-01',
      hatched: '2025-10-31',
      processed: [{ on, line: 5, count, dressed: null }],
    });

  test('are those processed since 1 January and those whose day comes this year', () => {
    const done = [processed('2025-12-31', 60), processed('2026-01-01', 60)];
    expect(selling(flock({ groups: done }), 'birds-this-year')).toBe(60);
    expect(selling(flock({ groups: [...done, group()] }), 'birds-this-year')).toBe(110);
  });

  test('leave out those whose day comes next year', () => {
    const late = group({ hatched: '2026-12-20', arrived: '2026-12-21' });
    expect(selling(flock({ on: '2026-12-24', groups: [late] }), 'birds-this-year')).toBe(0);
  });
});
