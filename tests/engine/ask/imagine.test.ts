/** Questions about birds that have not come: as many as are named, ready on the day they are asked about. */
import { describe, expect, test } from 'vitest';
import type { Answer, Supposition } from '../../../engine/types.ts';
import { ask, flockOf, partOf } from '../../helpers/flock-of.ts';

const today = '2026-03-01';
const pound = 0.45359237;
const told = (fact: string, value: number | string): Supposition => ({
  what: { fact },
  value,
  adds: false,
});
const resultsOf = (answer: Answer): Readonly<Record<string, unknown>> =>
  Object.fromEntries(answer.results.map(({ id, value }) => [id, value]));
const assumedIn = (answer: Answer): readonly string[] => answer.assumed.map(({ id }) => id);

describe('with nothing on record', () => {
  test('ice and hours are told for the birds named, and no day is', async () => {
    const answer = await ask(flockOf(), 'process-day', today, {
      supposing: [told('birds-told', 30), told('asks-ice', 'yes')],
    });
    const results = resultsOf(answer);
    expect(partOf(answer).rule).toBe('process-day/how-much-ice');
    expect(Math.round(Number(results.ice) / pound)).toBe(150);
    expect(Number(results.hours) * 24).toBeCloseTo(5, 9);
    expect([results['feed-off'], results.finish]).toEqual([undefined, undefined]);
    expect(assumedIn(answer)).toEqual(
      expect.arrayContaining(['chicks-of-the-fast-kind', 'usual-carcass', 'no-hot-process-day']),
    );
  });

  test('the clock is told in hours, and by the clock once a day is named', async () => {
    const undated = await ask(flockOf(), 'process-day', today, { supposing: [told('birds-told', 30)] });
    expect([partOf(undated).verdict, partOf(undated).rule]).toEqual(['list', 'process-day/clock-undated']);
    const dated = await ask(flockOf(), 'process-day', today, {
      supposing: [told('birds-told', 30), told('process-date', '2026-06-14')],
    });
    expect(partOf(dated).rule).toBe('process-day/clock');
    expect(resultsOf(dated)).toMatchObject({ 'feed-off': '2026-06-13T22:00', finish: '2026-06-14T13:00' });
    // The day is taken to be the one on which they are ready, so that they weigh the same.
    expect(resultsOf(dated).ice).toBe(resultsOf(undated).ice);
  });

  test.each([
    ['fast', 54],
    ['slow', 88],
  ])('%s birds give the wanted carcass at %i days', async (kind, age) => {
    const answer = await ask(flockOf(), 'meat-yield', today, {
      supposing: [told('birds-told', 30), told('order-kind', kind)],
    });
    const part = partOf(answer);
    expect([part.group, part.rule]).toEqual(['birds to come', 'meat-yield/of-birds-to-come']);
    expect(part.headline?.values['yield-age']?.value).toBe(age);
    const total = Number(resultsOf(answer).total) / pound;
    expect(total >= 135 && total < 140).toBe(true);
  });

  test('no line of the records is claimed to tell of them', async () => {
    const answer = await ask(flockOf(), 'meat-yield', today, { supposing: [told('birds-told', 30)] });
    expect(answer.workings.flatMap(({ entries }) => entries)).toEqual([]);
  });

  test('chicks that are bought and have not come stand for the number', async () => {
    const flock = flockOf({ kind: 'buy', on: today, what: 'chicks', count: 31, price: '96.00' });
    const answer = await ask(flock, 'meat-yield', today);
    expect(partOf(answer).headline?.values['meat-birds']?.value).toBe(28);
  });
});

const came = {
  kind: 'arrive',
  on: '2026-05-02',
  group: 'whites',
  count: 20,
  bird: 'fast',
  hatched: '2026-05-01',
};
const gone = { kind: 'process', on: '2026-06-24', group: 'whites', count: 20, dressed: '90 lb' };

test('birds that are here are asked about themselves', async () => {
  const answer = await ask(flockOf(came), 'meat-yield', '2026-06-01');
  expect(partOf(answer).group).toBe('whites');
});

test('when all are gone, a number named is of birds to come, and none named is of those that were', async () => {
  const flock = flockOf(came, gone);
  const named = await ask(flock, 'meat-yield', '2026-08-01', { supposing: [told('birds-told', 30)] });
  expect(partOf(named).group).toBe('birds to come');
  const plain = await ask(flock, 'meat-yield', '2026-08-01');
  expect([partOf(plain).group, partOf(plain).rule]).toEqual(['whites', 'meat-yield/nobody']);
});
