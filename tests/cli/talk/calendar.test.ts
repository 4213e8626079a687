import ICAL from 'ical.js';
import { expect, test } from 'vitest';
import { calendarOf } from '../../../cli/talk/calendar.ts';
import { openDemo } from '../../../cli/talk/open-flock.ts';
import { lexiconFor } from '../../helpers/learned.ts';
import { rulebook } from '../../helpers/rulebook-of.ts';

const { book } = rulebook();
const lexicon = lexiconFor(book);
const demo = (today: string) => openDemo({ book, lexicon, today, asOf: null });
const made = '2026-05-14T10:00:00.000Z';

const eventsOf = async (groups: readonly string[] = []) => {
  const { text, dates } = await calendarOf(demo('2026-05-14'), groups, made);
  const events = new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent');
  expect(events.length).toBe(dates);
  return events.map((component) => {
    const event = new ICAL.Event(component);
    return {
      uid: event.uid,
      start: event.startDate.toString(),
      alarms: component.getAllSubcomponents('valarm').length,
      description: event.description,
    };
  });
};

test('the dates of every group stand in it in order, each with the rule it comes from', async () => {
  const events = await eventsOf();
  expect(events.map(({ start }) => start)).toEqual(events.map(({ start }) => start).toSorted());
  expect(new Set(events.map(({ uid }) => uid)).size).toBe(events.length);
  expect(events.filter(({ description }) => !/Rule key-dates\/[a-z-]+: ./.test(description))).toEqual([]);
  const named = (group: string) => events.filter(({ uid }) => uid.startsWith(`${group}.`)).length;
  expect([named('whites') > 5, named('reds') > 5]).toEqual([true, true]);
});

test('feed off has its hour and reminds, as does the day out; the rest is silent', async () => {
  const events = await eventsOf();
  const find = (uid: string) => events.find((event) => event.uid === uid);
  expect(find('whites.key-dates.feed-off@penside')).toMatchObject({
    start: '2026-06-03T22:00:00',
    alarms: 1,
  });
  expect(find('reds.key-dates.go-out@penside')?.alarms).toBe(1);
  expect(find('whites.key-dates.window-closes@penside')).toMatchObject({ start: '2026-06-07', alarms: 0 });
});

test('one group can be had alone, and the same dates are called the same the day after', async () => {
  const whites = await eventsOf(['whites']);
  expect(whites.every(({ uid }) => uid.startsWith('whites.'))).toBe(true);
  const all = (await eventsOf()).map(({ uid }) => uid);
  expect(whites.every(({ uid }) => all.includes(uid))).toBe(true);
});
