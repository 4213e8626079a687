/** Days, hours and the moment at which an entry was written. */
import { isDay } from '../../day.ts';
import { type ReadField, wrong, wrongType } from './field.ts';

const STAMP = /^(\d{4}-\d{2}-\d{2})T\d{2}:\d{2}(?::\d{2}(?:\.\d+)?)?(?:Z|[+-]\d{2}:\d{2})$/;

export const readDay: ReadField = (value, field, around) => {
  if (typeof value !== 'string') return wrongType(field, around, 'day');
  return isDay(value) ? { value } : wrong('bad-day', field.name, { found: value, wants: 'day' });
};

/** Reads an hour of the day, `HH:MM`. */
export const readHour: ReadField = (value, field, around) => {
  if (typeof value !== 'string') return wrongType(field, around, 'hour');
  if (/^(?:[01]\d|2[0-3]):[0-5]\d$/.test(value)) return { value };
  return wrong('bad-time', field.name, { found: value, wants: 'hour' });
};

/** Reads a local date and time with its offset, such as `2026-05-02T07:12:00-04:00`. */
export const readStamp: ReadField = (value, field, around) => {
  if (typeof value !== 'string') return wrongType(field, around, 'stamp');
  const day = STAMP.exec(value)?.[1];
  if (day !== undefined && isDay(day) && !Number.isNaN(Date.parse(value))) return { value };
  return wrong('bad-time', field.name, { found: value, wants: 'stamp' });
};
