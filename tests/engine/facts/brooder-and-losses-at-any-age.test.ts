/** Whatever stands in the ledger, the facts of brooder, room, troughs, losses and headcount come out as numbers, or as unknown. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addDays } from '../../../engine/day.ts';
import { brooderFacts } from '../../../engine/facts/brooder.ts';
import { brooderBalanceFacts } from '../../../engine/facts/brooder-balance.ts';
import { brooderFloorFacts } from '../../../engine/facts/brooder-floor.ts';
import { brooderLampFacts } from '../../../engine/facts/brooder-lamps.ts';
import { brooderSetupFacts } from '../../../engine/facts/brooder-setup.ts';
import { chicksToComeFacts } from '../../../engine/facts/chicks-to-come.ts';
import { headcountFacts } from '../../../engine/facts/headcount.ts';
import { lossFacts } from '../../../engine/facts/losses.ts';
import { roomFacts } from '../../../engine/facts/room.ts';
import { troughFacts } from '../../../engine/facts/trough.ts';
import { usualLossFacts } from '../../../engine/facts/usual-losses.ts';
import { group, stateOf } from '../../helpers/state-of.ts';
import { workOut } from '../../helpers/work-out.ts';

const facts = [
  ...brooderFacts,
  ...brooderFloorFacts,
  ...brooderBalanceFacts,
  ...brooderLampFacts,
  ...brooderSetupFacts,
  ...chicksToComeFacts,
  ...roomFacts,
  ...troughFacts,
  ...headcountFacts,
  ...lossFacts,
  ...usualLossFacts,
];

/** Units of values that are texts. */
const wordUnits = ['date', 'date-time', 'named'];

const flocks = fc.record({
  age: fc.integer({ min: -10, max: 400 }),
  boxed: fc.nat(400),
  dead: fc.nat(20),
  lost: fc.nat(450),
  processed: fc.nat(400),
  lostAt: fc.nat(60),
  kind: fc.constantFrom('fast', 'medium', 'slow', 'constructor', ''),
  low: fc.integer({ min: -40, max: 45 }),
});

test('from before the hatch to birds of a year', () => {
  fc.assert(
    fc.property(flocks, ({ age, boxed, dead, lost, processed, lostAt, kind, low }) => {
      const on = addDays('2026-05-01', age);
      const whites = group({
        kind,
        boxed,
        dead: Math.min(dead, boxed),
        losses: [{ on: addDays('2026-05-02', lostAt), line: 2, count: lost, cause: 'unknown' }],
        processed: [{ on: '2026-06-20', line: 3, count: processed, dressed: null }],
      });
      const weather = {
        [on]: { on, low: { on, line: 4, value: low }, high: null, rain: null, wind: null, humidity: null },
      };
      const settings = Object.fromEntries(
        [
          ['pen', 10],
          ['brooder', 3],
          ['feeder-length', 1],
          ['drinkers', 2],
        ].map(([what, value]) => [
          what,
          [{ what: String(what), value: Number(value), on: '2026-05-01', line: 9, size: null, said: '' }],
        ]),
      );
      const workings = workOut(stateOf({ on, groups: [whites], weather, settings }));
      for (const { id, unit } of facts) {
        const { value } = workings.step(id, 'whites');
        if (value === null || unit === null || wordUnits.includes(unit)) continue;
        expect(Number.isFinite(value), id).toBe(true);
        if (
          unit === 'ratio' &&
          id !== 'loss-exposure' &&
          id !== 'lamp-strength' &&
          id !== 'loss-share' &&
          id !== 'share-first-week'
        ) {
          expect(value, id).toBeGreaterThanOrEqual(0);
          expect(value, id).toBeLessThanOrEqual(1);
        }
      }
    }),
    { numRuns: 150 },
  );
});
