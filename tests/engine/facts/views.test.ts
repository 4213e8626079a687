/** Views of the records: made once for as long as the records are the same ones, and the same as looking through all of them. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { byDay, byGroup, rememberViews } from '../../../engine/facts/views.ts';

const names = ['reds', 'whites', 'browns'];
const entries = fc.array(
  fc.record({
    on: fc.constantFrom('2026-05-01', '2026-05-02', '2026-05-03'),
    group: fc.constantFrom(...names, null),
    line: fc.nat(),
  }),
);

test('what is told of a group or of all is found in the order of the records', () => {
  fc.assert(
    fc.property(entries, (all) => {
      const ofGroup = byGroup(all);
      for (const name of [...names, 'nobody'])
        expect(ofGroup(name)).toEqual(all.filter(({ group }) => group === null || group === name));
    }),
  );
});

test('what is told of a day is found in the order of the records', () => {
  fc.assert(
    fc.property(entries, (all) => {
      const onDay = byDay(all);
      for (const day of ['2026-05-01', '2026-05-02', '2026-05-03', '2026-05-04'])
        expect(onDay.get(day) ?? []).toEqual(all.filter(({ on }) => on === day));
    }),
  );
});

test('a view is made once of the same lists, and anew of any other', () => {
  const see = rememberViews();
  const made: number[] = [];
  const joined = (one: readonly object[], other: readonly object[]): readonly object[] => {
    made.push(one.length);
    return [...one, ...other];
  };
  const other = (one: readonly object[]): number => one.length;
  const [some, more, alike] = [[{ a: 1 }], [{ b: 2 }], [{ a: 1 }]];
  expect(see(joined, some, more)).toBe(see(joined, some, more));
  expect(made).toEqual([1]);
  expect(see(joined, alike, more)).toEqual([{ a: 1 }, { b: 2 }]);
  expect(see(joined, more, some)).toEqual([{ b: 2 }, { a: 1 }]);
  expect(made).toEqual([1, 1, 1]);
  expect(see(other, some)).toBe(1);
});
