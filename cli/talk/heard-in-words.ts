/** How a line was taken, in words: the reading, the words that spoke for it, what was read beside it, and the runner-up. */
import type { Rulebook } from '../../engine/types.ts';
import { offerOf } from '../say/help.ts';
import { listed } from '../say/listed.ts';
import type { Token } from '../say/tokens.ts';
import type { Evidence, Heard, Reading } from '../understand/types.ts';
import { understand } from '../understand/understand.ts';
import { aboutFor, type Flock } from './flock.ts';

/** How a line is taken after the one before it, without answering it. */
export const hearLine = (flock: Flock, words: string, before: Heard | null): Heard =>
  understand(words, aboutFor(flock, before, null), flock.lexicon);

/** How many pieces of evidence are told; the rest count little. */
const mostEvidence = 5;

const inPercent = (chance: number): string => `${Math.round(chance * 100)} %`;

/** Chances that add up to nothing (a name taken by itself, a choice picked) are not told. */
const likely = ({ score }: Reading): string => (score < 1 ? ` (${inPercent(score)})` : '');

const sayEvidence = ({ idea, words, weight }: Evidence): string => {
  const side = weight > 0 ? 'for' : 'against';
  const subject = words === '' ? idea : `“${words}”`;
  const why = idea === 'wording' || words === '' ? '' : `, as ${idea.replaceAll('-', ' ')}`;
  return `${subject}${why}, speaks ${side} it (${weight > 0 ? '+' : '−'}${Math.abs(weight).toFixed(1)})`;
};

const asText = (value: unknown): string => (Array.isArray(value) ? value.join(', ') : String(value));

const fieldsOf = (values: Readonly<Record<string, unknown>>): string =>
  listed(Object.entries(values).map(([name, value]) => `${name} ${asText(value)}`));

const readBeside = (reading: Reading): readonly string[] => [
  ...(reading.groups.length > 0 ? [`about ${listed(reading.groups)}`] : []),
  ...(reading.on === null ? [] : [`on ${reading.on}`]),
  ...(reading.until === null ? [] : [`until ${reading.until}`]),
  ...(reading.days === null ? [] : [`over ${reading.days} days`]),
  ...(Object.keys(reading.slots).length > 0 ? [`with ${fieldsOf(reading.slots)}`] : []),
  ...reading.supposing.map(
    ({ what, value, unit }) => `supposing ${what} ${value}${unit === null ? '' : ` ${unit}`}`,
  ),
  ...reading.entries.map(({ kind, on, fields, missing }) => {
    const lacks = missing.length === 0 ? '' : `, without ${listed(missing)}`;
    return `a record of ${kind} on ${on}: ${fieldsOf(fields)}${lacks}`;
  }),
  ...reading.assumed.map((each) => `taking ${each}`),
];

const claimOf = (book: Rulebook, heard: Heard): string => {
  const [best] = heard.readings;
  if (best === undefined) return 'Heard as outside of what can be answered.';
  return heard.sure
    ? `Heard as ${offerOf(book, best.topic)}${likely(best)}.`
    : 'Heard in more than one way, so it would be asked back.';
};

/** Says how a line was heard. */
export const sayHeard = (book: Rulebook, heard: Heard): readonly Token[] => {
  const [best, ...others] = heard.readings;
  const rivals = heard.sure ? others.slice(0, 1) : heard.readings;
  const name = heard.sure ? 'Next likeliest' : 'Perhaps';
  return [
    { t: 'claim', text: claimOf(book, heard) },
    ...(best === undefined
      ? []
      : best.evidence
          .slice(0, mostEvidence)
          .map(
            (each, at): Token => ({ t: 'reason', n: at + 1, text: `${sayEvidence(each)}.`, outcome: null }),
          )),
    ...(best === undefined
      ? []
      : readBeside(best).map((each): Token => ({ t: 'detail', text: `Read ${each}.` }))),
    ...rivals.map(
      (each): Token => ({ t: 'next', text: `${name}: ${offerOf(book, each.topic)}${likely(each)}.` }),
    ),
    ...heard.nearest.map(
      (each): Token => ({ t: 'next', text: `Perhaps: ${offerOf(book, each.topic)}${likely(each)}.` }),
    ),
    ...(heard.hazard === undefined
      ? []
      : [{ t: 'caution' as const, text: book.words.hazards[heard.hazard] ?? '' }]),
  ];
};
