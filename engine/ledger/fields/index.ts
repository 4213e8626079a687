/** Which reader a field type has. */
import type { Around, Field, FieldType, ReadField, Reading } from './field.ts';
import { readCount, readFlag, readMoney } from './number.ts';
import { readOneQuantity, readQuantities, readSize } from './quantity.ts';
import { readChoice, readText } from './text.ts';
import { readDay, readHour, readStamp } from './time.ts';
import {
  readFigureCell,
  readFigureId,
  readFigureValue,
  readReplacements,
  readSettingId,
  readSettingValue,
} from './told.ts';

const readers: Readonly<Record<FieldType, ReadField>> = {
  text: readText,
  group: readText,
  count: readCount,
  day: readDay,
  hour: readHour,
  stamp: readStamp,
  quantity: readOneQuantity,
  quantities: readQuantities,
  size: readSize,
  choice: readChoice,
  money: readMoney,
  flag: readFlag,
  'setting-id': readSettingId,
  'setting-value': readSettingValue,
  'figure-id': readFigureId,
  'figure-value': readFigureValue,
  'figure-cell': readFigureCell,
  replacements: readReplacements,
};

/** Reads the JSON value of a field; quantities keep the unit they were written in. */
export const readField = (value: unknown, field: Field, around: Around): Reading =>
  readers[field.type](value, field, around);
