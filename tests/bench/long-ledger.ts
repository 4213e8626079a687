/** An invented ledger of any length: batch after batch through the years, ending with the flock of the demo. */
import { demoLedger } from '../../cli/demo/demo.ts';
import { addDays, type Day } from '../../engine/day.ts';

/** Days from one batch to the next, and how long each is fed. */
const batch = { every: 70, fed: 56, birds: 50, lost: 4 };

/** What is told of one day of a batch that is `age` days old; some five lines a day. */
const told = (name: string, arrived: Day, age: number): readonly object[] => {
  const on = addDays(arrived, age);
  const stamp = (time: string) => ({ by: 'Nell', written: `${on}T${time}:00+00:00` });
  const fed = (time: string) => ({
    kind: 'feed',
    on,
    group: name,
    amount: `${1 + Math.round(age / 4)} lb`,
    ration: age < 21 ? 'starter' : 'grower',
    ...stamp(time),
  });
  const lines: object[] = [
    fed('06:30'),
    { kind: 'weather', on, low: `${50 + (age % 9)} F`, high: `${70 + (age % 12)} F`, ...stamp('07:10') },
    fed('18:30'),
    { kind: 'sign', on, group: name, sign: 'drinking-less', ...stamp('19:00') },
  ];
  if (age === 0)
    lines.unshift({
      kind: 'arrive',
      on,
      group: name,
      bird: 'slow',
      count: batch.birds,
      hatched: addDays(on, -1),
      ...stamp('06:00'),
    });
  if (age === 24) lines.push({ kind: 'out', on, group: name, ...stamp('20:00') });
  if (age > 24) lines.push({ kind: 'move', on, group: name, ...stamp('08:00') });
  if (age % 14 === 9)
    lines.push({ kind: 'loss', on, group: name, count: 1, cause: 'unknown', ...stamp('20:10') });
  if (age % 14 === 13)
    lines.push({ kind: 'weigh', on, group: name, count: 5, mean: `${1 + age / 8} lb`, ...stamp('20:20') });
  return lines;
};

const batchTold = (name: string, arrived: Day): readonly object[] => {
  const gone = addDays(arrived, batch.fed);
  return [
    ...Array.from({ length: batch.fed }, (_, age) => told(name, arrived, age)).flat(),
    {
      kind: 'process',
      on: gone,
      group: name,
      count: batch.birds - batch.lost,
      written: `${gone}T18:00:00+00:00`,
    },
  ];
};

/** A night's weather, for the years before the first batch. */
const nightTold = (on: Day): object => ({
  kind: 'weather',
  on,
  low: '41 F',
  high: '58 F',
  by: 'Nell',
  written: `${on}T07:10:00+00:00`,
});

const textOf = (entries: readonly object[]): string =>
  entries.map((each) => `${JSON.stringify(each)}\n`).join('');

/**
 * The text of a ledger of so many lines, read on `today`: whole batches, nights before them, the demo at the end. The same
 * day and number always give the same text.
 */
export const longLedger = (today: Day, lines: number): string => {
  const demo = demoLedger(today);
  const most = lines - demo.trimEnd().split('\n').length;
  const one = batchTold('', today).length;
  const batches = Math.floor(most / one);
  const arrivals = Array.from({ length: batches }, (_, n) =>
    addDays(today, -40 - (batches - n) * batch.every),
  );
  const nights = most - batches * one;
  const first = arrivals[0] ?? addDays(today, -40);
  return [
    textOf(Array.from({ length: nights }, (_, n) => nightTold(addDays(first, n - nights)))),
    ...arrivals.map((arrived, n) => textOf(batchTold(`batch ${n + 1}`, arrived))),
    demo,
  ].join('');
};
