/** The list of all facts. Adding a model means one line here. */
import { birdFacts } from './birds.ts';
import type { Fact } from './define.ts';

const list: readonly Fact[] = [...birdFacts];

/** Every fact by its id. */
export const allFacts: ReadonlyMap<string, Fact> = new Map(list.map((fact) => [fact.id, fact]));
