/** Taking the values out of an entry that was read by its kind's fields. A value of another type is a bug of ours, not of the keeper. */
import type { Entry, FieldValue, Quantity, Units } from '../../types.ts';
import { toBase } from '../../units.ts';
import type { GroupDraft, StateDraft } from '../draft.ts';

const isQuantity = (value: FieldValue): value is Quantity =>
  typeof value === 'object' && !Array.isArray(value) && 'unit' in value;

const misread = (entry: Entry, field: string): Error =>
  new Error(`line ${entry.line}: ${entry.kind} was read without its field ${field}`);

/** The text of an optional field. */
export const textOrNull = (entry: Entry, field: string): string | null => {
  const value = entry.fields[field];
  return typeof value === 'string' ? value : null;
};

/** The text of a required field. */
export const textOf = (entry: Entry, field: string): string => {
  const text = textOrNull(entry, field);
  if (text === null) throw misread(entry, field);
  return text;
};

/** The choice of a field; the first of them when none was made. */
export const choiceOf = <Choice extends string>(
  entry: Entry,
  field: string,
  choices: readonly [Choice, ...Choice[]],
): Choice => choices.find((choice) => choice === entry.fields[field]) ?? choices[0];

/** The count of an optional field. */
export const countOrNull = (entry: Entry, field: string): number | null => {
  const value = entry.fields[field];
  return typeof value === 'number' ? value : null;
};

/** The count of a required field. */
export const countOf = (entry: Entry, field: string): number => {
  const count = countOrNull(entry, field);
  if (count === null) throw misread(entry, field);
  return count;
};

/** The quantity of a required field, in the unit it was written in. */
export const quantityOf = (entry: Entry, field: string): Quantity => {
  const value = entry.fields[field];
  if (value === undefined || !isQuantity(value)) throw misread(entry, field);
  return value;
};

/** The quantity of an optional field, in base units. */
export const baseOrNull = (entry: Entry, field: string, units: Units): number | null => {
  const value = entry.fields[field];
  return value !== undefined && isQuantity(value) ? toBase(units, value) : null;
};

/** The quantity of a required field, in base units. */
export const baseOf = (entry: Entry, field: string, units: Units): number =>
  toBase(units, quantityOf(entry, field));

/** The quantities of a list field, in base units; null when it was not given. */
export const basesOrNull = (entry: Entry, field: string, units: Units): readonly number[] | null => {
  const value = entry.fields[field];
  if (!Array.isArray(value)) return null;
  return value.map((each: Quantity) => toBase(units, each));
};

export const hasFlag = (entry: Entry, field: string): boolean => entry.fields[field] === true;

/** Where in the ledger something came from. */
export const fromEntry = (entry: Entry): { readonly on: string; readonly line: number } => ({
  on: entry.on,
  line: entry.line,
});

/** The group that a required `group` field names; undefined when nobody arrived under that name, which a check of its own reports. */
export const groupOf = (draft: StateDraft, entry: Entry): GroupDraft | undefined =>
  draft.groups.get(textOf(entry, 'group'));
