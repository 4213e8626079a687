/** A ledger damaged byte by byte: never an error, every whole entry still used, and the damage named with its line. */
import { Buffer } from 'node:buffer';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { checkLedger, foldTo, readLedgerText } from '../../engine/ledger/index.ts';
import { book, measure } from '../helpers/ledger-of.ts';
import { validLedgers } from '../helpers/valid-ledgers.ts';
import { isFull, often, patience, tell } from './extent.ts';

const all = { on: '2026-11-25', asOf: null, lines: null };

/** What became of one damage: named, of no effect, told as another value, or a whole line gone without a trace. */
interface Effects {
  named: number;
  harmless: number;
  another: number;
  gone: number;
}

const meaningOf = (raw: string): string => {
  const [entry] = readLedgerText('flock.jsonl', raw, book).entries;
  return entry === undefined
    ? ''
    : JSON.stringify([entry.kind, entry.on, entry.by, entry.written, entry.fields]);
};

interface Sample {
  readonly bytes: Buffer;
  readonly lines: ReadonlySet<string>;
  readonly meanings: ReadonlyMap<string, string>;
}

const sampleOf = (text: string): Sample => {
  const lines = text.split('\n').filter((line) => line !== '');
  return {
    bytes: Buffer.from(text, 'utf8'),
    lines: new Set(lines),
    meanings: new Map(lines.map((line) => [line, meaningOf(line)])),
  };
};

/** Reads, folds and checks a damaged file, and sees what became of each of its lines. */
const look = ({ lines, meanings }: Sample, damaged: Buffer, effects: Effects): void => {
  const ledger = readLedgerText('flock.jsonl', damaged.toString('utf8'), book);
  foldTo(ledger, all, book);
  checkLedger(ledger, all, book, measure());
  const used = new Set(ledger.entries.map(({ line }) => line));
  const named = new Set(ledger.problems.map(({ at }) => at.line));
  const wholeButUnused: string[] = [];
  const neither: string[] = [];
  const known = new Set(meanings.values());
  let isNamed = false;
  let isAnother = false;
  for (const [index, raw] of ledger.lines.entries()) {
    if (lines.has(raw)) {
      if (!used.has(index + 1)) wholeButUnused.push(raw);
    } else if (named.has(index + 1)) isNamed = true;
    else if (used.has(index + 1)) isAnother ||= !known.has(meaningOf(raw));
    else if (raw.trim() !== '') neither.push(raw);
  }
  expect([wholeButUnused, neither]).toEqual([[], []]);
  if (isNamed) effects.named += 1;
  else if (isAnother) effects.another += 1;
  else if (ledger.entries.length < lines.size) effects.gone += 1;
  else effects.harmless += 1;
};

const report = (what: string, effects: Effects): void =>
  tell({
    what,
    times: effects.named + effects.harmless + effects.another + effects.gone,
    lost: 0,
    note: `${effects.named} named, ${effects.harmless} of no effect, ${effects.another} read as another possible value, ${effects.gone} cut at a line's end`,
  });

const none = (): Effects => ({ named: 0, harmless: 0, another: 0, gone: 0 });
const drawn = (most: number, least: number): string =>
  fc
    .sample(validLedgers(most), 40)
    .map(({ text }) => text)
    .find((text) => text.length > least) ?? '';

test(
  'every single byte of a file left out, turned over or the last',
  () => {
    const sample = sampleOf(drawn(20, 1500));
    const { bytes } = sample;
    const step = isFull ? 1 : 7;
    const [left, turned, cut] = [none(), none(), none()];
    for (let at = 0; at < bytes.length; at += step) {
      look(sample, Buffer.concat([bytes.subarray(0, at), bytes.subarray(at + 1)]), left);
      for (const bit of isFull ? [1, 2, 4, 8, 16, 32, 64, 128] : [1, 32, 128]) {
        const flipped = Buffer.from(bytes);
        flipped[at] = (flipped[at] ?? 0) ^ bit;
        look(sample, flipped, turned);
      }
      look(sample, bytes.subarray(0, at), cut);
    }
    // A byte of which the highest bit was turned is no letter any more, so that not one of these goes unnamed.
    expect(turned.named).toBeGreaterThan(turned.another);
    expect([left.gone, turned.gone]).toEqual([0, 0]);
    report('single bytes left out', left);
    report('single bits turned over', turned);
    report('file cut off at every byte', cut);
  },
  patience,
);

test(
  'random damages of a large file',
  () => {
    const times = often(200, 10_000);
    const texts = fc.sample(validLedgers(60), isFull ? 60 : 8).map(({ text }) => text);
    const sample = sampleOf(texts.join(''));
    const { bytes } = sample;
    const damages = fc.sample(
      fc.record({
        at: fc.nat(bytes.length - 1),
        length: fc.integer({ min: 0, max: 400 }),
        put: fc.oneof(fc.uint8Array({ maxLength: 40 }), fc.constant(new Uint8Array(64))),
      }),
      times,
    );
    const effects = none();
    for (const { at, length, put } of damages)
      look(sample, Buffer.concat([bytes.subarray(0, at), put, bytes.subarray(at + length)]), effects);
    expect(effects.named).toBeGreaterThan(times / 2);
    report(`random damages of a file of ${bytes.length} bytes`, effects);
  },
  patience,
);
