/** All facts about feed in hand and feed to buy. */
import { needFacts } from './need.ts';
import { rationNeedFacts } from './ration-need.ts';
import { rationStockFacts } from './ration-stock.ts';
import { runDownFacts } from './run-down.ts';
import { stockFacts } from './stock.ts';

export const feedStockFacts = [
  ...stockFacts,
  ...rationStockFacts,
  ...runDownFacts,
  ...needFacts,
  ...rationNeedFacts,
];
