/** All facts about what birds eat. */
import { amountFacts } from './amount.ts';
import { bagFacts } from './bags.ts';
import { rationFacts } from './ration.ts';
import { recordFacts } from './records.ts';

export const feedFacts = [...recordFacts, ...amountFacts, ...rationFacts, ...bagFacts];
