/** A wording with its values: every name filled from where it belongs, nothing more than it names. */
import { expect, test } from 'vitest';
import { type Filling, sentence } from '../../../engine/explain/sentence.ts';

const filling: Filling = {
  group: 'reds',
  on: '2026-05-08',
  until: null,
  fact: (id) => ({ value: id.length, unit: 'day' }),
  figure: (id) =>
    id === 'out/youngest'
      ? { id, value: 14, unit: 'day', from: '2026-01-01', source: 'own-judgement', own: false }
      : undefined,
};
const youngest = filling.figure('out/youngest');

test('facts, figures, the group and the days each come from their place', () => {
  expect(sentence('{group} {age} {out/youngest} {out/gone} {on} {until} {age}', filling)).toEqual({
    template: '{group} {age} {out/youngest} {out/gone} {on} {until} {age}',
    values: {
      group: { value: 'reds', unit: null },
      age: { value: 3, unit: 'day' },
      'out/youngest': { value: 14, unit: 'day', figure: youngest },
      'out/gone': { value: null, unit: null },
      on: { value: '2026-05-08', unit: 'date' },
      until: { value: null, unit: 'date' },
    },
  });
});

test('a wording without names has no values', () => {
  expect(sentence('Shut the pen.', filling)).toEqual({ template: 'Shut the pen.', values: {} });
});
