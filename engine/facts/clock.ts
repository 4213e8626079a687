/** Hour arithmetic on local days and times written as `2026-05-16T07:00`; a day has 24 hours here, whatever summer time does. */
import { addDays, type Day, daysBetween } from '../day.ts';

const hoursInDay = 24;
const minutesInHour = 60;

/** Hours since midnight, `07:30` being 7.5. */
const hoursIn = (clock: string): number => {
  const [hours = 0, minutes = 0] = clock.split(':').map(Number);
  return hours + minutes / minutesInHour;
};

/** The day and time so many hours (also below zero or past a day) after the midnight that begins a day; minutes are rounded. */
export const timeOn = (day: Day, hours: number): string => {
  const minutes = Math.round(hours * minutesInHour);
  const days = Math.floor(minutes / (hoursInDay * minutesInHour));
  const rest = minutes - days * hoursInDay * minutesInHour;
  const two = (part: number): string => String(part).padStart(2, '0');
  return `${addDays(day, days)}T${two(Math.floor(rest / minutesInHour))}:${two(rest % minutesInHour)}`;
};

/** The day and time so many hours later; below zero for earlier. */
export const addHours = (time: string, hours: number): string =>
  timeOn(time.slice(0, 10), hoursIn(time.slice(11)) + hours);

/** Hours from one time to another; below zero when they are in the other order. */
export const hoursBetween = (earlier: string, later: string): number =>
  daysBetween(earlier.slice(0, 10), later.slice(0, 10)) * hoursInDay +
  hoursIn(later.slice(11)) -
  hoursIn(earlier.slice(11));
