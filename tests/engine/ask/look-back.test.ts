import { expect, test } from 'vitest';
import { lookBack } from '../../../engine/ask/look-back.ts';
import type { Request } from '../../../engine/types.ts';
import { rulebook } from '../../helpers/rulebook-of.ts';

const { book } = rulebook();
const asked = (question: string, on: string, until: string | null): Request => ({
  question,
  groups: [],
  moment: { on, asOf: null, lines: null },
  until,
  supposing: [],
});
const turned = { moment: { on: '2026-06-15', asOf: null, lines: null }, until: null };
const since = { what: { fact: 'span-from' }, value: '2026-06-01', adds: false };

test('a span that lies behind is asked at its end, with its first day told', () => {
  expect(lookBack(book, asked('losses', '2026-06-01', '2026-06-15'))).toMatchObject({
    ...turned,
    supposing: [since],
  });
});

test('its two days may come in either order', () => {
  expect(lookBack(book, asked('losses', '2026-06-15', '2026-06-01'))).toMatchObject({
    ...turned,
    supposing: [since],
  });
});

test('a single day, and a question that looks ahead, stay as they are', () => {
  const day = asked('losses', '2026-06-15', null);
  const ahead = asked('feed-amount', '2026-06-01', '2026-06-15');
  expect(lookBack(book, day)).toBe(day);
  expect(lookBack(book, ahead)).toBe(ahead);
});
