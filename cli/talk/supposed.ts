/** What a keeper supposes → what is laid over the flock for one question: facts, rules switched off, or entries as if they were told. */
import { addDays } from '../../engine/day.ts';
import { factsBehind } from '../../engine/index.ts';
import type { Supposition } from '../../engine/types.ts';
import { toBase } from '../../engine/units.ts';
import { listed } from '../say/listed.ts';
import { sayProblem } from '../say/problem.ts';
import { sayValue } from '../say/quantity.ts';
import { sayRecord } from '../say/record.ts';
import { saySupposition } from '../say/supposition.ts';
import type { Reading, Supposing } from '../understand/types.ts';
import { understand } from '../understand/understand.ts';
import { type FigureMeant, figureMeant } from './figure-meant.ts';
import { aboutFor, type Flock, momentOn, speechFor } from './flock.ts';
import { rulesMeant } from './rules-meant.ts';
import { toSupposition, withFirstDay } from './supposed-value.ts';

/** Something supposed, with what is laid over for it and how it is named back. */
export interface Named {
  readonly supposing: Supposing;
  readonly says: string;
}

/** Something that cannot be supposed here, and why not, as a sentence. */
export interface LeftOut {
  readonly supposing: Supposing;
  readonly why: string;
}

export interface Resolved {
  readonly whatIf: readonly Supposition[];
  readonly named: readonly Named[];
  readonly leftOut: readonly LeftOut[];
}

interface Laid {
  readonly over: readonly Supposition[];
  readonly says: string;
}

/** A question, and those whose rules it puts to use. */
const questionsOf = (flock: Flock, topic: string): readonly string[] => {
  const question = flock.book.questions[topic];
  return [topic, ...(question?.gathers ?? []), ...Object.values(question?.foretells ?? {})];
};

const ruleOff = (flock: Flock, topic: string, { rule = '' }: Supposing): Laid | string => {
  const ids = rulesMeant(flock.book, questionsOf(flock, topic), rule);
  if (ids.length === 0) return `No rule of this question is about ${rule}.`;
  return {
    over: ids.map((id) => ({ what: { rule: id }, value: 'off', adds: false })),
    says: `${listed(ids.map((id) => `rule ${id}`))} switched off`,
  };
};

/** The one of several meanings that the question rests on; an age is what the question takes an age for. */
const meaningIn = (flock: Flock, topic: string, supposing: Supposing): Supposing | null => {
  const age = flock.book.questions[topic]?.takes.age;
  if (supposing.fact === 'age' && age !== undefined) return { ...supposing, fact: age };
  const behind = factsBehind(flock.book, topic);
  const meant = [supposing, ...(supposing.orElse ?? [])];
  return meant.find(({ fact }) => fact !== undefined && behind.has(fact)) ?? null;
};

/**
 * Birds that go off, as the record that would tell it, so that losses and the odds of them follow too; of no group named, those
 * of the largest. Null where no group has so many.
 */
const birdsTold = (flock: Flock, reading: Reading, meant: Supposing, kind: string): Laid | null => {
  const count = Number(meant.value);
  const { groups } = aboutFor(flock, null, null);
  const named = meant.group ?? (reading.groups.length === 1 ? reading.groups[0] : undefined);
  const [group] = groups
    .filter(({ name, alive }) => alive >= count && (named === undefined || name === named))
    .toSorted((one, other) => other.alive - one.alive);
  if (group === undefined || !Number.isInteger(count) || count < 1) return null;
  const fields = { group: group.name, count };
  return {
    over: [{ what: { entry: { kind, on: flock.today, ...fields } }, value: 'told', adds: false }],
    says: sayRecord(speechFor(flock), { kind, on: flock.today, fields }).replace(/\.$/, ''),
  };
};

/** So many days from a day of each group: "a week later" than it is to be processed, "at nine weeks" from the hatch. */
const daysLaid = (flock: Flock, reading: Reading, meant: Supposing, from: string): Laid | string => {
  const moment = momentOn(flock, flock.today);
  const named = meant.group === undefined ? reading.groups : [meant.group];
  const names =
    named.length > 0
      ? named
      : flock
          .engine()
          .state(moment)
          .groups.map(({ name }) => name);
  const over = names.flatMap((group): Supposition[] => {
    const day = flock.engine().fact(from, group, moment);
    if (typeof day !== 'string' || meant.fact === undefined) return [];
    return [
      {
        what: { fact: meant.fact },
        value: addDays(day, Math.round(Number(meant.value))),
        adds: false,
        group,
      },
    ];
  });
  if (over.length === 0) return `I do not know which day that would be counted from.`;
  const speech = speechFor(flock);
  return { over, says: listed(over.map((each) => saySupposition(speech, { ...meant, adds: false }, each))) };
};

const factLaid = (
  flock: Flock,
  reading: Reading,
  supposing: Supposing,
  before: readonly Supposition[],
): Laid | string => {
  const meant = meaningIn(flock, reading.topic, supposing);
  if (meant === null) return `Nothing in this answer rests on the ${supposing.what}.`;
  const speech = speechFor(flock);
  const moment = momentOn(flock, flock.today);
  const told = meant.tells === undefined ? null : birdsTold(flock, reading, meant, meant.tells);
  if (told !== null) return told;
  if (meant.from !== undefined) return daysLaid(flock, reading, meant, meant.from);
  // "a 14 cu ft freezer, 40 % of it free": what the share is of may be supposed in the same breath.
  const supposed = (fact: string): unknown =>
    before.find(({ what }) => 'fact' in what && what.fact === fact)?.value;
  const over = toSupposition(
    flock.book,
    meant,
    speech.system,
    (fact) => supposed(fact) ?? flock.engine().fact(fact, null, moment),
  );
  if (over === null) return `I do not know what the ${meant.what} would be a share of.`;
  return { over: [over], says: saySupposition(speech, meant, over) };
};

const figureLaid = (flock: Flock, { figure, quantity }: FigureMeant): Laid => ({
  over: [{ what: { figure }, value: toBase(flock.book.units, quantity), adds: false }],
  says: `${figure} ${sayValue(speechFor(flock), quantity, figure)}`,
});

/** A figure with another value, or an entry as it would be told; it must be plain, whole and fit what is on record. */
const entryLaid = (flock: Flock, topic: string, { what, value }: Supposing): Laid | string => {
  const refused = `I cannot suppose the ${what} here; this is the answer as things are.`;
  const figure = figureMeant(flock.book, topic, String(value));
  if (figure !== undefined) return figureLaid(flock, figure);
  const heard = understand(String(value), aboutFor(flock, null, null), flock.lexicon);
  const [reading] = heard.readings;
  const drafts = reading?.entries ?? [];
  if (!heard.sure || drafts.length === 0 || drafts.some(({ missing }) => missing.length > 0)) return refused;
  const entries = drafts.map(({ kind, on, fields }) => ({ kind, on, ...fields }));
  const grave = flock
    .engine()
    .try(entries, flock.today)
    .problems.find((each) => each.grave);
  if (grave !== undefined) return `I cannot suppose that: ${sayProblem(grave)[0] ?? ''}`;
  const speech = speechFor(flock);
  return {
    over: entries.map((entry) => ({ what: { entry }, value: 'told', adds: false })),
    says: listed(drafts.map((draft) => sayRecord(speech, draft).replace(/\.$/, ''))),
  };
};

const laid = (
  flock: Flock,
  reading: Reading,
  supposing: Supposing,
  before: readonly Supposition[],
): Laid | string => {
  if (supposing.rule !== undefined) return ruleOff(flock, reading.topic, supposing);
  if (supposing.fact !== undefined) return factLaid(flock, reading, supposing, before);
  return entryLaid(flock, reading.topic, supposing);
};

/** Resolves everything that a reading supposes, for its question, in the order in which it was said. */
export const resolveSupposing = (flock: Flock, reading: Reading): Resolved => {
  const over: Supposition[] = [];
  const named: Named[] = [];
  const leftOut: LeftOut[] = [];
  for (const supposing of reading.supposing) {
    const as = laid(flock, reading, supposing, over);
    if (typeof as === 'string') leftOut.push({ supposing, why: as });
    else {
      over.push(...as.over);
      named.push({ supposing, says: as.says });
    }
  }
  return { whatIf: withFirstDay(over), named, leftOut };
};

/**
 * The likeliest reading. A what-if that the last question does not rest on at all is likelier meant for one that does, if
 * one of those that were heard is.
 */
export const restingReading = (flock: Flock, readings: readonly Reading[]): Reading | undefined => {
  const [first] = readings;
  if (first?.stays !== true) return first;
  const isAsked = ({ topic, supposing }: Reading): boolean =>
    supposing.length > 0 && Object.hasOwn(flock.book.questions, topic);
  return readings.filter(isAsked).find((each) => resolveSupposing(flock, each).named.length > 0) ?? first;
};

/** What a supposition is about: saying it again with another value takes its place. */
const keyOf = ({ what, fact, rule, group }: Supposing): string =>
  JSON.stringify([fact ?? rule ?? what, group]);

/** Whether the same is among what is supposed already. */
export const isSupposedIn = (inside: readonly Supposing[], supposing: Supposing): boolean =>
  inside.some((each) => keyOf(each) === keyOf(supposing));

/** What is supposed already, with what is supposed now over it: the same thing said again takes the place of the old. */
export const joinSupposing = (
  before: readonly Supposing[],
  now: readonly Supposing[],
): readonly Supposing[] => {
  const later = new Set(now.map(keyOf));
  return [...before.filter((each) => !later.has(keyOf(each))), ...now];
};
