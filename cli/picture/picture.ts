/** What a picture is when it is drawn, and how it is worded. */
import type { Speech } from '../say/speech.ts';
import type { Marks } from './marks.ts';

/** Lines of text, and a sentence that says the same to who does not see them. */
export interface Picture {
  readonly lines: readonly string[];
  readonly says: string;
}

/** What a picture is drawn with, and how many columns it may take. */
export interface Frame {
  readonly marks: Marks;
  readonly width: number;
}

/** Draws one kind of series. */
export type Draw<Series> = (speech: Speech, series: Series, group: string | null, frame: Frame) => Picture;

/** Columns that pictures are drawn for, widest first: each window takes the widest that it has room for. */
export const widths = [100, 80, 60] as const;

/** Columns of the picture in data, where no window is known. */
export const dataWidth = 60;

/** Several pictures as one, an empty line between them; null where there is none. */
export const joinPictures = (pictures: readonly Picture[]): Picture | null =>
  pictures.length === 0
    ? null
    : {
        lines: pictures.flatMap(({ lines }, at) => (at === 0 ? lines : ['', ...lines])),
        says: pictures.map(({ says }) => says).join(' '),
      };
