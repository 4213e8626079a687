/** Days as text: real ones only, and sums that no clock change can shift. */
import { addDays as addDaysThere, differenceInCalendarDays, formatISO, isValid, parseISO } from 'date-fns';
import fc from 'fast-check';
import { afterEach, describe, expect, test } from 'vitest';
import { addDays, daysBetween, isDay, weekdayOf } from '../../engine/day.ts';

const ownZone = process.env.TZ;

afterEach(() => {
  if (ownZone === undefined) delete process.env.TZ;
  else process.env.TZ = ownZone;
});

/** Places that change their clocks: at midnight, in the southern summer, by half an hour, and by leaving out a whole day. */
const zones = [
  'UTC',
  'America/New_York',
  'America/Santiago',
  'Australia/Lord_Howe',
  'Asia/Beirut',
  'Pacific/Apia',
];

const goTo = (zone: string): void => {
  process.env.TZ = zone;
  // Otherwise all of these would pass without having left home.
  expect(new Intl.DateTimeFormat().resolvedOptions().timeZone).toBe(zone);
};

/** Days since 1970, reckoned in UTC, where no day is longer than another. */
const numberOf = (day: string): number => Date.parse(`${day}T00:00:00Z`) / 86_400_000;
const dayOf = (number: number): string => new Date(number * 86_400_000).toISOString().slice(0, 10);

const someDay = fc.integer({ min: numberOf('1990-01-01'), max: numberOf('2090-12-31') }).map(dayOf);

test.each([
  ['2026-05-14', true],
  ['2024-02-29', true],
  ['2026-02-29', false],
  ['2026-02-30', false],
  ['2026-13-01', false],
  ['2026-00-10', false],
  ['2026-5-14', false],
  ['2026-05-14T00:00:00', false],
  [' 2026-05-14', false],
  ['today', false],
  ['', false],
])('%j is a day: %j', (text, is) => {
  expect(isDay(text)).toBe(is);
});

test('days are those of date-fns', () => {
  fc.assert(
    fc.property(someDay, someDay, fc.integer({ min: -4000, max: 4000 }), (day, other, count) => {
      expect(addDays(day, count)).toBe(
        formatISO(addDaysThere(parseISO(day), count), { representation: 'date' }),
      );
      expect(daysBetween(day, other)).toBe(differenceInCalendarDays(parseISO(other), parseISO(day)));
      expect(weekdayOf(day)).toBe(parseISO(day).getDay());
    }),
  );
  const twoDigits = fc.integer({ min: 0, max: 33 }).map((number) => String(number).padStart(2, '0'));
  fc.assert(
    fc.property(fc.integer({ min: 1000, max: 2999 }), twoDigits, twoDigits, (year, month, day) => {
      const text = `${year}-${month}-${day}`;
      expect(isDay(text)).toBe(isValid(parseISO(text)));
    }),
  );
});

describe.each(zones)('in %s', (zone) => {
  test('days are added as on a calendar', () => {
    goTo(zone);
    fc.assert(
      fc.property(someDay, fc.integer({ min: -800, max: 800 }), (day, count) => {
        expect(addDays(day, count)).toBe(dayOf(numberOf(day) + count));
      }),
    );
  });

  test('days are counted as on a calendar', () => {
    goTo(zone);
    fc.assert(
      fc.property(someDay, someDay, (earlier, later) => {
        expect(daysBetween(earlier, later)).toBe(numberOf(later) - numberOf(earlier));
      }),
    );
  });

  test('the week goes round in seven days', () => {
    goTo(zone);
    fc.assert(
      // The first of January 1970 was a Thursday.
      fc.property(someDay, (day) => {
        expect(weekdayOf(day)).toBe((4 + numberOf(day)) % 7);
      }),
    );
  });
});
