/** What a picture is when it is drawn, and how it is worded. */
import type { Speech } from '../say/speech.ts';
import type { Marks } from './marks.ts';

/** Lines of text, and a sentence that says the same to who does not see them. */
export interface Picture {
  readonly lines: readonly string[];
  readonly says: string;
}

/** Draws one kind of series. */
export type Draw<Series> = (speech: Speech, series: Series, group: string | null, marks: Marks) => Picture;

/** Columns of the widest picture: it fits a narrow terminal. */
export const width = 60;

/** Several pictures as one, an empty line between them; null where there is none. */
export const joinPictures = (pictures: readonly Picture[]): Picture | null =>
  pictures.length === 0
    ? null
    : {
        lines: pictures.flatMap(({ lines }, at) => (at === 0 ? lines : ['', ...lines])),
        says: pictures.map(({ says }) => says).join(' '),
      };
