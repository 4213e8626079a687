/** All facts of planning: the household's need, orders, freezer room and birds kept on. */
import { freezerFacts } from './freezer.ts';
import { householdFacts } from './household.ts';
import { keepingFacts } from './keeping.ts';
import { orderLimitFacts } from './order-limits.ts';
import { orderFacts } from './order-size.ts';

export const planningFacts = [
  ...householdFacts,
  ...orderFacts,
  ...orderLimitFacts,
  ...freezerFacts,
  ...keepingFacts,
];
