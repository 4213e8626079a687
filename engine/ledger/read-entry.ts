/** One JSON object → an entry, or all that is wrong with it. */
import type { Entry, FieldValue } from '../types.ts';
import type { Around, Field } from './fields/field.ts';
import { readField } from './fields/index.ts';
import { type Finding, findingAt, findingMissing } from './finding.ts';
import { kindNamed, kinds } from './kinds/index.ts';
import { suggestFrom } from './nearest.ts';

/** What every entry may carry besides the fields of its kind. */
const envelope: readonly Field[] = [
  { name: 'on', type: 'day', required: true },
  { name: 'written', type: 'stamp' },
  { name: 'by', type: 'text' },
];

/** The fields of each kind with the envelope, and their names: made once, as a ledger may have a lifetime of lines. */
const forms = new Map(
  kinds.map((kind) => {
    const fields = [...envelope, ...kind.fields];
    return [kind, { fields, names: fields.map((field) => field.name) }];
  }),
);

export type ReadEntry = { readonly entry: Entry } | { readonly findings: readonly Finding[] };

const findUnknown = (field: string, known: readonly string[]): Finding => ({
  ...findingAt('unknown-field', field, { wants: known, ...suggestFrom(field, known) }),
  under: 'key',
});

const findKind = (around: Around): readonly Finding[] => {
  const { kind } = around.record;
  if (kind === undefined) return [findingMissing('kind')];
  const found = around.written('kind');
  if (typeof kind !== 'string') return [findingAt('wrong-type', 'kind', { found, wants: 'text' })];
  const names = kinds.map((each) => each.kind);
  return [findingAt('unknown-kind', 'kind', { found, wants: names, ...suggestFrom(kind, names) })];
};

/** Reads the JSON object that stands on a line, or that a line has become by correction. */
export const readEntry = (around: Around, line: number, raw: string): ReadEntry => {
  const { record, book } = around;
  const kind = kindNamed(record.kind);
  const form = kind === undefined ? undefined : forms.get(kind);
  if (kind === undefined || form === undefined) return { findings: findKind(around) };

  const { fields, names } = form;
  const told: Record<string, FieldValue> = {};
  const findings = Object.keys(record)
    .filter((name) => name !== 'kind' && !names.includes(name))
    .map((name) => findUnknown(name, names));
  for (const field of fields) {
    if (Object.hasOwn(record, field.name)) {
      const reading = readField(record[field.name], field, around);
      if ('value' in reading) told[field.name] = reading.value;
      else for (const finding of reading.wrong) findings.push(finding);
    } else if (field.required === true) findings.push(findingMissing(field.name));
  }
  if (findings.length > 0) return { findings };

  const { on, written, by, ...own } = told;
  const textOrNull = (value: FieldValue | undefined): string | null =>
    value === undefined ? null : String(value);
  const entry: Entry = {
    kind: kind.kind,
    on: String(on),
    written: textOrNull(written),
    by: textOrNull(by),
    line,
    raw,
    fields: own,
  };
  const clashes = kind.check(entry, book.units);
  return clashes.length > 0 ? { findings: clashes } : { entry };
};
