/** Fingerprints of lines, free names for groups, and the name a slip was meant to be. */
import { describe, expect, it } from 'vitest';
import { freeName, printOf } from '../../../engine/ledger/index.ts';
import { nearestOf } from '../../../engine/ledger/nearest.ts';

describe('printOf', () => {
  it('is the first eight digits of the SHA-256 of the line', () => {
    // FIPS 180-4 gives SHA-256("abc") = ba7816bf 8f01cfea …
    expect(printOf('abc')).toBe('ba7816bf');
  });
});

describe('freeName', () => {
  it('counts on from two where a name has been used', () => {
    expect(freeName([], 'whites')).toBe('whites');
    expect(freeName([{ name: 'whites' }], 'whites')).toBe('whites 2');
    expect(freeName([{ name: 'whites' }, { name: 'whites 2' }, { name: 'whites 4' }], 'whites')).toBe(
      'whites 3',
    );
  });
});

describe('nearestOf', () => {
  it('mends one letter of a short word and two of a longer one', () => {
    expect(nearestOf('los', ['loss', 'feed'])).toBe('loss');
    expect(nearestOf('fed', ['loss', 'feed'])).toBe('feed');
    expect(nearestOf('Whties', ['reds', 'whites'])).toBe('whites');
    expect(nearestOf('eat', ['feed', 'weigh'])).toBeNull();
    expect(nearestOf('browns', ['whites'])).toBeNull();
    expect(nearestOf('x'.repeat(1_000_000), ['whites'])).toBeNull();
  });
});
