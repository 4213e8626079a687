/** Counts, money and yes or no. */
import { boundsOf, isWithin, type ReadField, wrong, wrongType } from './field.ts';

/** Reads a JSON whole number. */
export const readCount: ReadField = (value, field, around) => {
  if (typeof value !== 'number' || !Number.isInteger(value)) return wrongType(field, around, 'count');
  if (!Number.isSafeInteger(value) || !isWithin(value, field)) {
    return wrong('out-of-range', field.name, {
      found: around.written(field.name),
      wants: 'count',
      ...boundsOf(field),
    });
  }
  return { value };
};

/** Reads money as exact decimal text such as `58.50`; it stays text, so that no cent is lost to binary fractions. */
export const readMoney: ReadField = (value, field, around) => {
  if (typeof value === 'number' && value >= 0 && Number.isFinite(value)) {
    return wrongType(field, around, 'money', { suggestion: value.toFixed(2) });
  }
  if (typeof value !== 'string') return wrongType(field, around, 'money');
  if (!/^\d{1,9}(\.\d{1,2})?$/.test(value))
    return wrong('bad-money', field.name, { found: value, wants: 'money' });
  return { value };
};

export const readFlag: ReadField = (value, field, around) =>
  typeof value === 'boolean' ? { value } : wrongType(field, around, 'flag');
