import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type HeatedSpot, ownWarming, powerFor } from '../../../../engine/facts/sums/heat-balance.ts';

const spots: fc.Arbitrary<HeatedSpot> = fc.record({
  gap: fc.double({ min: 0, max: 60, noNaN: true }),
  ownHeat: fc.double({ min: 0, max: 500, noNaN: true }),
  boxLoss: fc.double({ min: 1, max: 200, noNaN: true }),
  onSpot: fc.double({ min: 0.05, max: 1, noNaN: true }),
  spotLoss: fc.double({ min: 0.5, max: 50, noNaN: true }),
});

test('the power closes the gap exactly: box and spot put together again give it back', () => {
  fc.assert(
    fc.property(spots, (spot) => {
      const power = powerFor(spot);
      const warmed = (spot.ownHeat + power) / spot.boxLoss + (power * spot.onSpot) / spot.spotLoss;
      if (power > 0) expect(warmed).toBeCloseTo(spot.gap, 6);
      else expect(warmed).toBeGreaterThanOrEqual(spot.gap - 1e-9);
    }),
  );
});

test('in round numbers: 30 degrees, 100 watts of their own, 20 W a degree from the box and 2 from the spot', () => {
  const spot = { gap: 30, ownHeat: 100, boxLoss: 20, onSpot: 0.4, spotLoss: 2 };
  expect(ownWarming(spot)).toBe(5);
  // 25 degrees are left, and each watt gives 1/20 + 0.4/2 = 0.25 of a degree.
  expect(powerFor(spot)).toBeCloseTo(100, 10);
});

test('bodies that warm the box by themselves want no power', () => {
  expect(powerFor({ gap: 5, ownHeat: 100, boxLoss: 20, onSpot: 0.4, spotLoss: 2 })).toBe(0);
});

test('a wider gap never wants less, more heat of their own never more', () => {
  fc.assert(
    fc.property(spots, fc.double({ min: 0, max: 40, noNaN: true }), (spot, more) => {
      expect(powerFor({ ...spot, gap: spot.gap + more })).toBeGreaterThanOrEqual(powerFor(spot));
      expect(powerFor({ ...spot, ownHeat: spot.ownHeat + more })).toBeLessThanOrEqual(powerFor(spot));
      expect(powerFor({ ...spot, boxLoss: spot.boxLoss + more })).toBeGreaterThanOrEqual(powerFor(spot));
    }),
  );
});
