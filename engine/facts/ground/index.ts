/** Facts of the pens' way over the ground. */
import { askedFacts } from './asked.ts';
import { besideFacts } from './beside.ts';
import { layoutFacts } from './layout.ts';
import { moveFacts } from './moves.ts';
import { nitrogenFacts } from './nitrogen.ts';
import { penFacts } from './pens.ts';
import { groundUseFacts } from './use.ts';
import { wayFacts } from './way.ts';

export const groundFacts = [
  ...askedFacts,
  ...layoutFacts,
  ...penFacts,
  ...moveFacts,
  ...wayFacts,
  ...besideFacts,
  ...groundUseFacts,
  ...nitrogenFacts,
];
