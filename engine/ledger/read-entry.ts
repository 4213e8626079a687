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
  if (kind === undefined) return { findings: findKind(around) };

  const values = new Map<string, FieldValue>();
  const fields = [...envelope, ...kind.fields];
  const names = fields.map((field) => field.name);
  const findings = Object.keys(record)
    .filter((name) => name !== 'kind' && !names.includes(name))
    .map((name) => findUnknown(name, names));
  for (const field of fields) {
    if (Object.hasOwn(record, field.name)) {
      const reading = readField(record[field.name], field, around);
      if ('value' in reading) values.set(field.name, reading.value);
      else for (const finding of reading.wrong) findings.push(finding);
    } else if (field.required === true) findings.push(findingMissing(field.name));
  }
  if (findings.length > 0) return { findings };

  const textOrNull = (name: string): string | null => (values.has(name) ? String(values.get(name)) : null);
  const entry: Entry = {
    kind: kind.kind,
    on: String(values.get('on')),
    written: textOrNull('written'),
    by: textOrNull('by'),
    line,
    raw,
    fields: Object.fromEntries(
      [...values].filter(([name]) => kind.fields.some((field) => field.name === name)),
    ),
  };
  const clashes = kind.check(entry, book.units);
  return clashes.length > 0 ? { findings: clashes } : { entry };
};
