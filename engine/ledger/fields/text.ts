/** Texts: free words, group names, and choices from a closed list. */
import { suggestFrom } from '../nearest.ts';
import { type Field, type ReadField, type Reading, wrong, wrongType } from './field.ts';

// Control characters, lone halves of surrogate pairs, marks that turn the direction of writing, line separators and the sign
// that stands for a damaged byte: none can be typed by intention, and each can garble what a terminal shows.
const UNWRITABLE = /[\p{Cc}\p{Cs}\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069\ufffd]/u;

/** Reads any text that is not blank and that a terminal can show. */
export const readText: ReadField = (value, field, around) => {
  if (typeof value !== 'string') return wrongType(field, around, 'text');
  const unwritable = UNWRITABLE.exec(value);
  if (unwritable !== null) {
    const found = `U+${(unwritable[0].codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
    return wrong('control-characters', field.name, { found });
  }
  return value.trim() === '' ? wrong('empty-text', field.name, {}) : { value };
};

/** Reads one of a closed list of names. */
export const readOneOf = (value: string, field: Field, names: readonly string[]): Reading => {
  if (names.includes(value)) return { value };
  return wrong('unknown-choice', field.name, { found: value, wants: names, ...suggestFrom(value, names) });
};

export const readChoice: ReadField = (value, field, around) => {
  const text = readText(value, field, around);
  if ('wrong' in text) return text;
  return readOneOf(String(value), field, field.choices ?? []);
};
