/** The facts about growth. */
import { flockFacts } from './flock.ts';
import { liveFacts } from './live.ts';
import { planFacts } from './plan.ts';
import { weighingFacts } from './weighings.ts';

export const growthFacts = [...planFacts, ...weighingFacts, ...flockFacts, ...liveFacts];
