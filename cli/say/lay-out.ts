/** Tokens laid out as rows of words for one width; the same rows go to pipes and to the screen. */

import { clean } from './clean.ts';
import { columnsOf } from './columns.ts';
import { type Parts, partsOf } from './parts.ts';
import type { Token, Tone } from './tokens.ts';
import { wrap } from './wrap.ts';

export interface Span {
  readonly text: string;
  readonly tone: Tone;
}

type PictureToken = Extract<Token, { t: 'picture' }>;

/** One row of the screen, left to right. An empty row has no spans. */
export type Row = readonly Span[];

/** Rows wider than this tire the eye, however wide the window is. */
const widest = 100;
/** Below this no row can hold a lead word and a word of text. */
const narrowest = 20;
/** From this width on outcome words stand in a column of their own. */
const roomForColumn = 90;
/** The longest outcome word, `not known`, and the gap before it. */
const column = 'not known'.length + 2;

const measureOf = (width: number): number => Math.max(narrowest, Math.min(width, widest));

/** Later rows stand under the text of a numbered row, and a little in from any other lead word. */
const hangOf = ({ lead }: Parts): number => (/^\d/.test(lead) ? lead.length : Math.min(3, lead.length));

const endRows = (rows: readonly string[], parts: Parts, measure: number, hang: number): readonly Row[] => {
  const plain = rows.map((text) => [{ text, tone: parts.tone }]);
  if (parts.end === null) return plain;
  const { word, tone } = parts.end;
  const last = rows.at(-1) ?? '';
  const before = plain.slice(0, -1);
  if (measure >= roomForColumn) {
    const padded = last + ' '.repeat(Math.max(0, measure - column - columnsOf(last)) + 2);
    return [
      ...before,
      [
        { text: padded, tone: parts.tone },
        { text: word, tone },
      ],
    ];
  }
  const joined = `${last} – `;
  if (columnsOf(joined) + word.length <= measure) {
    return [
      ...before,
      [
        { text: joined, tone: parts.tone },
        { text: word, tone },
      ],
    ];
  }
  return [
    ...plain,
    [
      { text: `${' '.repeat(hang)}– `, tone: parts.tone },
      { text: word, tone },
    ],
  ];
};

const rowsOfParts = (parts: Parts, measure: number): readonly Row[] => {
  const hang = hangOf(parts);
  const room = parts.end !== null && measure >= roomForColumn ? measure - column : measure;
  const notes = parts.notes.flatMap((note) => wrap(note, measure - hang));
  return [
    ...endRows(wrap(parts.lead + parts.body, room, hang), parts, measure, hang),
    ...notes.map((text): Row => [{ text: ' '.repeat(hang) + text, tone: 'aside' }]),
  ];
};

/** The widest drawing of a picture that fits a window; one that does not is noise once wrapped, and its sentence says the same. */
export const drawingFor = ({ drawings }: PictureToken, width: number): readonly string[] =>
  drawings
    .map((lines) => lines.map((line) => clean(line).trimEnd()))
    .find((lines) => lines.every((line) => columnsOf(line) <= measureOf(width))) ?? [];

const rowsOfPicture = (picture: PictureToken, measure: number): readonly Row[] => [
  ...drawingFor(picture, measure).map((text): Row => (text === '' ? [] : [{ text, tone: 'plain' }])),
  ...wrap(clean(picture.says), measure).map((text): Row => [{ text, tone: 'aside' }]),
];

const rowsOf = (token: Token, measure: number): readonly Row[] => {
  if (token.t === 'blank') return [[]];
  if (token.t === 'picture') return rowsOfPicture(token, measure);
  return rowsOfParts(partsOf(token), measure);
};

/** Rows of at most `width` terminal columns (never fewer than 20, never more than 100). */
export const layOut = (tokens: readonly Token[], width: number): readonly Row[] =>
  tokens.flatMap((token) => rowsOf(token, measureOf(width)));
