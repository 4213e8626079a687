/** Facts of the processing day. */
import { askedFacts } from './asked.ts';
import { dayFacts } from './day.ts';
import { heatFacts } from './heat.ts';
import { iceFacts } from './ice.ts';
import { preparedFacts } from './prepared.ts';
import { timeFacts } from './times.ts';
import { workFacts } from './work.ts';

export const processDayFacts = [
  ...askedFacts,
  ...dayFacts,
  ...heatFacts,
  ...workFacts,
  ...timeFacts,
  ...iceFacts,
  ...preparedFacts,
];
