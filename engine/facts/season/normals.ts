/** How cold nights and how hot days usually are through the year: the keeper's own months, else those of a temperate place. */
import type { Day } from '../../day.ts';
import { defineFact, type Reader } from '../define.ts';
import { settingNumber } from '../setting.ts';

const midMonth = 15;
const monthLength = 30.4;

const measures = {
  'usual-nights': { setting: 'low', figure: 'season/usual-nights' },
  'usual-days': { setting: 'high', figure: 'season/usual-days' },
} as const;

type Measure = keyof typeof measures;

/** Figures that `normalsOf` reads; a fact that uses it declares them. */
export const normalFigures = ['season/usual-nights', 'season/usual-days', 'season/month-number'];

/** The names of the months in their order. The fact declares `season/month-number`. */
const monthsOf = (read: Reader): readonly string[] => read.namesOf('season/month-number');

/** What a month has been told to be, °C. */
const toldOf = (read: Reader, measure: Measure, month: string): number | undefined =>
  settingNumber(read, `${measures[measure].setting}-${month}`);

/** The months that have been told. */
const monthsTold = (read: Reader, measure: Measure): readonly string[] =>
  monthsOf(read).filter((name) => toldOf(read, measure, name) !== undefined);

/** For which months the keeper has told their nights and days; the others go by the table, said aloud. */
export const normalFacts = [
  defineFact({
    id: 'usual-nights',
    unit: null,
    per: 'flock',
    figures: ['season/month-number'],
    compute: (read) => {
      const told = monthsTold(read, 'usual-nights');
      if (told.length < monthsOf(read).length) read.assume('usual-nights');
      return told.join(', ') || 'none';
    },
  }),
  defineFact({
    id: 'usual-days',
    unit: null,
    per: 'flock',
    figures: ['season/month-number'],
    compute: (read) => {
      const told = monthsTold(read, 'usual-days');
      if (told.length < monthsOf(read).length) read.assume('usual-days');
      return told.join(', ') || 'none';
    },
  }),
];

/**
 * The usual night low (`usual-nights`) or day high (`usual-days`) of a date, °C, on a straight line between the middles
 * of two months. The fact needs the one it asks for, so that what is taken for granted is said, and `normalFigures`.
 */
export const normalsOf = (read: Reader, measure: Measure): ((day: Day) => number) => {
  const usual = read.along(measures[measure].figure);
  const months = monthsOf(read).map((name, index) => toldOf(read, measure, name) ?? usual(index + 1));
  const of = (month: number): number => months[(month + months.length) % months.length] ?? 0;
  return (day) => {
    const month = Number(day.slice(5, 7)) - 1;
    const past = (Number(day.slice(8)) - midMonth) / monthLength;
    const other = past < 0 ? of(month - 1) : of(month + 1);
    return of(month) + Math.abs(past) * (other - of(month));
  };
};
