/** Values whose reading depends on what they are told of: settings of the place and own figures. */
import { dimensionOf } from '../../units.ts';
import { type Field, type FieldType, type ReadField, wrongType } from './field.ts';
import { readCount, readFlag, readMoney } from './number.ts';
import { readOneQuantity, readSize } from './quantity.ts';
import { readOneOf, readText } from './text.ts';
import { readDay } from './time.ts';

const nameIn = (record: Readonly<Record<string, unknown>>, field: string, known: object): string | null => {
  const name = record[field];
  return typeof name === 'string' && Object.hasOwn(known, name) ? name : null;
};

export const readSettingId: ReadField = (value, field, around) => {
  const text = readText(value, field, around);
  return 'wrong' in text ? text : readOneOf(String(value), field, Object.keys(around.book.settings));
};

export const readFigureId: ReadField = (value, field, around) => {
  const text = readText(value, field, around);
  return 'wrong' in text ? text : readOneOf(String(value), field, Object.keys(around.book.figures));
};

/** Settings that are no plain measure. `area` also takes a size, since people know their pen by its sides. */
const SETTINGS: Readonly<Partial<Record<string, FieldType>>> = {
  text: 'text',
  count: 'count',
  'yes-no': 'flag',
  money: 'money',
  size: 'size',
  day: 'day',
};

// Typed by hand, a count or a yes may well stand in quotes like every other value of a setting.
const unquote = (value: unknown, type: FieldType): unknown => {
  if (type === 'count' && typeof value === 'string' && /^\d{1,15}$/.test(value)) return Number(value);
  if (type === 'flag' && (value === 'yes' || value === 'no')) return value === 'yes';
  return value;
};

/** Reads the value of the setting that the entry names. */
export const readSettingValue: ReadField = (value, field, around) => {
  const id = nameIn(around.record, 'what', around.book.settings);
  // the unknown name is a finding of its own; nothing can be said about its value
  if (id === null) return readText(value, field, around);
  const dimension = around.book.settings[id]?.dimension ?? 'text';
  const type = SETTINGS[dimension] ?? 'quantity';
  const told: Field = { name: field.name, type, dimension, ...(type === 'count' ? { min: 0 } : {}) };
  const plain = unquote(value, type);
  switch (type) {
    case 'text':
      return readText(plain, told, around);
    case 'count':
      return readCount(plain, told, around);
    case 'flag':
      return readFlag(plain, told, around);
    case 'money':
      return readMoney(plain, told, around);
    case 'size':
      return readSize(plain, told, around);
    case 'day':
      return readDay(plain, told, around);
    default: {
      const size = dimension === 'area' ? readSize(plain, told, around) : null;
      return size !== null && 'value' in size ? size : readOneQuantity(plain, told, around);
    }
  }
};

/** Reads the value that the keeper sets a figure to; it must measure what the figure measures. */
export const readFigureValue: ReadField = (value, field, around) => {
  const id = nameIn(around.record, 'figure', around.book.figures);
  const unit = id === null ? undefined : around.book.figures[id]?.unit;
  if (unit === undefined) return readText(value, field, around);
  return readOneQuantity(value, { ...field, dimension: dimensionOf(around.book.units, unit) }, around);
};

/** Reads the object of a correction. It is kept as its JSON text, since its fields are those of another line. */
export const readReplacements: ReadField = (value, field, around) => {
  if (typeof value !== 'object' || value === null || Array.isArray(value) || Object.keys(value).length === 0) {
    return wrongType(field, around, 'object');
  }
  return { value: around.writtenInFull(field.name) };
};
