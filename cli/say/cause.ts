/** A cause of a change in words: what was told and on which line, which figure or rules, or that days went by. */
import { daysBetween } from '../../engine/day.ts';
import type { Cause, HeardAs } from '../../engine/types.ts';
import { listed } from './listed.ts';
import { sayDay } from './quantity.ts';
import { sayRecord } from './record.ts';
import type { Speech } from './speech.ts';

type EntryCause = Extract<Cause, { kind: 'entry' }>;

/** The record on a line as it was written, read back without its full stop; null where it cannot be read. */
const sayLine = (speech: Speech, lines: readonly string[], line: number): string | null => {
  try {
    const { kind, on, written: _written, by: _by, ...fields } = JSON.parse(lines[line - 1] ?? '');
    return sayRecord(speech, { kind, on, fields }).replace(/\.$/, '');
  } catch {
    return null;
  }
};

const sayEntry = (speech: Speech, lines: readonly string[], cause: EntryCause): string => {
  const { how, line, of } = cause;
  const read = sayLine(speech, lines, of ?? line);
  const record = read === null ? '' : `, "${read}"`;
  switch (how) {
    case 'corrected':
      return `line ${of} was put right on line ${line}${record}`;
    case 'undone':
      return `line ${of} was taken back on line ${line}${record}`;
    case 'forecast':
      return `the weather was foretold on line ${line}${record}`;
    case 'own-figure':
      return `a figure of your own was set on line ${line}${record}`;
    default:
      return `line ${line} was told${record}`;
  }
};

/** What words were taken to ask, with its day where that is what differs. */
const sayHeard = (speech: Speech, { question, groups, on }: HeardAs, withDay: boolean): string => {
  const whose = groups.length === 0 ? '' : ` for the ${listed(groups)}`;
  return `${speech.book.questions[question]?.offer ?? question}${whose}${withDay ? `, on ${sayDay(on, speech.today)}` : ''}`;
};

/** One cause, as the end of "because …". `lines` are the raw lines of the ledger. */
export const sayCause = (speech: Speech, lines: readonly string[], cause: Cause): string => {
  switch (cause.kind) {
    case 'entry':
      return sayEntry(speech, lines, cause);
    case 'figure':
      return `the figure ${cause.figure} has another value since ${sayDay(cause.from, speech.today)}`;
    case 'rules':
      return 'the rules themselves have changed';
    case 'heard': {
      const { words, from, to } = cause;
      const heard = (as: HeardAs): string => sayHeard(speech, as, from.on !== to.on);
      return `"${words}" was heard as ${heard(from)}, and is heard now as ${heard(to)}`;
    }
    case 'days': {
      const days = daysBetween(cause.from, cause.to);
      return days === 1 ? 'a day has passed' : `${days} days have passed`;
    }
  }
};

/** Several causes in one breath. */
export const sayCauses = (speech: Speech, lines: readonly string[], causes: readonly Cause[]): string =>
  listed(causes.map((each) => sayCause(speech, lines, each)));
