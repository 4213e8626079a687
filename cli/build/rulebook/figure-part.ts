/** A figure as an adviser reads it: what it is, its values in both systems of units, its source, and the answers on it. */
import type { Figure, FigureTable, FigureValue } from '../../../engine/types.ts';
import { nameOf } from '../../say/names.ts';
import { capital } from '../../say/phrase.ts';
import { sayDay, sayValue } from '../../say/quantity.ts';
import { sayKey } from '../../say/rulebook-page.ts';
import { saySource } from '../../say/source.ts';
import type { Speech } from '../../say/speech.ts';
import { questionsUsing } from '../../say/uses.ts';
import { linkTo, placeOf } from './anchors.ts';

/** In units of both systems where they differ: sources are in either. */
const inBoth = (speech: Speech, { id, unit }: Figure, value: number): string => {
  const [us, metric] = (['us', 'metric'] as const).map((system) =>
    sayValue({ ...speech, system }, { value, unit }, id),
  );
  return us === metric ? `${us}` : `${us} (${metric})`;
};

interface Row {
  readonly keys: readonly string[];
  readonly value: number;
}

/** A table as rows, each with a key for every axis; an inner part that is one number counts for all keys below it. */
const rowsOf = (cell: number | FigureTable, keys: readonly string[] = []): readonly Row[] =>
  typeof cell === 'number'
    ? [{ keys, value: cell }]
    : Object.entries(cell).flatMap(([key, inner]) => rowsOf(inner, [...keys, key]));

const rowText = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;

const valueLines = (speech: Speech, figure: Figure, { value }: FigureValue): readonly string[] => {
  if (typeof value === 'number') return [inBoth(speech, figure, value)];
  const heads = figure.by.map(({ fact }) => nameOf(speech, fact));
  const between = figure.by.at(-1)?.between === 'line';
  return [
    rowText([...heads, 'value']),
    rowText([...heads, 'value'].map(() => '---')),
    ...rowsOf(value).map(({ keys, value: cell }) =>
      rowText([
        ...heads.map((_, at) => (keys[at] === undefined ? 'any' : sayKey(speech, figure, at, keys[at]))),
        inBoth(speech, figure, cell),
      ]),
    ),
    ...(between ? ['', 'On straight lines between these.'] : []),
  ];
};

/** A figure under a heading of its own. */
export const figurePart = (speech: Speech, figure: Figure): readonly string[] => {
  const users = questionsUsing(speech.book, figure.id).map((id) =>
    linkTo('question', id, speech.book.questions[id]?.offer ?? id),
  );
  const values = figure.values.toSorted((a, b) => (a.from < b.from ? -1 : 1));
  return [
    `#### ${placeOf('figure', figure.id)}${capital(figure.description)}`,
    '',
    ...values.flatMap((each) => [
      ...(values.length === 1 ? [] : [`Since ${sayDay(each.from, speech.today)}:`, '']),
      ...valueLines(speech, figure, each),
      '',
      `Source: ${linkTo('source', each.source, saySource(speech, each.source))}.${each.note === null ? '' : ` ${each.note}`}`,
      '',
    ]),
    `Its name: \`${figure.id}\`. ${users.length === 0 ? 'No answer rests on it directly.' : `Answers that rest on it: ${users.join('; ')}.`}`,
    '',
  ];
};
