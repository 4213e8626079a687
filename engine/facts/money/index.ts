/** All facts about money: what batches cost, what a bird must bring, and how a batch turned out. */
import { batchFacts } from './batch.ts';
import { besideFacts } from './beside.ts';
import { eatenFacts } from './eaten.ts';
import { heatMoneyFacts } from './heat-money.ts';
import { largestFacts } from './largest.ts';
import { leftOverFacts } from './left-over.ts';
import { lineFacts } from './lines.ts';
import { plannedFacts } from './planned.ts';
import { priceFacts } from './price.ts';
import { toComeFacts } from './to-come.ts';
import { toEndFacts } from './to-end.ts';
import { totalFacts } from './totals.ts';

export const moneyFacts = [
  ...eatenFacts,
  ...toComeFacts,
  ...toEndFacts,
  ...leftOverFacts,
  ...lineFacts,
  ...heatMoneyFacts,
  ...totalFacts,
  ...largestFacts,
  ...plannedFacts,
  ...priceFacts,
  ...batchFacts,
  ...besideFacts,
];
