/** A record read back: only what was told, as it was told, and a question for what is missing. */
import { describe, expect, test } from 'vitest';
import { asKept, askField, sayRecord } from '../../../cli/say/record.ts';
import { shipped } from '../../helpers/flock-of.ts';
import { smallRulebook } from '../../helpers/small-rulebook.ts';
import { speechIn } from '../../helpers/small-speech.ts';

const { book } = smallRulebook();
/** The reading back of a record whose wording is given here. */
const said = (
  says: string,
  fields: Readonly<Record<string, unknown>>,
  on = '2026-05-08',
  real = book,
): string => {
  const words = { kind: 'out', offer: '', example: '', phrasings: [], not: [], ideas: {}, asks: {}, says };
  return sayRecord(speechIn('us', { ...real, records: { out: words } }), { kind: 'out', on, fields });
};

describe('a reading back', () => {
  test('leaves out a part in brackets when one of its fields was not told, or is no', () => {
    const says = '{group} out[ to {place}][ for {reason} on {day}][{short}, by day only]';
    expect(said(says, { group: 'reds' })).toBe('Reds out.');
    expect(said(says, { group: 'reds', place: 'the pen', reason: 'air', short: false })).toBe(
      'Reds out to the pen.',
    );
    expect(said(says, { group: 'reds', reason: 'air', day: '2026-05-16', short: true })).toBe(
      'Reds out for air on Saturday 16 May, by day only.',
    );
  });

  test('says what is missing outside of brackets, so that it is not overlooked', () => {
    expect(said('{count} {group} out', { group: 'reds', count: null })).toBe('Not said reds out.');
    expect(said('{count} {group} out', { group: 'reds', count: 0 })).toBe('None reds out.');
  });

  test('says one bird of a group as one', () => {
    const says = '[{count} ]{what}[ of {group}]';
    expect(said('{count} {group} out', { group: 'whites', count: 1 })).toBe('1 white out.');
    expect(said('{count} {group} out', { group: 'whites', count: 2 })).toBe('2 whites out.');
    expect(said('{count} {group} out', { group: 'late cross', count: 1 })).toBe('1 late cross out.');
    expect(said(says, { what: 'chicks', count: 1, group: 'reds' })).toBe('1 chick of reds.');
  });

  test('names the day when it is not today', () => {
    expect(said('{group} out', { group: 'reds' }, '2026-05-07')).toBe('Reds out, on Thursday 7 May.');
    expect(said('{group} out', { group: 'reds' }, '2025-05-07')).toBe('Reds out, on Wednesday 7 May 2025.');
  });

  test('keeps amounts as they were typed, and lists several', () => {
    const weighed = { weights: ['4.25 lb', '3 kg'], price: '58.50' };
    expect(said('weighed {weights} for {price}', weighed, '2026-05-08', shipped)).toBe(
      'Weighed 4.25 lb and 3 kg for $58.50.',
    );
  });

  test('names a setting and a cause as people do', () => {
    expect(said('{what} set', { what: 'pen' })).toBe('The pen set.');
    expect(said('lost to {cause}', { cause: 'hawk' })).toBe('Lost to hawk.');
    expect(said('lost to {cause}', { cause: 'cold-snap' })).toBe('Lost to cold snap.');
  });

  test('of a kind without words is its name', () => {
    expect(sayRecord(speechIn('us'), { kind: 'dance', on: '2026-05-08', fields: {} })).toBe('Dance.');
  });

  test('shows what the keeper typed and nothing of the wording around it', () => {
    expect(said('{group} out', { group: '{on} $& [x]' })).toBe('{on} $& [x] out.');
  });
});

test('a missing field is asked for in its own words, or else by its name', () => {
  expect(askField(speechIn('us'), 'out', 'group')).toBe('Which birds?');
  expect(askField(speechIn('us'), 'out', 'days-only')).toBe('What is the days only?');
});

test('fields that were read stand again as in the file: a size by its sides, weights one by one', () => {
  const ft = (value: number) => ({ value, unit: 'ft' });
  const lb = (value: number) => ({ value, unit: 'lb' });
  expect(asKept({ fields: { value: [ft(4), ft(6)], weights: [lb(2), lb(3)], price: '92.00' } })).toEqual({
    value: '4 ft x 6 ft',
    weights: ['2 lb', '3 lb'],
    price: '92.00',
  });
});
