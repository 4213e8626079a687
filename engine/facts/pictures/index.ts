/** Facts that pictures are drawn from; their values are JSON text, small enough to stand in an answer. */
import { groundSeriesFacts } from './ground.ts';
import { growthSeriesFacts } from './growth.ts';
import { stockSeriesFacts } from './stock.ts';
import { yearSeriesFacts } from './year.ts';

export const pictureFacts = [
  ...growthSeriesFacts,
  ...stockSeriesFacts,
  ...groundSeriesFacts,
  ...yearSeriesFacts,
];
