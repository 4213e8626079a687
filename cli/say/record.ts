/** A record in words: read back in one line, and the question for what is still missing. */
import { isDay } from '../../engine/day.ts';
import type { Entry, FieldValue, Quantity, RecordWords } from '../../engine/types.ts';
import { readQuantity } from '../../engine/units.ts';
import { listed } from './listed.ts';
import { nameOfTerm } from './named.ts';
import { figureFieldsInWords } from './own-record.ts';
import { capital } from './phrase.ts';
import { sayAsTyped, sayDay, sayTime } from './quantity.ts';
import type { Speech } from './speech.ts';

/** An entry as it stands or will stand in the ledger. */
export interface Recordable {
  readonly kind: string;
  readonly on: string;
  readonly fields: Readonly<Record<string, unknown>>;
}

const asText = ({ value, unit }: Quantity): string => `${value} ${unit}`;

/** The one field that is a list of quantities; any other two of them are a size. */
const listOfQuantities = 'weights';

const asTyped = (name: string, value: FieldValue): unknown => {
  if (Array.isArray(value)) {
    const texts = value.map((each) => (typeof each === 'string' ? each : asText(each)));
    const isSize = name !== listOfQuantities && typeof value[0] === 'object' && value.length === 2;
    return isSize ? texts.join(' x ') : texts;
  }
  return typeof value === 'object' && 'unit' in value ? asText(value) : value;
};

/** The fields of an entry that was read, corrections and all, as they would stand in the ledger. */
export const asKept = ({ fields }: Pick<Entry, 'fields'>): Recordable['fields'] =>
  Object.fromEntries(Object.entries(fields).map(([name, value]) => [name, asTyped(name, value)]));

/** Money stands in the ledger as decimal text in fields of these names. */
const moneyFields = new Set(['price', 'paid']);

const sayField = (speech: Speech, name: string, value: unknown): string => {
  if (Array.isArray(value)) return listed(value.map((each) => sayField(speech, name, each)));
  // A flag says nothing but that its part of the wording stays.
  if (typeof value === 'boolean') return '';
  if (typeof value !== 'string') return value === 0 ? 'none' : String(value);
  // A setting is kept under its id, and read back under its name.
  const setting = name === 'what' ? speech.book.words.settings[value] : undefined;
  if (setting !== undefined) return setting.name;
  if (name === 'cause' || name === 'sign') return nameOfTerm(speech.book, value);
  if (isDay(value)) return sayDay(value, speech.today);
  if (name === 'fetched') return sayTime(value, speech.today);
  if (moneyFields.has(name)) return `${speech.currency}${value}`;
  const quantity = readQuantity(speech.book.units, value);
  return quantity === undefined ? value : sayAsTyped(speech, quantity);
};

const wordsFor = (speech: Speech, kind: string): RecordWords | undefined => speech.book.records[kind];

/** A price that is set is read back as money. */
const settingInWords = (speech: Speech, fields: Recordable['fields']): Recordable['fields'] => {
  const { what, value } = fields;
  const dimension = typeof what === 'string' ? speech.book.words.settings[what]?.dimension : undefined;
  return dimension === 'money' && typeof value === 'string'
    ? { ...fields, value: `${speech.currency}${value}` }
    : fields;
};

/** `1 white lost`: beside a count of one a name stands for one bird. Names that are no plain plural stay as they are. */
const oneOf = (template: string, values: Readonly<Record<string, unknown>>): string =>
  values.count !== 1
    ? template
    : template.replace(/\{count\} \{(group|what)\}/, (pair, name: string) => {
        const plural = values[name];
        return typeof plural === 'string' && /[^su]s$/.test(plural) ? `1 ${plural.slice(0, -1)}` : pair;
      });

/** The entry read back; a part in [square brackets] falls away when one of its fields is missing. */
export const sayRecord = (speech: Speech, { kind, on, fields }: Recordable): string => {
  const template = wordsFor(speech, kind)?.says ?? kind;
  const values: Readonly<Record<string, unknown>> = {
    ...(kind === 'figure' ? figureFieldsInWords(speech, fields) : settingInWords(speech, fields)),
    on,
  };
  const has = (name: string): boolean =>
    Object.hasOwn(values, name) && values[name] != null && values[name] !== false;
  const kept = template.replace(/\[([^\]]*)\]/g, (_, part: string) =>
    [...part.matchAll(/\{([^}]+)\}/g)].every(([, name = '']) => has(name)) ? part : '',
  );
  const filled = oneOf(kept, values).replace(/\{([^}]+)\}/g, (_, name: string) =>
    has(name) ? sayField(speech, name, values[name]) : 'not said',
  );
  const day = on === speech.today ? '' : `, on ${sayDay(on, speech.today)}`;
  const line = filled
    .replace(/\s+/g, ' ')
    .replace(/ ([,.;])/g, '$1')
    .replace(/^[\s,]+/, '')
    .trim();
  return `${capital(line)}${day}.`;
};

/** What to ask for a field that is missing. */
export const askField = (speech: Speech, kind: string, field: string): string =>
  wordsFor(speech, kind)?.asks[field] ?? `What is the ${field.replaceAll('-', ' ')}?`;
