/** How cold nights and how hot days usually are through the year: the keeper's own months, else those of a temperate place. */
import type { Day } from '../../day.ts';
import { defineFact, type Fact, type Reader } from '../define.ts';
import { settingNumber } from '../setting.ts';

const monthNames = [
  'january',
  'february',
  'march',
  'april',
  'may',
  'june',
  'july',
  'august',
  'september',
  'october',
  'november',
  'december',
];
const midMonth = 15;
const monthLength = 30.4;

/** The twelve months' values in °C, January first, as text: the one form in which a fact holds a row. */
const monthsFact = (id: string, setting: string, figure: string): Fact =>
  defineFact({
    id,
    unit: null,
    per: 'flock',
    figures: [figure],
    compute: (read) => {
      const usual = read.along(figure);
      const own = monthNames.map((name) => settingNumber(read, `${setting}-${name}`));
      if (own.some((value) => value === undefined)) read.assume(id);
      return own.map((value, index) => value ?? usual(index + 1)).join(' ');
    },
  });

export const normalFacts = [
  monthsFact('usual-nights', 'low', 'season/usual-nights'),
  monthsFact('usual-days', 'high', 'season/usual-days'),
];

/**
 * The usual night low (`usual-nights`) or day high (`usual-days`) of a date, °C, on a straight line between the middles
 * of two months. The fact needs the one it asks for.
 */
export const normalsOf = (read: Reader, fact: 'usual-nights' | 'usual-days'): ((day: Day) => number) => {
  const months = read.text(fact).split(' ').map(Number);
  const of = (month: number): number => months[(month + 12) % 12] ?? 0;
  return (day) => {
    const month = Number(day.slice(5, 7)) - 1;
    const past = (Number(day.slice(8)) - midMonth) / monthLength;
    const other = past < 0 ? of(month - 1) : of(month + 1);
    return of(month) + Math.abs(past) * (other - of(month));
  };
};
