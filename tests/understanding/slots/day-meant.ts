/** Which day the words of a label mean, read apart from the program so that the one can be held against the other. */
import { addDays, type Day, isDay, weekdayOf } from '../../../engine/day.ts';

const weekdays = ['sun', 'mon', 'tue', 'wed', 'thu', 'fri', 'sat'];
const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];

/** Words that mean no single day. */
const vague =
  /week|month|weekend|between|\bto\b|until|from .* (?:to|until)|quarter|nights$|next (?:three|few)|\band\b|\bor\b|christmas|year|end of|seven nights|fortnight|the day (?:we|they|i)/;

const dated = (year: string, month: number, date: number): readonly Day[] =>
  [month].flatMap((each) => {
    const day = `${year}-${String(each).padStart(2, '0')}-${String(date).padStart(2, '0')}`;
    return isDay(day) ? [day] : [];
  });

/** A date without a month: this month's, or where it has not come yet last month's too. */
const ordinal = (today: Day, date: number): readonly Day[] => {
  const year = today.slice(0, 4);
  const month = Number(today.slice(5, 7));
  return [
    ...dated(year, month, date),
    ...(date > Number(today.slice(8)) ? dated(year, month - 1, date) : []),
  ];
};

/** The days that the words may mean; null where they mean none for certain. Words that name only an hour mean today. */
export const daysMeant = (label: unknown, today: Day): ReadonlySet<Day> | null => {
  if (typeof label !== 'string') return null;
  const words = label
    .toLowerCase()
    .replace(/nite|\bnt\b|nicht/g, 'night')
    .replace(/\byest(?:erday|'day)?\b|\byday\b|\byestreen\b/g, 'yesterday');
  const away = (...days: readonly number[]): ReadonlySet<Day> =>
    new Set(days.map((days) => addDays(today, days)));
  if (/before yesterday|night before last|day afore yesterday/.test(words)) return away(-2);
  const ago = /(\d+|two|three|four|five) (?:days?|nights?) (?:ago|back|since)/.exec(words)?.[1];
  if (ago !== undefined) return away(-({ two: 2, three: 3, four: 4, five: 5 }[ago] ?? Number(ago)));
  if (/yesterday|last (?:night|evening)/.test(words)) return away(-1);
  if (/overnight|(?:in|during|through) the night|all night/.test(words)) return away(-1, 0);
  if (/\bthe morn(?:'s)?\b|tomorrow|tomorow|\btmrw|\btmr/.test(words)) return away(1);
  if (/mother'?s day/.test(words)) return new Set([`${today.slice(0, 4)}-05-10`]);
  const named = months.findIndex((month) => new RegExp(`\\b${month}[a-z]*\\b`).test(words));
  const date = /\b(\d{1,2})(?:st|nd|rd|th)?\b(?!:)/.exec(words)?.[1];
  if (named >= 0 && date !== undefined) return new Set(dated(today.slice(0, 4), named + 1, Number(date)));
  const slashed = /\b(\d{1,2})\/(\d{1,2})\b/.exec(words);
  if (slashed !== null) return new Set(dated(today.slice(0, 4), Number(slashed[1]), Number(slashed[2])));
  if (vague.test(words) || named >= 0) return null;
  const weekday = weekdays.findIndex((day) =>
    new RegExp(`\\b${day}(?:s|[a-z]*day|rs|r|nes)?\\b`).test(words),
  );
  if (weekday >= 0) {
    const back = (weekdayOf(today) - weekday + 7) % 7;
    return back === 0 ? away(0, -7, 7) : away(-back, 7 - back);
  }
  const th = /\b(\d{1,2})(?:st|nd|rd|th)\b/.exec(words)?.[1];
  if (th !== undefined) return new Set(ordinal(today, Number(th)));
  return away(0);
};
