/** The one table of wordings for problems: what is wrong, and what to do about it. */
import type { Problem } from '../../engine/problem.ts';
import { listed } from './listed.ts';

export interface ProblemWords {
  readonly wrong: string;
  readonly next: string | null;
}

type Data = Problem['data'];
type Wording = (data: Data) => ProblemWords;

const text = (data: Data, key: string): string => {
  const value = data[key];
  return value === undefined ? '' : Array.isArray(value) ? listed(value) : String(value);
};

const say = (wrong: string, next: string | null = null): ProblemWords => ({ wrong, next });

const meant = (data: Data): string | null =>
  data.suggestion === undefined ? null : `Did you mean ${text(data, 'suggestion')}?`;

/** How values of each sort are written, with an example to follow. */
const forms: Readonly<Record<string, string>> = {
  day: 'a day as 2026-05-14',
  hour: 'a time of day as 07:30',
  stamp: 'a local time with offset, as 2026-05-14T07:30:00-04:00',
  text: 'text in quotes, as "reds"',
  count: 'a whole number without quotes, as 3',
  flag: 'true or false without quotes',
  list: 'a list, as ["3.1 lb", "3.4 lb"]',
  money: 'an amount of money in quotes, as "58.50"',
  size: 'a size, as "10 ft x 12 ft"',
  object: 'fields in braces, as {"count": 2}',
  mass: 'a weight with its unit, as "25 lb"',
  temperature: 'a temperature with its unit, as "38 F"',
  length: 'a length with its unit, as "10 ft"',
  area: 'an area with its unit, as "80 ft2"',
  volume: 'a volume with its unit, as "5 gal"',
  rain: 'rain with its unit, as "12 mm"',
  speed: 'a speed with its unit, as "15 mph"',
  ratio: 'a share, as "60 percent"',
  bags: 'bags, as "6 bag"',
};

const form = (data: Data): string => forms[text(data, 'wants')] ?? `${text(data, 'wants')} with its unit`;

const bounds = (data: Data): string => {
  if (data.min !== undefined && data.max !== undefined) {
    return data.min === data.max ? `exactly ${data.min}` : `from ${data.min} to ${data.max}`;
  }
  if (data.min !== undefined) return `at least ${data.min}`;
  if (data.max !== undefined) return `at most ${data.max}`;
  return data.other === undefined ? 'possible' : `in keeping with ${data.other}`;
};

const unknownName =
  (what: string): Wording =>
  (data) =>
    say(`there is no ${what} called ${text(data, 'found')}.`, meant(data));

const wordings: Readonly<Record<string, Wording>> = {
  // the ledger
  'unreadable-file': (data) =>
    say(
      `the file cannot be read (${text(data, 'cause')}).`,
      'See that it is a file and that you may read it, or name another with --file.',
    ),
  'not-json': () =>
    say(
      'this line is not JSON; everything else in the file is still used.',
      'Look for a missing quote, comma or brace at the caret.',
    ),
  'torn-line': () =>
    say(
      'the last line was cut off while it was being written; what stands before it is used.',
      'Tell the last thing again: it goes on a line of its own.',
    ),
  'not-an-object': () =>
    say('an entry stands in braces.', 'Write it as {"kind": "note", "on": "2026-05-14", "words": "…"}.'),
  'duplicate-key': (data) => say(`${text(data, 'field')} stands twice in this line.`, 'Keep one of them.'),
  'unknown-kind': (data) =>
    say(
      `there is no entry kind called ${text(data, 'found')}.`,
      meant(data) ?? `The kinds are ${text(data, 'wants')}.`,
    ),
  'unknown-field': (data) => say(`this kind of entry has no field ${text(data, 'field')}.`, meant(data)),
  'missing-field': (data) =>
    data.or === undefined
      ? say(`${text(data, 'field')} is missing.`, `Add "${text(data, 'field')}": … to the line.`)
      : say(`${text(data, 'field')} is missing, or in its place ${text(data, 'or')}.`),
  'wrong-type': (data) =>
    say(`${text(data, 'field')} cannot be ${text(data, 'found')}.`, `Write ${form(data)}.`),
  'empty-text': (data) => say(`${text(data, 'field')} is empty.`),
  'control-characters': (data) =>
    say(`${text(data, 'field')} holds characters that cannot be shown.`, 'Type it again without them.'),
  'bad-day': (data) => say(`${text(data, 'found')} is not a day of the calendar.`, `Write ${form(data)}.`),
  'bad-time': (data) => say(`${text(data, 'found')} is not a time.`, `Write ${form(data)}.`),
  'bad-quantity': (data) =>
    say(`${text(data, 'found')} is not an amount that I can read.`, meant(data) ?? `Write ${form(data)}.`),
  'bad-money': (data) => say(`${text(data, 'found')} is not an amount of money.`, `Write ${form(data)}.`),
  'wrong-dimension': (data) =>
    say(`${text(data, 'found')} is a measure of ${text(data, 'is')}.`, `Write ${form(data)}.`),
  'out-of-range': (data) => say(`${text(data, 'field')} must be ${bounds(data)}.`),
  'unknown-choice': (data) =>
    say(
      `${text(data, 'field')} cannot be ${text(data, 'found')}.`,
      meant(data) ?? `It can be ${text(data, 'wants')}.`,
    ),
  'two-forms': (data) =>
    say(
      `${text(data, 'field')} says again what ${text(data, 'other')} says.`,
      `Leave out ${text(data, 'field')}.`,
    ),
  'undo-target': (data) => say(`${text(data, 'field')} does not point at a line that can be taken back.`),
  'name-taken': (data) =>
    say(`there are birds called ${text(data, 'found')} already.`, 'Give the new ones another name.'),
  'unknown-group': (data) => say(`there are no birds called ${text(data, 'found')}.`, meant(data)),
  'before-arrival': (data) => say(`this is about a day before they came (${text(data, 'min')}).`),
  'more-than-alive': (data) =>
    say(
      `there are only ${text(data, 'max')} ${text(data, 'group')} left.`,
      'Correct the number, or record first what is missing.',
    ),
  'future-entry': (data) =>
    say(`${text(data, 'found')} had not come yet when this was written (${text(data, 'max')}).`),
  'repeated-line': (data) =>
    say(
      `the same line stands at line ${text(data, 'first-line')}; both are counted.`,
      'If it happened only once, say undo.',
    ),
  'written-order': () =>
    say('this was written before the line above it, by its clock; lines are taken as they stand.'),
  'doubtful-value': (data) =>
    say(
      `${text(data, 'found')} is hard to believe for ${text(data, 'field')}.`,
      'If it is a slip, correct it.',
    ),
  locked: (data) =>
    say(
      `somebody else is writing to the file (${text(data, 'owner')}).`,
      'Nothing was written. Try again in a moment.',
    ),
  'not-written': (data) =>
    say(
      `nothing was written (${text(data, 'cause')}).`,
      'See that the folder is there, has room, and may be written to.',
    ),
  // the rulebook
  'not-yaml': (data) =>
    say(
      `this is not YAML (${text(data, 'says')}).`,
      'Look for a missing quote, colon or indent at the caret.',
    ),
  'empty-file': () => say('the file is empty.', 'Copy the template of its folder.'),
  'wrong-alias': (data) =>
    say(`*${text(data, 'found')} does not point at anything that can stand here.`, 'Write it out here.'),
  'too-deep': () => say('this is nested deeper than any rule needs to be.'),
  'unknown-key': (data) =>
    say(
      `${text(data, 'found')} is not a key that belongs here.`,
      meant(data) ?? (data.wants === undefined ? null : `Keys are ${text(data, 'wants')}.`),
    ),
  'missing-key': (data) => say(`${text(data, 'key')} is missing.`),
  'wrong-shape': (data) => say(`${text(data, 'key')} has the wrong shape: ${text(data, 'wants')}.`),
  'unknown-fact': unknownName('fact'),
  'unknown-figure': unknownName('figure'),
  'unknown-source': unknownName('source'),
  'unknown-unit': unknownName('unit'),
  'unknown-question': unknownName('question'),
  'unknown-rule': unknownName('rule'),
  'unknown-record': unknownName('entry kind'),
  'unknown-sign': unknownName('sign'),
  'unknown-operator': (data) =>
    say(`${text(data, 'found')} is not a comparison.`, meant(data) ?? `They are ${text(data, 'wants')}.`),
  'wrong-sides': (data) =>
    say(
      `${text(data, 'operator')} does not go with what stands beside it.`,
      'Give exactly one of figure, other or value; none for known; a list for one-of and none-of.',
    ),
  'bare-number': (data) =>
    say(`${text(data, 'found')} is a bare number.`, 'Make it a figure with unit and source, and name that.'),
  'no-order': (data) =>
    say(`${text(data, 'fact')} has no more or less.`, 'Use is, is-not, one-of or none-of.'),
  'unit-clash': (data) =>
    say(`${text(data, 'fact')} is a measure of ${text(data, 'is')}, and this of ${text(data, 'against')}.`),
  'empty-list': (data) =>
    say(`an empty ${text(data, 'list')} would always hold.`, 'Give it a condition or take it out.'),
  'rule-without-case': (data) =>
    say(
      `there is no case in which the rule comes out as ${text(data, 'wants')}.`,
      'Add one: a rule is its own test.',
    ),
  'tie-without-rank': (data) =>
    say(
      `${text(data, 'rule')} and ${text(data, 'other')} can hold at once.`,
      'Let one of them outrank the other.',
    ),
  'outranks-itself': (data) => say(`${text(data, 'rule')} outranks itself by way of others.`),
  'question-without-rule': (data) => say(`no rule answers ${text(data, 'question')}.`),
  'words-without-fact': unknownName('fact'),
  'words-twice': (data) =>
    say(`${text(data, 'found')} has words in ${text(data, 'file')} already.`, 'Keep one of them.'),
  'fact-without-words': (data) =>
    say(`the fact ${text(data, 'fact')} has no words.`, 'Add it to a file in rules/facts.'),
  'wrong-table': (data) => say(`the figure wants ${text(data, 'wants')}.`),
  'unused-figure': (data) =>
    say(`no rule and no fact uses ${text(data, 'figure')}.`, 'Use it or take it out.'),
};

/** Codes that have a wording; a test holds them against the codes that there are. */
export const wordedCodes: readonly string[] = Object.keys(wordings);

export const wordsOf = (problem: Problem): ProblemWords =>
  wordings[problem.code]?.(problem.data) ?? say(problem.code);
