/** A setting of the place: brooder, pen, ground, freezer, household, prices. The latest one holds. */
import type { FieldValue, Quantity, Setting, Units } from '../../types.ts';
import { toBase } from '../../units.ts';
import { defineKind } from './kind.ts';
import { fromEntry, textOf } from './take.ts';

const sayQuantity = (quantity: Quantity): string => `${quantity.value} ${quantity.unit}`;

type Told = Pick<Setting, 'value' | 'size' | 'said'>;

/** A setting in base units. A size becomes its area, beside its two sides. */
const tell = (value: FieldValue, units: Units): Told => {
  if (typeof value === 'boolean') return { value, size: null, said: value ? 'yes' : 'no' };
  if (typeof value === 'number') return { value, size: null, said: String(value) };
  if (typeof value === 'string') return { value, size: null, said: value };
  if ('unit' in value) return { value: toBase(units, value), size: null, said: sayQuantity(value) };
  const sides = value as readonly Quantity[];
  const [length = 0, width = 0] = sides.map((side) => toBase(units, side));
  return { value: length * width, size: [length, width], said: sides.map(sayQuantity).join(' x ') };
};

export const setting = defineKind({
  kind: 'setting',
  fields: [
    { name: 'what', type: 'setting-id', required: true },
    { name: 'value', type: 'setting-value', required: true },
  ],
  example: '{"kind":"setting","on":"2026-04-01","what":"brooder","value":"4 ft x 6 ft"}',
  apply: (draft, entry, units) => {
    const what = textOf(entry, 'what');
    const told = { ...fromEntry(entry), what, ...tell(entry.fields.value ?? '', units) };
    const before = draft.settings.get(what);
    if (before === undefined) draft.settings.set(what, [told]);
    else before.push(told);
  },
});
