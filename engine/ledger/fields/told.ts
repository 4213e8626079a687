/** Values whose reading depends on what they are told of: settings of the place and own figures. */
import { dimensionOf } from '../../units.ts';
import { findingAt } from '../finding.ts';
import type { FigureForm } from '../ledger.ts';
import { type Around, type ReadField, wrong, wrongType } from './field.ts';
import { readCount, readFlag, readMoney } from './number.ts';
import { readOneQuantity, readSize } from './quantity.ts';
import { readChoice, readOneOf, readText } from './text.ts';
import { readDay, readHour } from './time.ts';

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

// Typed by hand, a count or a yes may well stand in quotes like every other value of a setting.
const readLooseCount: ReadField = (value, field, around) => {
  const isQuoted = typeof value === 'string' && /^\d{1,15}$/.test(value);
  return readCount(isQuoted ? Number(value) : value, { ...field, min: 0 }, around);
};

// One bird every other week is half a bird a week, so a pace need not be whole.
const readPace: ReadField = (value, field, around) => {
  const isQuoted = typeof value === 'string' && /^\d{1,6}(\.\d{1,6})?$/.test(value);
  const pace = isQuoted ? Number(value) : value;
  return typeof pace === 'number' && Number.isFinite(pace) && pace >= 0
    ? { value: pace }
    : wrongType(field, around, 'number');
};

const readLooseFlag: ReadField = (value, field, around) =>
  value === 'yes' || value === 'no' ? { value: value === 'yes' } : readFlag(value, field, around);

// A price of the place is reckoned with, so it becomes a number; what was paid stays exact text.
const readPrice: ReadField = (value, field, around) => {
  const money = readMoney(value, field, around);
  return 'value' in money ? { value: Number(money.value) } : money;
};

// People know their ground by its sides as often as by its area.
const readArea: ReadField = (value, field, around) => {
  const size = readSize(value, field, around);
  return 'value' in size ? size : readOneQuantity(value, field, around);
};

/** Dimensions of settings that are not read as one quantity. */
const settingReaders = new Map<string, ReadField>([
  ['text', readText],
  ['count', readLooseCount],
  ['pace', readPace],
  ['yes-no', readLooseFlag],
  ['money', readPrice],
  ['size', readSize],
  ['day', readDay],
  ['clock', readHour],
  ['area', readArea],
]);

/** Reads the value of the setting that the entry names, by that setting's dimension. */
export const readSettingValue: ReadField = (value, field, around) => {
  const id = nameIn(around.record, 'what', around.book.settings);
  const { dimension, choices } = (id === null ? undefined : around.book.settings[id]) ?? {};
  // the unknown name is a finding of its own; nothing can be said about its value
  if (dimension === undefined) return { value: around.written(field.name) };
  if (choices !== undefined) return readChoice(value, { ...field, choices }, around);
  const read = settingReaders.get(dimension) ?? readOneQuantity;
  return read(value, { ...field, dimension }, around);
};

const figureIn = ({ record, book }: Around): FigureForm | undefined => {
  const id = nameIn(record, 'figure', book.figures);
  return id === null ? undefined : book.figures[id];
};

/** Reads the value that the keeper sets a figure to; it must measure what the figure measures, and belong to one cell of a table. */
export const readFigureValue: ReadField = (value, field, around) => {
  const figure = figureIn(around);
  if (figure === undefined) return { value: around.written(field.name) };
  const dimension = dimensionOf(around.book.units, figure.unit);
  const reading = readOneQuantity(value, { ...field, dimension }, around);
  const cells = figure.cells?.() ?? [];
  return 'value' in reading && cells.length > 0 && !Object.hasOwn(around.record, 'at')
    ? wrong('cell-not-named', field.name, { figure: String(around.record.figure), wants: cells })
    : reading;
};

/** Reads the name of the cell of a figure's table that is set, such as `21` or `slow/56`. */
export const readFigureCell: ReadField = (value, field, around) => {
  const text = readText(value, field, around);
  const figure = figureIn(around);
  if ('wrong' in text || figure === undefined) return text;
  const cells = figure.cells?.() ?? [];
  return cells.length === 0
    ? wrong('no-cells', field.name, { figure: String(around.record.figure) })
    : readOneOf(String(value), field, cells);
};

// What a line is and when it was told are not for correcting: undo it and tell it again.
const FIXED: readonly string[] = ['kind', 'written', 'by'];

/** Reads the object of a correction. It is kept as its JSON text, since its fields are those of another line. */
export const readReplacements: ReadField = (value, field, around) => {
  if (
    typeof value !== 'object' ||
    value === null ||
    Array.isArray(value) ||
    Object.keys(value).length === 0
  ) {
    return wrongType(field, around, 'object');
  }
  const fixed = FIXED.filter((name) => Object.hasOwn(value, name)).map((name) => `${field.name}.${name}`);
  if (fixed.length > 0) {
    return { wrong: fixed.map((path) => ({ ...findingAt('unknown-field', path), under: 'key' })) };
  }
  return { value: around.writtenInFull(field.name) };
};
