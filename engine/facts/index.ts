/** The list of all facts. Adding a model means one line here. */
import { birdFacts } from './birds.ts';
import type { Fact } from './define.ts';
import { goingOutFacts } from './going-out.ts';
import { groundFacts } from './ground.ts';
import { nightFacts } from './nights.ts';

const list: readonly Fact[] = [
  ...birdFacts,
  ...nightFacts,
  ...goingOutFacts,
  ...groundFacts,
];

/** Every fact by its id. */
export const allFacts: ReadonlyMap<string, Fact> = new Map(list.map((fact) => [fact.id, fact]));
