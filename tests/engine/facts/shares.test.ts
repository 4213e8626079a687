/** Who was promised birds, who has them and who owes, and how many are free to promise. */
import { describe, expect, test } from 'vitest';
import type { Share, State, Supposition } from '../../../engine/types.ts';
import { setTo } from '../../helpers/bought.ts';
import { group, stateOf } from '../../helpers/state-of.ts';
import { workOut } from '../../helpers/work-out.ts';

const share = (who: string, step: Share['step'], count: number, paid: string | null = null): Share => ({
  on: '2026-05-08',
  line: 20,
  who,
  count,
  step,
  paid,
});

const shares = [
  share('my sister', 'promised', 4),
  share('the Millers', 'promised', 6),
  share('My Sister', 'handed', 4),
  share('my sister', 'paid', 3, '45.00'),
  share('Jo', 'handed', 2),
];

const flock = (more: Partial<State> = {}): State => stateOf({ shares, groups: [], ...more });

const valuesOf = (state: State, facts: readonly string[], supposing: readonly Supposition[] = []) => {
  const workings = workOut(state, state.on, supposing);
  return Object.fromEntries(facts.map((fact) => [fact, workings.step(fact, null).value]));
};

const people = ['promised-in-all', 'handed-here', 'still-to-hand', 'who-waits', 'who-is-served', 'who-owes'];

describe('people', () => {
  test('are told apart by name, however it is written', () => {
    expect(valuesOf(flock(), people)).toEqual({
      'promised-in-all': 10,
      'handed-here': 6,
      'still-to-hand': 6,
      'who-waits': 'the-Millers=6',
      'who-is-served': 'my-sister=4 Jo=2',
      'who-owes': 'Jo=2 my-sister=1',
    });
  });

  test('can be asked about one by one', () => {
    const asked = (who: string): Supposition => ({ what: { fact: 'who-asked' }, value: who, adds: false });
    expect(valuesOf(flock(), ['who-is-meant', ...people, 'paid-in-all'], [asked('MY SISTER')])).toEqual({
      'who-is-meant': 'my sister',
      'promised-in-all': 4,
      'handed-here': 4,
      'still-to-hand': 0,
      'who-waits': '',
      'who-is-served': 'my-sister=4',
      'who-owes': 'my-sister=1',
      'paid-in-all': 45,
    });
    expect(valuesOf(flock(), ['who-is-meant'], [asked('the mayor')])).toEqual({ 'who-is-meant': 'all' });
  });
});

describe('money owed', () => {
  test('is at the price set, else at what others paid, else not known', () => {
    expect(valuesOf(flock(), ['birds-unpaid', 'share-price', 'owed'])).toEqual({
      'birds-unpaid': 3,
      'share-price': 15,
      owed: 45,
    });
    const settings = { 'bird-price': setTo('bird-price', 17.5) };
    expect(valuesOf(flock({ settings }), ['owed'])).toEqual({ owed: 52.5 });
    const unpaid = flock({ shares: [share('Jo', 'handed', 2)] });
    expect(valuesOf(unpaid, ['owed', 'price-is-known'])).toEqual({ owed: null, 'price-is-known': 'no' });
  });

  test('is nothing where all is paid, whatever a bird costs', () => {
    expect(valuesOf(flock({ shares: [share('Jo', 'promised', 2)] }), ['owed'])).toEqual({ owed: 0 });
  });
});

describe('birds free to promise', () => {
  const counts = ['birds-to-count-on', 'promised', 'free-birds', 'short-of-promises'];
  const processed = (count: number) =>
    group({ boxed: 12, processed: [{ on: '2026-05-07', line: 4, count, dressed: 24 }] });

  test('are those in the freezer less what is promised', () => {
    expect(valuesOf(flock({ groups: [processed(12)] }), counts)).toEqual({
      'birds-to-count-on': 6,
      promised: 6,
      'free-birds': 0,
      'short-of-promises': 0,
    });
  });

  test('count birds alive only as far as the usual losses leave them with the wanted certainty', () => {
    // Fifty chicks a week old with 6 % still to be lost: 44 of them live to the end with nine chances in ten.
    const state = flock({ groups: [group()] });
    const workings = workOut(state);
    const loss = Number(workings.step('loss-to-come', 'whites').value);
    expect(loss).toBeGreaterThan(0.04);
    expect(loss).toBeLessThan(0.08);
    const { 'birds-to-count-on': counted } = valuesOf(state, counts);
    expect(Number(counted)).toBeLessThan(50 * (1 - loss));
    expect(Number(counted)).toBeGreaterThan(42);
  });

  test('leave out those kept back', () => {
    const kept = group({ kept: [{ on: '2026-05-03', line: 9, count: 45, until: null }] });
    expect(Number(valuesOf(flock({ groups: [kept] }), counts)['birds-to-count-on'])).toBeLessThanOrEqual(5);
  });
});
