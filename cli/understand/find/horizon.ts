/** Which spans that are no dates a line names: until processing, until they go out, the whole batch. */
import type { Token } from '../tokens.ts';

const ends: readonly (readonly [string, readonly string[]])[] = [
  [
    'processing',
    [
      'process',
      'processing',
      'butcher',
      'butchering',
      'slaughter',
      'slaughtering',
      'harvest',
      'kill',
      'end',
      'finish',
      'done',
      'ready',
      'freezer',
      'market',
    ],
  ],
  ['out', ['out', 'outside', 'pasture', 'grass', 'pen']],
];
const leads = new Set(['until', 'till', 'to', 'before', 'through', 'carry']);
const wholes = [
  ['whole', 'batch'],
  ['whole', 'lot'],
  ['entire', 'batch'],
  ['start', 'to', 'finish'],
  ['beginning', 'to', 'end'],
  ['in', 'all'],
  ['in', 'total'],
  ['altogether'],
  ['whole', 'way'],
  ['whole', 'run'],
  ['lifetime'],
];
const reach = 4;

/** `processing`, `out`, `batch`, or null. */
export const findHorizon = (tokens: readonly Token[]): string | null => {
  const words = tokens.map((token) => token.word);
  for (const [at, word] of words.entries()) {
    if (!leads.has(word)) continue;
    const after = words.slice(at + 1, at + 1 + reach);
    const found = ends.find(([, names]) => after.some((name) => names.includes(name)));
    const isVerb =
      word === 'to' &&
      after[0] !== 'the' &&
      after[0] !== 'slaughter' &&
      after[0] !== 'processing' &&
      after[0] !== 'harvest';
    if (found !== undefined && !isVerb) return found[0];
  }
  return wholes.some((whole) => words.some((_, at) => whole.every((word, n) => words[at + n] === word)))
    ? 'batch'
    : null;
};
