/** Weather of days as a plain state has it: only what is told, the rest not on record. */
import type { Day } from '../../engine/day.ts';
import type { WeatherDay } from '../../engine/types.ts';

/** °C, mm, m/s and a ratio. */
export type Told = Partial<Record<'low' | 'high' | 'rain' | 'wind' | 'humidity', number>>;

/** The line of every value is the day of the month, so that entries can be told apart. */
export const weatherOf = (days: Readonly<Record<Day, Told>>): Readonly<Record<Day, WeatherDay>> =>
  Object.fromEntries(
    Object.entries(days).map(([on, told]) => {
      const noted = (value: number | undefined) =>
        value === undefined ? null : { on, line: Number(on.slice(8)), value };
      const { low, high, rain, wind, humidity } = told;
      const day: WeatherDay = {
        on,
        low: noted(low),
        high: noted(high),
        rain: noted(rain),
        wind: noted(wind),
        humidity: noted(humidity),
      };
      return [on, day];
    }),
  );
