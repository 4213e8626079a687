/** Facts behind the question whether two groups may live together. */
import { pairFacts } from './pair.ts';
import { riskFacts } from './risk.ts';
import { roomFacts } from './room.ts';

export const mixingFacts = [...pairFacts, ...riskFacts, ...roomFacts];
