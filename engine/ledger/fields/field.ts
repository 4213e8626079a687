/** What a field of an entry kind is: its name, what it takes, and how a reader hands back what it read. */
import type { FieldValue } from '../../types.ts';
import { type Finding, findingAt } from '../finding.ts';
import type { Book } from '../ledger.ts';

export type FieldType =
  | 'text'
  | 'group'
  | 'count'
  | 'day'
  | 'hour'
  | 'stamp'
  | 'quantity'
  | 'quantities'
  | 'size'
  | 'choice'
  | 'money'
  | 'flag'
  | 'setting-id'
  | 'setting-value'
  | 'figure-id'
  | 'figure-value'
  | 'figure-cell'
  | 'replacements';

/** A field of an entry kind. What it is called and how it is asked for stands in `rules/records`. */
export interface Field {
  readonly name: string;
  readonly type: FieldType;
  readonly required?: boolean;
  /** For quantities. */
  readonly dimension?: string;
  /** For choices. */
  readonly choices?: readonly string[];
  /** Bounds that follow from what the field is, in base units, both included; not what is merely likely. */
  readonly min?: number;
  readonly max?: number;
}

/** What a reader may look at besides the value itself. */
export interface Around {
  readonly book: Book;
  /** The whole entry as JSON, for a field whose reading depends on another. */
  readonly record: Readonly<Record<string, unknown>>;
  /** The text of the value at a path as it stands in the file, shortened where it is very long. */
  readonly written: (path: string) => string;
  /** The same, in full. */
  readonly writtenInFull: (path: string) => string;
}

/** A value that was read, or all that is wrong with it. */
export type Reading = { readonly value: FieldValue } | { readonly wrong: readonly Finding[] };

export type ReadField = (value: unknown, field: Field, around: Around) => Reading;

/** A reading that found one thing wrong with the value of a field, or at a path inside it. */
export const wrong = (code: Finding['code'], path: string, data: Finding['data']): Reading => ({
  wrong: [findingAt(code, path, data)],
});

/** A reading of a value whose JSON type is not the one wanted. */
export const wrongType = (field: Field, around: Around, wants: string, more: Finding['data'] = {}): Reading =>
  wrong('wrong-type', field.name, { found: around.written(field.name), wants, ...more });

/** The bounds of a field, for the data of a finding. */
export const boundsOf = (field: Field): Finding['data'] => ({
  ...(field.min === undefined ? {} : { min: field.min }),
  ...(field.max === undefined ? {} : { max: field.max }),
});

/** Whether a number in base units lies within the bounds of a field. */
export const isWithin = (number: number, field: Field): boolean =>
  (field.min === undefined || number >= field.min) && (field.max === undefined || number <= field.max);
