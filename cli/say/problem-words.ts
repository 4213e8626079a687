/** The one table of wordings for problems: what is wrong, and what to do about it. */
import type { Problem } from '../../engine/problem.ts';
import { type Data, meant, type ProblemWords, say, text, type Wording } from './problem-wording.ts';
import { ownWordings, ruleWordings } from './rule-problem-words.ts';

/** How values of each sort are written, with an example to follow. */
const forms: Readonly<Record<string, string>> = {
  day: 'a day as 2026-05-14',
  hour: 'a time of day as 07:30',
  stamp: 'a local time with offset, as 2026-05-14T07:30:00-04:00',
  text: 'text in quotes, as "reds"',
  count: 'a whole number without quotes, as 3',
  number: 'a number without quotes, as 1.5',
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

/** Why an undo or a correction finds no line, as the end of "this counts for nothing, as …". */
const unfound: Readonly<Record<string, string>> = {
  missing: 'the line it names is empty or not there',
  later: 'the line it names comes after it',
  'another-line': 'the line it was written for is not in the file as it was',
  several: 'several lines are just like the one it was written for',
  'not-correctable': 'the line it names has nothing to put right',
};

const wordings: Readonly<Record<string, Wording>> = {
  // the ledger
  'unreadable-file': (data) =>
    say(
      `the file cannot be read (${text(data, 'cause')}).`,
      'See that it is a file and that you may read it, or name another with --file.',
    ),
  'not-json': (data) =>
    data.seam === undefined
      ? say(
          'this line is not JSON; everything else in the file is still used.',
          'Look for a missing quote, comma or brace at the caret.',
        )
      : say(
          'two entries have run together, as where two files were joined; everything else in the file is still used.',
          'Begin a new line at the caret. What stands before it may be half a line: tell that again.',
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
  'cell-not-named': (data) =>
    say(
      `${text(data, 'figure')} is a table, and this does not say which of its numbers is meant.`,
      `Name one of its cells under "at": ${text(data, 'wants')}.`,
    ),
  'no-cells': (data) => say(`${text(data, 'figure')} is one number and no table.`, 'Leave out "at".'),
  'undo-target': (data) =>
    say(
      `this counts for nothing, as ${unfound[text(data, 'cause')] ?? 'its line is not found'}.`,
      'What it was about still stands: take that back, or put it right, once more.',
    ),
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
    data.counted === 'once'
      ? say(
          `the same line, written at the same time, stands at line ${text(data, 'first-line')}; it is counted once.`,
          'If it happened twice, tell it once more.',
        )
      : say(
          `the same line stands at line ${text(data, 'first-line')}; both are counted.`,
          'If it happened only once, say undo.',
        ),
  'written-order': (data) =>
    say(
      `this was written before line ${text(data, 'first-line')}, by its clock; all lines are taken by day and time of writing.`,
      'Nothing is to be done if two copies of the file were joined here.',
    ),
  'doubtful-value': (data) =>
    say(
      `${text(data, 'found')} is hard to believe for ${text(data, 'field')}.`,
      'If it is a slip, correct it.',
    ),
  locked: (data) =>
    data.process === undefined
      ? say(
          'somebody else seems to be writing to the file, and does not say who.',
          `Nothing was written. Try again in a moment; if nobody else is at it, remove ${text(data, 'lock')}.`,
        )
      : say(
          `somebody else is writing to the file (process ${text(data, 'process')} on ${text(data, 'host')}).`,
          `Nothing was written. Try again in a moment; if that process is no more, remove ${text(data, 'lock')}.`,
        ),
  'not-written': (data) =>
    say(
      `nothing was written (${text(data, 'cause')}).`,
      'See that the folder is there, has room, and may be written to.',
    ),
  ...ruleWordings,
  ...ownWordings,
};

/** Codes that have a wording; a test holds them against the codes that there are. */
export const wordedCodes: readonly string[] = Object.keys(wordings);

/** Those of them that only a rule file of the keeper's can give. */
export const ownCodes: readonly string[] = Object.keys(ownWordings);

export const wordsOf = (problem: Problem): ProblemWords =>
  wordings[problem.code]?.(problem.data) ?? say(problem.code);
