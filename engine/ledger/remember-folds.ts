/** What a ledger adds up to at the moments asked about last: one question looks at the same few moments many times over. */
import type { Moment } from '../types.ts';
import { type Folded, foldTo } from './fold.ts';
import type { Book, Ledger } from './ledger.ts';

/** More moments than one question looks at; an audit, which replays hundreds, keeps no more than these. */
const most = 8;

const keyOf = ({ on, asOf, lines, without = [] }: Moment): string =>
  JSON.stringify([on, asOf, lines, without]);

/** Keeps the latest `most` of what `make` made, by a key. */
export const rememberLatest = <T>(): ((key: string, make: () => T) => T) => {
  const kept = new Map<string, T>();
  return (key, make) => {
    const made = kept.has(key) ? (kept.get(key) as T) : make();
    // Put in again at the end, so that the first is the one that was not wanted for longest.
    kept.delete(key);
    kept.set(key, made);
    if (kept.size > most) for (const oldest of [...kept.keys()].slice(0, -most)) kept.delete(oldest);
    return made;
  };
};

/** Folds a ledger as `foldTo` does, each moment once. The ledger does not change: after a writing another one is opened. */
export const rememberFolds = (ledger: Ledger, book: Book): ((moment: Moment) => Folded) => {
  const latest = rememberLatest<Folded>();
  return (moment) => latest(keyOf(moment), () => foldTo(ledger, moment, book));
};
