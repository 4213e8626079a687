/** Birds promised to somebody, handed over, or paid for. */
import { defineKind } from './kind.ts';
import { choiceOf, countOf, fromEntry, textOf, textOrNull } from './take.ts';

const STEPS = ['promised', 'handed', 'paid'] as const;

export const share = defineKind({
  kind: 'share',
  fields: [
    { name: 'who', type: 'text', required: true },
    { name: 'count', type: 'count', required: true, min: 1 },
    { name: 'step', type: 'choice', choices: STEPS },
    { name: 'paid', type: 'money' },
  ],
  example: '{"kind":"share","on":"2026-05-20","who":"the neighbour","count":4,"step":"promised"}',
  apply: (draft, entry) => {
    draft.shares.push({
      ...fromEntry(entry),
      who: textOf(entry, 'who'),
      count: countOf(entry, 'count'),
      step: choiceOf(entry, 'step', STEPS),
      paid: textOrNull(entry, 'paid'),
    });
  },
});
