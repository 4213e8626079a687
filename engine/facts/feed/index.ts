/** All facts about what birds eat. */
import { amountFacts } from './amount.ts';
import { askedFacts } from './asked.ts';
import { bagFacts } from './bags.ts';
import { conversionFacts } from './conversion.ts';
import { rationFacts } from './ration.ts';
import { recordFacts } from './records.ts';

export const feedFacts = [
  ...recordFacts,
  ...amountFacts,
  ...rationFacts,
  ...askedFacts,
  ...bagFacts,
  ...conversionFacts,
];
