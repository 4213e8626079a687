import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import { type CalendarEvent, foldLine, sayCalendar } from '../../../cli/say/icalendar.ts';

const meta = { made: '2026-05-14T10:00:00.000Z', sequence: 7 };
const event = (given: Partial<CalendarEvent> = {}): CalendarEvent => ({
  id: 'whites.key-dates.ready@penside',
  summary: 'The whites should be ready.',
  description: 'Rule key-dates/ready',
  at: '2026-06-04',
  remind: null,
  ...given,
});

const read = (text: string) =>
  new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map((each) => new ICAL.Event(each));

const octets = (text: string): number => new TextEncoder().encode(text).length;

describe('a calendar as text', () => {
  test('is as RFC 5545 has it, line by line', () => {
    expect(sayCalendar([event({ at: '2026-06-03T22:00', remind: 60 })], meta).split('\r\n')).toEqual([
      'BEGIN:VCALENDAR',
      'VERSION:2.0',
      'PRODID:-//penside//key dates//EN',
      'CALSCALE:GREGORIAN',
      'BEGIN:VEVENT',
      'UID:whites.key-dates.ready@penside',
      'DTSTAMP:20260514T100000Z',
      'SEQUENCE:7',
      'DTSTART:20260603T220000',
      'SUMMARY:The whites should be ready.',
      'DESCRIPTION:Rule key-dates/ready',
      'TRANSP:TRANSPARENT',
      'BEGIN:VALARM',
      'ACTION:DISPLAY',
      'DESCRIPTION:The whites should be ready.',
      'TRIGGER:-PT60M',
      'END:VALARM',
      'END:VEVENT',
      'END:VCALENDAR',
      '',
    ]);
  });

  test('gives a whole day its end on the next, also over the end of a month', () => {
    const [day] = read(sayCalendar([event({ at: '2026-06-30' })], meta));
    expect([day?.startDate.isDate, day?.startDate.toString(), day?.endDate.toString()]).toEqual([
      true,
      '2026-06-30',
      '2026-07-01',
    ]);
  });

  test('leaves an hour the hour of the place it is read at', () => {
    const [timed] = read(sayCalendar([event({ at: '2026-06-03T22:00' })], meta));
    expect([timed?.startDate.zone.tzid, timed?.startDate.toString()]).toEqual([
      'floating',
      '2026-06-03T22:00:00',
    ]);
  });

  test('with nothing in it is still a calendar', () => {
    expect(read(sayCalendar([], meta))).toEqual([]);
  });

  test('gives any words back as they were, in lines of 75 octets at most', () => {
    const words = fc.oneof(
      fc.string({ unit: 'grapheme', maxLength: 300 }),
      fc.constantFrom('a;b,c\\d\ne', 'é'.repeat(200)),
    );
    fc.assert(
      fc.property(words, words, (said, more) => {
        // Control characters are cleaned away before anything is said; line ends of every kind come back as one.
        const plain = (text: string): string => text.replace(/(?!\n)\p{Cc}/gu, '');
        const [summary, description] = [plain(said), plain(more)];
        const text = sayCalendar([event({ summary, description })], meta);
        const [back] = read(text);
        expect([back?.summary, back?.description]).toEqual([summary, description]);
        expect(text.split('\r\n').filter((line) => octets(line) > 75)).toEqual([]);
      }),
    );
  });
});

test('a line is folded between characters, never inside one', () => {
  const line = `SUMMARY:${'🐔'.repeat(40)}`;
  const folded = foldLine(line).split('\r\n');
  expect(folded.length).toBeGreaterThan(2);
  expect(folded.map((each, at) => (at === 0 ? each : each.slice(1))).join('')).toBe(line);
  expect(folded.every((each) => octets(each) <= 75 && !each.includes('\ufffd'))).toBe(true);
});
