/** Which suppositions a line lays over the ledger: `what if it's 38 tonight`, `10 more birds`, `if nights stayed above 55`. */
import { type Span, spansOf } from '../spans.ts';
import type { Token } from '../tokens.ts';
import type { Supposing } from '../types.ts';
import { type Line, wordsUnder } from './all.ts';
import { findOften } from './often.ts';
import { supposable } from './supposable.ts';

const cues = [
  ['what', 'if'],
  ['what', 'about', 'if'],
  ['even', 'if'],
  ['let', 'us', 'say'],
  ['lets', 'say'],
  ['say', 'we'],
  ['say', 'i'],
  ['say', 'the'],
  ['say', 'it'],
  ['suppose'],
  ['supposing'],
  ['imagine'],
  ['assume'],
  ['assuming'],
  ['pretend'],
  ['hypothetically'],
  ['in', 'case'],
  ['in', 'the', 'event'],
  ['provided'],
  ['if'],
  ['were'],
  ['should', 'tonight'],
  ['should', 'the'],
];
/** An `if` behind these only means whether. */
const whether = new Set([
  'see',
  'know',
  'sure',
  'wonder',
  'wondering',
  'ask',
  'check',
  'tell',
  'me',
  'unsure',
  'certain',
]);
const startOnly = new Set(['were', 'should', 'say', 'provided', 'assume', 'imagine']);
const more = new Set([
  'more',
  'extra',
  'additional',
  'warmer',
  'hotter',
  'higher',
  'another',
  'later',
  'longer',
]);
const less = new Set(['fewer', 'less', 'colder', 'cooler', 'lower', 'earlier', 'sooner']);

const cueAt = (tokens: readonly Token[], at: number): number | null => {
  const before = tokens[at - 1]?.word ?? '';
  for (const cue of cues) {
    if (!cue.every((word, n) => tokens[at + n]?.word === word)) continue;
    if (cue[0] === 'if' && whether.has(before)) return null;
    const opens = at === 0 || tokens[at - 1]?.isMark === true || ['and', 'but', 'ok', 'so'].includes(before);
    if (startOnly.has(cue[0] ?? '') && !opens) continue;
    return at + cue.length;
  }
  return null;
};

/** Words that open the question behind a supposition: `if nights stayed above 55 could the reds …`. */
const openers = new Set('could would can do does how what when will should which may is are must'.split(' '));

const clauseEnd = (tokens: readonly Token[], from: number): number => {
  const end = tokens.findIndex(
    (token, n) =>
      n > from &&
      ((token.isMark && token.word !== '-' && token.word !== '/') ||
        (n > from + 2 && openers.has(token.word))),
  );
  return end < 0 ? tokens.length : end;
};

const stepOf = (tokens: readonly Token[], span: Span): { sign: number; adds: boolean } => {
  const near = [tokens[span.to]?.word, tokens[span.to + 1]?.word, tokens[span.from - 1]?.word];
  if (near.some((word) => word !== undefined && less.has(word))) return { sign: -1, adds: true };
  return { sign: 1, adds: near.some((word) => word !== undefined && more.has(word)) };
};

/** A rhythm is that of the pen's moves, unless the words are about something else that is done so often. */
const othersDoneOften = new Set(
  'feed fed feeding eat water watered watering weigh weighed weighing check count clean'.split(' '),
);

const readRhythm = (line: Line, from: number, to: number): Supposing | null => {
  const tokens = line.tokens.slice(from, to);
  const often = tokens.some((token) => othersDoneOften.has(token.word)) ? null : findOften(tokens);
  if (often === null) return null;
  return { what: 'moves of the pen in a day', fact: 'moves-a-day', value: often, unit: null, adds: false };
};

const penWords = new Set('pen pens tractor shelter coop hoop'.split(' '));
const groundWords = new Set('ground field paddock pasture grass lawn meadow'.split(' '));

/** A size is that of the pen, with its two sides, or of the ground. */
const readSize = (line: Line, from: number, to: number): readonly Supposing[] => {
  const size = spansOf(line.spans, 'size').find((span) => from <= span.from && span.to <= to);
  const says = (words: ReadonlySet<string>): boolean =>
    line.tokens.slice(from, to).some((token) => words.has(token.word));
  if (size === undefined) return [];
  const { sides, unit } = size;
  const area = { value: sides[0] * sides[1], unit: unit === null ? null : `${unit}2`, adds: false };
  if (says(groundWords)) return [{ what: 'ground', fact: 'ground-area', ...area }];
  if (!says(penWords)) return [];
  return [
    { what: 'floor of the pen', fact: 'pen-area', ...area },
    { what: 'length of the pen', fact: 'pen-length', value: Math.max(...sides), unit, adds: false },
    { what: 'width of the pen', fact: 'pen-width', value: Math.min(...sides), unit, adds: false },
  ];
};

const readChange = (line: Line, from: number, to: number): Supposing | null => {
  const inside = line.spans.filter((span) => from <= span.from && span.to <= to);
  const said = new Set(line.tokens.slice(from, to).map((token) => token.word));
  const money = spansOf(inside, 'money')[0];
  const heat = spansOf(inside, 'quantity').find((span) => span.dimension === 'temperature');
  const number = spansOf(inside, 'number')[0];
  const other = spansOf(inside, 'quantity').find(
    (span) => span.dimension !== 'temperature' && span.dimension !== 'time',
  );
  const value = money ?? heat ?? other ?? number;
  if (value === undefined) return null;
  const kind = value.kind === 'quantity' ? value.dimension : value.kind;
  const subject = supposable.find(
    (each) => each.takes.includes(kind) && [...said].some((word) => each.words.has(word)),
  );
  if (subject === undefined) return null;
  const step = stepOf(line.tokens, value);
  const amount = value.kind === 'money' ? value.cents / 100 : value.value;
  return {
    what: subject.what,
    fact: subject.fact,
    value: amount * step.sign,
    unit: value.kind === 'quantity' ? value.unit : value.kind === 'money' ? 'money' : null,
    adds: step.adds,
  };
};

/** What is supposed in a line, with the stretch of tokens it stands in; words only where it is not plain what is meant. */
export const findSupposing = (
  words: string,
  line: Line,
): readonly (Supposing & { from: number; to: number })[] => {
  const found: (Supposing & { from: number; to: number })[] = [];
  let at = 0;
  while (at < line.tokens.length) {
    const begin = cueAt(line.tokens, at);
    if (begin === null) {
      at += 1;
      continue;
    }
    const to = clauseEnd(line.tokens, begin);
    const said = wordsUnder(words, line.tokens, begin, to).trim();
    const sizes = readSize(line, begin, to);
    const change = readRhythm(line, begin, to) ?? readChange(line, begin, to);
    if (sizes.length > 0) found.push(...sizes.map((each) => ({ ...each, from: at, to })));
    else if (change !== null) found.push({ ...change, from: at, to });
    else if (said !== '') found.push({ what: said, value: said, unit: null, adds: false, from: at, to });
    at = to;
  }
  return found;
};
