/** Dates as an iCalendar file (RFC 5545): lines of at most 75 octets, each ended by CR and LF. */
import { addDays } from '../../engine/day.ts';

/** One entry of a calendar. Times are local and floating: the hour on the keeper's own clock, wherever that is. */
export interface CalendarEvent {
  /** Stays the same for the same date of the same group, so that a newer file moves it instead of adding another. */
  readonly id: string;
  readonly summary: string;
  readonly description: string;
  /** A day, or a day and time, `2026-05-16T07:00`. */
  readonly at: string;
  /** Minutes before it at which to remind; null for not at all. */
  readonly remind: number | null;
}

export interface CalendarMeta {
  /** When the file is made, UTC, `2026-05-14T10:00:00.000Z`. */
  readonly made: string;
  /** Grows with every change of what the dates rest on. */
  readonly sequence: number;
}

const mostOctets = 75;

/** Backslashes, semicolons, commas and line ends stand for themselves only behind a backslash (RFC 5545, 3.3.11). */
const escapeText = (text: string): string =>
  text.replace(/[\\;,]/g, (mark) => `\\${mark}`).replace(/\r\n|\r|\n/g, '\\n');

const octets = (text: string): number => new TextEncoder().encode(text).length;

/** A long line goes on behind a line end and a space; a character is never cut (RFC 5545, 3.1). */
export const foldLine = (line: string): string => {
  const pieces: string[] = [];
  let piece = '';
  for (const character of line) {
    if (octets(piece + character) > mostOctets) {
      pieces.push(piece);
      piece = ' ';
    }
    piece += character;
  }
  return [...pieces, piece].join('\r\n');
};

const digits = (text: string): string => text.replace(/[-:]/g, '');

const startOf = (at: string): readonly string[] =>
  at.includes('T')
    ? [`DTSTART:${digits(at)}00`]
    : [`DTSTART;VALUE=DATE:${digits(at)}`, `DTEND;VALUE=DATE:${digits(addDays(at, 1))}`];

const alarmOf = ({ remind, summary }: CalendarEvent): readonly string[] =>
  remind === null
    ? []
    : [
        'BEGIN:VALARM',
        'ACTION:DISPLAY',
        `DESCRIPTION:${escapeText(summary)}`,
        `TRIGGER:-PT${Math.round(remind)}M`,
        'END:VALARM',
      ];

const linesOf = (event: CalendarEvent, { made, sequence }: CalendarMeta): readonly string[] => [
  'BEGIN:VEVENT',
  `UID:${escapeText(event.id)}`,
  `DTSTAMP:${digits(made).replace(/\.\d+/, '')}`,
  `SEQUENCE:${sequence}`,
  ...startOf(event.at),
  `SUMMARY:${escapeText(event.summary)}`,
  `DESCRIPTION:${escapeText(event.description)}`,
  'TRANSP:TRANSPARENT',
  ...alarmOf(event),
  'END:VEVENT',
];

/** How every such file begins. */
export const calendarBegins = 'BEGIN:VCALENDAR\r\n';

/** The text of the file. */
export const sayCalendar = (events: readonly CalendarEvent[], meta: CalendarMeta): string =>
  [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//penside//key dates//EN',
    'CALSCALE:GREGORIAN',
    ...events.flatMap((event) => linesOf(event, meta)),
    'END:VCALENDAR',
  ]
    .map((line) => `${foldLine(line)}\r\n`)
    .join('');
