/** All facts about what the weather is to the birds. */
import { coldFacts } from './cold.ts';
import { dayFacts } from './day.ts';
import { heatFacts } from './heat.ts';
import { hourFacts } from './hours.ts';
import { outlookFacts } from './outlook.ts';

export const weatherFacts = [...dayFacts, ...heatFacts, ...hourFacts, ...coldFacts, ...outlookFacts];
