/** How bad the day is in all, and the first day on which it turns as far as the forecast on record goes. */
import { addDays, type Day } from '../../day.ts';
import type { WeatherDay } from '../../types.ts';
import { defineFact, type Fact, type Reader } from '../define.ts';
import { settingNumber } from '../setting.ts';
import { coldLevelFigures, coldLevelOf, coldNeeds, coldWants } from './cold.ts';
import { forecastFigures, restOn } from './forecast-age.ts';
import { heatFigures, heatLevelOf, heatNeeds, heatWants } from './heat.ts';
import { type Level, levels, worse } from './level.ts';

const heatOn = (read: Reader, { high, humidity, wind }: WeatherDay): Level | undefined =>
  high === null
    ? undefined
    : heatLevelOf(read, { high: high.value, humidity: humidity?.value, wind: wind?.value });

const coldOn = (read: Reader, { low, rain, wind }: WeatherDay): Level | undefined => {
  const room = read.text('place') === 'brooder' ? settingNumber(read, 'room-temperature') : undefined;
  const coldest = room ?? low?.value;
  return coldest === undefined
    ? undefined
    : coldLevelOf(read, { low: coldest, rain: rain?.value ?? 0, wind: wind?.value ?? 0 });
};

const worst = (known: readonly (Level | undefined)[]): Level | undefined =>
  known.reduce((one, other) =>
    one === undefined || other === undefined ? (one ?? other) : worse(one, other),
  );

const levelIn = (read: Reader, fact: string): Level | undefined => {
  const value = read.maybe(fact);
  return levels.find((each) => each === value);
};

interface Turn {
  readonly on: Day;
  readonly level: Level;
}

/** Walks the coming days for as long as they say of heat and cold what is known of today. */
const nextTurn = (read: Reader): Turn | undefined => {
  const [heat, cold] = [levelIn(read, 'heat-level'), levelIn(read, 'cold-level')];
  const today = worst([heat, cold]);
  for (let ahead = 1; today !== undefined; ahead += 1) {
    const day = addDays(read.on, ahead);
    const weather = read.state.weather[day];
    if (weather === undefined) return undefined;
    const known = [
      ...(heat === undefined ? [] : [heatOn(read, weather)]),
      ...(cold === undefined ? [] : [coldOn(read, weather)]),
    ];
    const level = known.includes(undefined) ? undefined : worst(known);
    if (level === undefined) return undefined;
    if (level === today) continue;
    const { low, high, rain, wind, humidity } = weather;
    restOn(read, ...[low, high, rain, wind, humidity].flatMap((each) => each ?? []));
    return { on: day, level };
  }
  return undefined;
};

const turnFact = (id: string, unit: string | null, of: (turn: Turn) => string): Fact =>
  defineFact({
    id,
    unit,
    needs: [...new Set([...heatNeeds, ...coldNeeds, 'age'])],
    wants: ['heat-level', 'cold-level', ...heatWants, ...coldWants],
    figures: [...new Set([...heatFigures, ...coldLevelFigures, ...forecastFigures])],
    compute: (read) => {
      const turn = nextTurn(read);
      return turn === undefined ? undefined : of(turn);
    },
  });

export const outlookFacts = [
  defineFact({
    id: 'care-level',
    unit: null,
    wants: ['heat-level', 'cold-level'],
    compute: (read) => worst([levelIn(read, 'heat-level'), levelIn(read, 'cold-level')]),
  }),
  turnFact('care-turns-on', 'date', (turn) => turn.on),
  turnFact('care-turns-to', null, (turn) => turn.level),
];
