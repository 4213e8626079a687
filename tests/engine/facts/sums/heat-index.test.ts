/** Wet bulb, heat index and moving air; published values stand in tests/published/weather.test.ts. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  airSpeedRange,
  heatIndex,
  intoWetBulbRange,
  movingAirFactor,
  wetBulb,
  wetBulbRange,
} from '../../../../engine/facts/sums/heat-index.ts';

const mild = fc.double({ min: 15, max: 50, noNaN: true });
const damp = fc.double({ min: 0.05, max: 0.99, noNaN: true });
const more = fc.double({ min: 0.01, max: 5, noNaN: true });

describe('the wet bulb', () => {
  test('rises with the air, and in warm air with the humidity', () => {
    fc.assert(
      fc.property(mild, damp, more, (air, humidity, warmer) => {
        expect(wetBulb(air + warmer, humidity)).toBeGreaterThan(wetBulb(air, humidity));
        const damper = Math.min(0.99, humidity + warmer / 10);
        expect(wetBulb(air, damper)).toBeGreaterThanOrEqual(wetBulb(air, humidity));
      }),
    );
  });

  test('is no more above the air than the formula may err', () => {
    fc.assert(
      fc.property(mild, damp, (air, humidity) => {
        expect(wetBulb(air, humidity)).toBeLessThan(air + 0.65);
      }),
    );
  });

  test('is worked out at the nearest air and humidity that the formula holds for', () => {
    expect(intoWetBulbRange(-30, 0)).toEqual([wetBulbRange.air[0], wetBulbRange.humidity[0]]);
    expect(intoWetBulbRange(60, 1)).toEqual([wetBulbRange.air[1], wetBulbRange.humidity[1]]);
    expect(intoWetBulbRange(30, 0.5)).toEqual([30, 0.5]);
  });
});

test('the index weighs the dry bulb 0.85 and the wet bulb 0.15', () => {
  expect(heatIndex(30, 20)).toBeCloseTo(28.5, 12);
  expect(heatIndex(25, 25)).toBeCloseTo(25, 12);
});

test('moving air eases, within the speeds that were measured and no further', () => {
  const [slowest, fastest] = airSpeedRange;
  expect(movingAirFactor(0)).toBe(movingAirFactor(slowest));
  expect(movingAirFactor(10)).toBe(movingAirFactor(fastest));
  expect(movingAirFactor(1)).toBe(1);
  fc.assert(
    fc.property(fc.double({ min: 0, max: 30, noNaN: true }), more, (speed, faster) => {
      expect(movingAirFactor(speed + faster)).toBeLessThanOrEqual(movingAirFactor(speed));
    }),
  );
});
