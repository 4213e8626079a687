/** The builders of drafts by entry kind. A new kind is one file beside this one and one line here. */
import { buildArrive } from './arrive.ts';
import { buildBuy } from './buy.ts';
import { buildEat } from './eat.ts';
import { buildFeed } from './feed.ts';
import { buildFigure } from './figure.ts';
import { buildKeep } from './keep.ts';
import { buildLoss } from './loss.ts';
import { buildMove } from './move.ts';
import { buildNote } from './note.ts';
import { buildOut } from './out.ts';
import { buildProcess } from './process.ts';
import { buildSetting } from './setting.ts';
import { buildShare } from './share.ts';
import { buildSign } from './sign.ts';
import type { Build } from './told.ts';
import { buildWeather } from './weather.ts';
import { buildWeigh } from './weigh.ts';

export const builders: Readonly<Record<string, Build>> = {
  arrive: buildArrive,
  loss: buildLoss,
  feed: buildFeed,
  buy: buildBuy,
  weigh: buildWeigh,
  move: buildMove,
  out: buildOut,
  weather: buildWeather,
  sign: buildSign,
  process: buildProcess,
  keep: buildKeep,
  share: buildShare,
  eat: buildEat,
  setting: buildSetting,
  figure: buildFigure,
  note: buildNote,
};
