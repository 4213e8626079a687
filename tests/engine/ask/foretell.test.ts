import { expect, test } from 'vitest';
import { ask, flockOf, partOf } from '../../helpers/flock-of.ts';

const engine = flockOf(
  { kind: 'setting', on: '2026-05-01', what: 'pen', value: '10 ft x 12 ft' },
  { kind: 'setting', on: '2026-05-01', what: 'pen-cover', value: 'yes' },
  {
    kind: 'arrive',
    on: '2026-05-02',
    group: 'whites',
    bird: 'fast',
    count: 30,
    dead: 0,
    hatched: '2026-05-01',
  },
  { kind: 'weather', on: '2026-05-10', low: '60 F', high: '80 F', forecast: true },
);

const outDay = async (on: string) => {
  const part = partOf(await ask(engine, 'key-dates', on));
  return part.steps.find(({ rule }) => rule === 'key-dates/go-out')?.by ?? null;
};

test('the day out among the key dates is the day that the rules about going out come to', async () => {
  const going = partOf(await ask(engine, 'go-out', '2026-05-10'));
  expect(going.when?.verdict).toBe('yes');
  expect(await outDay('2026-05-10')).toBe(going.when?.on);
});

test('it is left out where those rules cannot say', async () => {
  expect(partOf(await ask(engine, 'go-out', '2026-05-03')).verdict).toBe('no');
  const undated = flockOf({
    kind: 'arrive',
    on: '2026-05-02',
    group: 'whites',
    bird: 'fast',
    count: 30,
    dead: 0,
    hatched: '2026-05-01',
  });
  const part = partOf(await ask(undated, 'key-dates', '2026-05-20'));
  expect(part.steps.map(({ rule }) => rule)).not.toContain('key-dates/go-out');
});

test('what a request supposes of it stands', async () => {
  const supposing = [{ what: { fact: 'out-day' }, value: '2026-05-29', adds: false }];
  const part = partOf(await ask(engine, 'key-dates', '2026-05-10', { supposing }));
  expect(part.steps.find(({ rule }) => rule === 'key-dates/go-out')?.by).toBe('2026-05-29');
});
