/** A series of an answer → the picture of its kind. */
import type { PictureData } from '../../engine/types.ts';
import type { Speech } from '../say/speech.ts';
import { drawGround, type GroundSeries } from './ground.ts';
import { drawGrowth, type GrowthSeries } from './growth.ts';
import { ascii, drawn } from './marks.ts';
import type { Picture } from './picture.ts';
import { drawStock, type StockSeries } from './stock.ts';
import { drawYear, type YearSeries } from './year.ts';

/**
 * Draws a picture at most 60 columns wide.
 * @param isPlain whether only ASCII characters may be used
 */
export const drawPicture = (
  speech: Speech,
  { kind, group, series }: PictureData,
  isPlain: boolean,
): Picture => {
  const marks = isPlain ? ascii : drawn;
  // The engine's own facts wrote the text, in the shape that belongs to the kind.
  const data: unknown = JSON.parse(series);
  switch (kind) {
    case 'growth':
      return drawGrowth(speech, data as GrowthSeries, group, marks);
    case 'stock':
      return drawStock(speech, data as StockSeries, group, marks);
    case 'ground':
      return drawGround(speech, data as GroundSeries, group, marks);
    case 'year':
      return drawYear(speech, data as YearSeries, group, marks);
  }
};
