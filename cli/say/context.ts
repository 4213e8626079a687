/** One line of the flock file in its surroundings: what stands there, what it moved, and which answers rest on it. */
import type { Answer, Bearing, Difference, Entry, Moved, Resting, Value } from '../../engine/types.ts';
import { sayClaim } from './answer.ts';
import { valued } from './as-json.ts';
import { listed } from './listed.ts';
import { nameOf } from './names.ts';
import { capital } from './phrase.ts';
import { sayDay, sayTime, sayValue } from './quantity.ts';
import { asKept, sayRecord } from './record.ts';
import type { Speech } from './speech.ts';
import type { Token } from './tokens.ts';

export interface Context {
  readonly line: number;
  /** Raw lines of the file, line 1 first. */
  readonly lines: readonly string[];
  /** Those before and behind it that are shown. */
  readonly around: readonly number[];
  /** The entries of all lines that can be read, whether they count or not, undos and corrections with the line they mean. */
  readonly entries: ReadonlyMap<number, Entry>;
  /** Whether it counts. */
  readonly stands: boolean;
  readonly bearing: Bearing;
}

/** More differences of one answer than this are not read any more; `--json` has them all. */
const mostDifferences = 3;

/** What stands on a line, in words, or as it stands where it is no entry that can be read. */
const sayWhatStands = (speech: Speech, { lines, entries }: Context, line: number): string => {
  const entry = entries.get(line);
  const raw = lines[line - 1] ?? '';
  if (entry === undefined) return raw.trim() === '' ? 'nothing.' : raw;
  if (entry.kind === 'undo') return `takes line ${entry.fields.line} back.`;
  if (entry.kind === 'correct') return `puts line ${entry.fields.line} right: ${entry.fields.with}`;
  return sayRecord(speech, { ...entry, fields: asKept(entry) });
};

const sayWritten = (speech: Speech, { written, by }: Entry): readonly Token[] => {
  if (written === null && by === null) return [];
  const when = written === null ? '' : ` on ${sayTime(written, speech.today)}`;
  return [{ t: 'detail', text: `Written${by === null ? '' : ` by ${by}`}${when}.` }];
};

const sayStanding = ({ line, entries, stands, bearing }: Context): string => {
  const revised = bearing.revised.map(({ line: by, how }) =>
    how === 'undone' ? `taken back on line ${by}` : `put right on line ${by}`,
  );
  if (revised.length > 0) return `It was ${listed(revised)}.`;
  if (!entries.has(line)) return 'It is no entry that can be read: nothing is made of it.';
  if (bearing.of !== null) return `It is about line ${bearing.of}.`;
  return stands ? 'It counts.' : 'It does not count.';
};

const whose = (group: string | null): string => (group === null ? '' : ` (${group})`);

/** Nothing where the two look the same as they are shown. */
const sayMoved = (speech: Speech, { fact, group, unit, value, without }: Moved): readonly string[] => {
  const [is, was] = [value, without].map((each) => sayValue(speech, { value: each, unit }, fact));
  return is === was ? [] : [`${capital(nameOf(speech, fact))}${whose(group)}: ${is}, without it ${was}.`];
};

const sayPoint = (speech: Speech, { what, fact, unit }: Difference, value: Value | null): string => {
  if (what === 'task' && value === null) return 'not to do';
  if (what === 'task' && value === true) return 'to do';
  return value === null ? 'not known' : sayValue(speech, { value, unit }, fact ?? '');
};

const sayDifferences = (speech: Speech, differences: readonly Difference[]): string | null => {
  const seen = differences
    .map((each) => ({
      each,
      name: each.fact === null ? each.id : nameOf(speech, each.fact),
      is: sayPoint(speech, each, each.to),
      without: sayPoint(speech, each, each.from),
    }))
    .filter(({ is, without }) => is !== without);
  if (seen.length === 0) return null;
  const said = seen
    .slice(0, mostDifferences)
    .map(({ each, name, is, without }) => `${name}${whose(each.group)} ${is}, without it ${without}`);
  return `${said.join('; ')}.`;
};

const claimsOf = (speech: Speech, { parts }: Answer): ReadonlyMap<string | null, string> =>
  new Map(
    parts
      .filter(({ headline, verdict }) => headline !== null || verdict !== 'list')
      .map((part) => [part.group, capital(sayClaim(speech, part))]),
  );

/** The claims that would be others without the line, else the values that would; null where nobody would see a difference. */
const sayResting = (speech: Speech, { question, is, without, differences }: Resting): string | null => {
  const offer = capital(speech.book.questions[question]?.offer ?? question);
  const [now, then] = [claimsOf(speech, is), claimsOf(speech, without)];
  const claims = [...now].filter(([group, claim]) => then.get(group) !== claim);
  const said = claims.map(([group, claim]) => `${claim} Without it: ${then.get(group) ?? 'nothing to say.'}`);
  const text = said.length > 0 ? said.join(' ') : sayDifferences(speech, differences);
  return text === null ? null : `${offer}: ${text}`;
};

const heading = (text: string, below: readonly string[]): readonly Token[] =>
  below.length === 0
    ? []
    : [{ t: 'heading', text }, ...below.map((each): Token => ({ t: 'detail', text: each }))];

/** All of it in words. Answers are those of the speech's today. */
export const sayContext = (speech: Speech, context: Context): readonly Token[] => {
  const { line, around, bearing } = context;
  const entry = context.entries.get(line);
  const resting = bearing.answers.map((each) => ({ each, says: sayResting(speech, each) }));
  const turned = resting.flatMap(({ says }) => (says === null ? [] : [says]));
  const read = resting
    .filter(({ says }) => says === null)
    .map(({ each }) => speech.book.questions[each.question]?.offer ?? each.question);
  return [
    { t: 'claim', text: `Line ${line}: ${sayWhatStands(speech, context, line)}` },
    ...(entry === undefined ? [] : sayWritten(speech, entry)),
    { t: 'detail', text: sayStanding(context) },
    ...heading(
      'Around it',
      around.map((each) => `Line ${each}: ${sayWhatStands(speech, context, each)}`),
    ),
    ...heading(
      'What it moved',
      bearing.moved.flatMap((each) => sayMoved(speech, each)),
    ),
    ...heading(`Answers of ${sayDay(speech.today, speech.today)} that would be others without it`, turned),
    ...(read.length === 0
      ? []
      : [
          {
            t: 'detail',
            text: `${entry === undefined ? 'It makes doubtful' : 'Read also for'}: ${read.join('; ')}.`,
          } as const,
        ]),
    ...(resting.length === 0 ? [{ t: 'detail', text: 'No answer of today rests on it.' } as const] : []),
  ];
};

const rawLine = (lines: readonly string[], line: number) => ({ line, raw: lines[line - 1] ?? '' });

/** The same as data, values in the units of the place. */
export const contextAsJson = (speech: Speech, context: Context): object => {
  const { line, lines, around, stands, bearing } = context;
  const entry = context.entries.get(line);
  const value = (of: Value | null, unit: string | null, fact: string | null) =>
    valued(speech, of, unit, fact ?? '').value;
  return {
    ...rawLine(lines, line),
    kind: entry?.kind ?? null,
    on: entry?.on ?? null,
    by: entry?.by ?? null,
    written: entry?.written ?? null,
    counts: stands,
    of: bearing.of,
    revised: bearing.revised,
    around: around.map((each) => rawLine(lines, each)),
    moved: bearing.moved.map((each) => ({
      fact: each.fact,
      group: each.group,
      value: value(each.value, each.unit, each.fact),
      without: value(each.without, each.unit, each.fact),
      unit: valued(speech, each.value ?? each.without, each.unit, each.fact).unit,
    })),
    answers: bearing.answers.map(({ question, differences }) => ({
      question,
      differences: differences.map(({ what, id, group, fact, unit, from, to }) => ({
        what,
        id,
        group,
        value: value(to, unit, fact),
        without: value(from, unit, fact),
        unit: valued(speech, to ?? from, unit, fact ?? '').unit,
      })),
    })),
  };
};
