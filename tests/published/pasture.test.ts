/** Ground and nitrogen of a moved pen: plain arithmetic, with nitrogen of a bird from memory (ASABE D384.2) and as worked out. */
import { expect, test } from 'vitest';
import { addDays } from '../../engine/day.ts';
import type { Supposition } from '../../engine/types.ts';
import { out, setting } from '../helpers/ground-of.ts';
import { group, stateOf } from '../helpers/state-of.ts';
import { workOut } from '../helpers/work-out.ts';

const squareFoot = 0.09290304;
const acre = 43_560;
const poundsAnAcre = 1.120851156194456;
const pound = 0.45359237;

/** Fifty birds that come out at three weeks and are ready after 35 days of one move each; slow ones, so that it stays at one. */
const hatched = '2026-05-01';
const on = addDays(hatched, 21);
const flock = stateOf({
  on,
  groups: [group({ kind: 'slow', hatched, arrived: hatched, whereabouts: [out(on)] })],
  settings: { pen: setting('pen', 75 * squareFoot) },
});
const worked = (nitrogen?: number) => {
  const supposing: Supposition[] = [
    { what: { fact: 'ready-on' }, value: addDays(on, 35), adds: false },
    ...(nitrogen === undefined
      ? []
      : [{ what: { figure: 'pasture/nitrogen-per-bird' }, value: nitrogen * pound, adds: false }]),
  ];
  const workings = workOut(flock, on, supposing);
  return (fact: string): number => Number(workings.step(fact, 'whites').value);
};

test('50 birds at 1.5 ft² (CIAS Research Brief 57) moved daily for 35 days go over 2,625 ft², or 0.0603 acre', () => {
  const value = worked();
  expect(value('pen-room') / squareFoot).toBeCloseTo(1.5, 9);
  const land = (value('ground-had') + value('ground-needed')) / squareFoot;
  expect(land).toBeCloseTo(2625, 6);
  expect(Math.abs(land / acre - 0.0603)).toBeLessThan(0.0001);
});

test('they leave 99.6 lb an acre at 0.12 lb a bird, which is from memory', () => {
  expect(Math.abs(worked(0.12)('nitrogen-load') / poundsAnAcre - 99.6)).toBeLessThan(0.2);
});

test('they leave 165.9 lb an acre at 0.20 lb a bird, which is worked out and what the rulebook has', () => {
  expect(Math.abs(worked()('nitrogen-load') / poundsAnAcre - 165.9)).toBeLessThan(0.2);
});
