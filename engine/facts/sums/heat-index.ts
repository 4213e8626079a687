/** Wet bulb, temperature-humidity index and what moving air makes of it. Temperatures in °C, humidity 0..1, air speed in m/s. */

/** Where Stull's formula holds: air in °C, relative humidity as a ratio. Made for sea level. */
export const wetBulbRange = { air: [-20, 50], humidity: [0.05, 0.99] } as const;

/** Air speeds for which the velocity index was measured, m/s. */
export const airSpeedRange = [0.2, 1.2] as const;

const within = ([least, most]: readonly [number, number], value: number): number =>
  Math.min(Math.max(value, least), most);

/** The nearest air and humidity for which the wet bulb can be worked out. */
export const intoWetBulbRange = (air: number, humidity: number): readonly [number, number] => [
  within(wetBulbRange.air, air),
  within(wetBulbRange.humidity, humidity),
];

/**
 * Wet-bulb temperature, °C, of air in `wetBulbRange`; within −1 °C to +0.65 °C of the true one.
 * Stull 2011, J. Appl. Meteor. Climatol. 50, 2267–2269, equation 1.
 */
export const wetBulb = (air: number, humidity: number): number => {
  const percent = humidity * 100;
  return (
    air * Math.atan(0.151977 * Math.sqrt(percent + 8.313659)) +
    Math.atan(air + percent) -
    Math.atan(percent - 1.676331) +
    0.00391838 * percent ** 1.5 * Math.atan(0.023101 * percent) -
    4.686035
  );
};

/** Temperature-humidity index, °C, from dry and wet bulb. Tao and Xin 2003, Trans. ASAE 46(2). */
export const heatIndex = (dry: number, wet: number): number => 0.85 * dry + 0.15 * wet;

/**
 * What the index is multiplied by in moving air; speeds outside of `airSpeedRange` count as its ends, since nothing
 * was measured beyond. Tao and Xin 2003.
 */
export const movingAirFactor = (speed: number): number => within(airSpeedRange, speed) ** -0.058;
