/** A record of today with one amount put right: `no, 3 not 2` corrects the line that said 2, whatever was asked since. */
import { printOf } from '../../engine/index.ts';
import type { Entry } from '../../engine/types.ts';
import { readQuantity } from '../../engine/units.ts';
import { emptyJson } from '../say/as-json.ts';
import { sayProblem } from '../say/problem.ts';
import { asKept, sayRecord } from '../say/record.ts';
import type { Token } from '../say/tokens.ts';
import { finderFor } from '../understand/finder.ts';
import { matchTopics } from '../understand/match.ts';
import { findPutRight, type PutRight } from '../understand/put-right.ts';
import type { About } from '../understand/types.ts';
import { type Flock, speechFor } from './flock.ts';
import { nothingHeard } from './heard-as-json.ts';
import { leaveByRecord } from './inside.ts';
import { exits, type Memory, type Reply } from './reply.ts';

type Fields = Readonly<Record<string, unknown>>;

/** A line of the ledger and its fields as they would be with the amount put right. */
interface Mended {
  readonly entry: Entry;
  readonly kept: Fields;
  readonly mended: Fields;
}

/** The number in a field as it stands in the ledger: `2`, `"51 F"`, `"92.00"`; null where it holds none. */
const amountIn = (flock: Flock, value: unknown): number | null => {
  if (typeof value === 'number') return value;
  if (typeof value !== 'string') return null;
  if (/^\d+(?:\.\d+)?$/.test(value)) return Number(value);
  return readQuantity(flock.book.units, value)?.value ?? null;
};

/** The same field with another number and the unit, or the decimals of money, that it had. */
const withAmount = (value: unknown, now: number): unknown => {
  if (typeof value === 'number') return now;
  const [, unit] = /^\S+( .*)$/.exec(String(value)) ?? [];
  return unit === undefined ? now.toFixed(2) : `${now}${unit}`;
};

/** Feed that is counted in bags weighs more or less with their number. */
const weighAgain = (flock: Flock, kept: Fields, mended: Fields): Fields => {
  const [before, after, mass] = [kept.bags, mended.bags, kept.amount].map((each) => amountIn(flock, each));
  if (before == null || after == null || mass == null || before === after) return mended;
  return { ...mended, amount: withAmount(kept.amount, (mass * after) / before) };
};

const mend = (flock: Flock, entry: Entry, { now, was }: PutRight): Mended | null => {
  const kept = asKept(entry);
  const amounts = Object.keys(kept).filter((name) => amountIn(flock, kept[name]) !== null);
  const meant = was === null ? amounts : amounts.filter((name) => amountIn(flock, kept[name]) === was);
  const [name] = meant;
  // Without the old amount only a record that has a single one can be meant.
  if (name === undefined || (was === null && meant.length > 1)) return null;
  return { entry, kept, mended: weighAgain(flock, kept, { ...kept, [name]: withAmount(kept[name], now) }) };
};

/** Records written today, the latest first; what was fetched nobody has told. */
const toldToday = (flock: Flock): readonly Entry[] =>
  flock
    .engine()
    .standing()
    .filter(({ fields, raw }) => {
      const { written } = JSON.parse(raw);
      return fields.fetched === undefined && typeof written === 'string' && written.startsWith(flock.today);
    })
    .toReversed();

/** The record that is meant: of the kind that the words are likeliest of, and the latest of these; a bare amount means the last told. */
const meantBy = (flock: Flock, words: string, about: About, right: PutRight): Mended | null => {
  const told = toldToday(flock);
  if (right.was === null) return told[0] === undefined ? null : mend(flock, told[0], right);
  const [last, ...others] = told.flatMap((entry) => mend(flock, entry, right) ?? []);
  if (last === undefined || others.every(({ entry }) => entry.kind === last.entry.kind)) return last ?? null;
  const line = finderFor(about, flock.lexicon)(words);
  const { matches } = matchTopics(words, line, flock.lexicon);
  const chanceOf = ({ entry }: Mended): number =>
    matches.find(({ topic }) => topic.id === `tell:${entry.kind}`)?.score ?? 0;
  return [last, ...others].toSorted((one, other) => chanceOf(other) - chanceOf(one))[0] ?? null;
};

const changedFields = ({ kept, mended }: Mended): Fields =>
  Object.fromEntries(Object.entries(mended).filter(([name, value]) => kept[name] !== value));

/** The reply to a line that puts a record of today right; null where it does not, or where no record has that amount. */
export const answerPutRight = async (
  flock: Flock,
  words: string,
  about: About,
  memory: Memory,
  write: boolean,
): Promise<Reply | null> => {
  const right = findPutRight(finderFor(about, flock.lexicon)(words));
  const meant = right === null ? null : meantBy(flock, words, about, right);
  if (meant === null || !write || !flock.canWrite) return null;
  const { entry, kept, mended } = meant;
  const speech = speechFor(flock);
  const says = sayRecord(speech, { kind: entry.kind, on: entry.on, fields: mended });
  const before = sayRecord(speech, { kind: entry.kind, on: entry.on, fields: kept });
  const written = await flock.record([
    {
      kind: 'correct',
      on: flock.today,
      line: entry.line,
      print: printOf(entry.raw),
      with: changedFields(meant),
    },
  ]);
  const problems = written.problems.flatMap((each) => [...sayProblem(each)]);
  const [claim, verdict] = written.isWritten
    ? [`Put right: ${says}`, 'recorded' as const]
    : ['Not put right.', 'cannot-say' as const];
  const tokens: readonly Token[] = [
    { t: 'claim', text: claim },
    ...(written.isWritten
      ? [{ t: 'detail', text: `It was: ${before}` } as const]
      : problems.map((text): Token => ({ t: 'caution', text }))),
  ];
  const reply: Reply = {
    tokens,
    json: { ...emptyJson(words, nothingHeard), verdict, headline: claim },
    record: {
      recorded: written.isWritten ? written.lines.map((line): object => JSON.parse(line)) : null,
      says,
      asks: null,
      problems,
    },
    exit: written.isWritten ? exits.answered : exits.problems,
    memory: { ...memory, choices: [] },
  };
  return leaveByRecord(reply, memory.inside);
};
