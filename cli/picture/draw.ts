/** A series of an answer → the picture of its kind. */
import type { PictureData } from '../../engine/types.ts';
import type { Speech } from '../say/speech.ts';
import type { Token } from '../say/tokens.ts';
import { drawGround, type GroundSeries } from './ground.ts';
import { drawGrowth, type GrowthSeries } from './growth.ts';
import { ascii, drawn } from './marks.ts';
import { dataWidth, type Picture, widths } from './picture.ts';
import { drawStock, type StockSeries } from './stock.ts';
import { drawYear, type YearSeries } from './year.ts';

/**
 * Draws a picture.
 * @param isPlain whether only ASCII characters may be used
 * @param width the most columns that it may take, 60 at least
 */
export const drawPicture = (
  speech: Speech,
  { kind, group, series }: PictureData,
  isPlain: boolean,
  width: number = dataWidth,
): Picture => {
  const frame = { marks: isPlain ? ascii : drawn, width };
  // The engine's own facts wrote the text, in the shape that belongs to the kind.
  const data: unknown = JSON.parse(series);
  switch (kind) {
    case 'growth':
      return drawGrowth(speech, data as GrowthSeries, group, frame);
    case 'stock':
      return drawStock(speech, data as StockSeries, group, frame);
    case 'ground':
      return drawGround(speech, data as GroundSeries, group, frame);
    case 'year':
      return drawYear(speech, data as YearSeries, group, frame);
  }
};

/** The same picture for windows of each width, with the sentence that says what it shows. */
export const pictureToken = (speech: Speech, data: PictureData, isPlain: boolean): Token => {
  const drawings = widths.map((width) => drawPicture(speech, data, isPlain, width));
  return { t: 'picture', drawings: drawings.map(({ lines }) => lines), says: drawings[0]?.says ?? '' };
};
