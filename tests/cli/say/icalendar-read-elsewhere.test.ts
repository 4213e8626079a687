/** The calendar as a second, independent reader has it: ts-ics, beside ical.js in icalendar.test.ts (RFC 5545). */
import { convertIcsCalendar } from 'ts-ics';
import { expect, test } from 'vitest';
import { type CalendarEvent, sayCalendar } from '../../../cli/say/icalendar.ts';
import { calendarOf } from '../../../cli/talk/calendar.ts';
import { openDemo } from '../../../cli/talk/open-flock.ts';
import { lexiconFor } from '../../helpers/learned.ts';
import { rulebook } from '../../helpers/rulebook-of.ts';

const made = '2026-05-14T10:00:00.000Z';
const event = (given: Partial<CalendarEvent>): CalendarEvent => ({
  id: 'whites.key-dates.feed-off@penside',
  summary: 'Take the feed away.',
  description: 'Rule key-dates/feed-off',
  at: '2026-06-03T22:00',
  remind: 60,
  ...given,
});

const read = (text: string) => convertIcsCalendar(undefined, text);

test('an hour, its reminder and what it is called come back whole', () => {
  const calendar = read(sayCalendar([event({})], { made, sequence: 7 }));
  expect(calendar).toEqual({
    version: '2.0',
    prodId: '-//penside//key dates//EN',
    events: [
      {
        uid: 'whites.key-dates.feed-off@penside',
        stamp: { date: new Date(made), type: 'DATE-TIME' },
        sequence: 7,
        // This reader takes an hour without a zone for one of UTC.
        start: { date: new Date('2026-06-03T22:00:00Z'), type: 'DATE-TIME' },
        summary: 'Take the feed away.',
        description: 'Rule key-dates/feed-off',
        timeTransparent: 'TRANSPARENT',
        alarms: [
          {
            action: 'DISPLAY',
            description: 'Take the feed away.',
            trigger: { type: 'relative', value: { before: true, minutes: 60 }, options: {} },
          },
        ],
      },
    ],
  });
});

test('a whole day stays a day, and long words with marks come back as they were', () => {
  const words = `Out to the pen; brooder, lamps \\ covers: ${'é🐔 '.repeat(40)}end`;
  const [day] =
    read(sayCalendar([event({ at: '2026-06-30', remind: null, summary: words })], { made, sequence: 1 }))
      .events ?? [];
  expect([day?.start, day?.summary, day?.alarms]).toEqual([
    { date: new Date('2026-06-30T00:00:00Z'), type: 'DATE' },
    words,
    undefined,
  ]);
});

test('the dates of a whole flock are all there, each under its own name', async () => {
  const { book } = rulebook();
  const flock = openDemo({ book, lexicon: lexiconFor(book), today: '2026-05-14', asOf: null });
  const { text, dates } = await calendarOf(flock, [], made);
  const events = read(text).events ?? [];
  expect([events.length, new Set(events.map(({ uid }) => uid)).size]).toEqual([dates, dates]);
  const alarmed = events.filter(({ alarms }) => alarms !== undefined).map(({ uid }) => uid);
  expect(alarmed).toContain('whites.key-dates.feed-off@penside');
  expect(alarmed).toContain('reds.key-dates.go-out@penside');
});
