/** The list of all facts. Adding a model means one line here. */
import { birdFacts } from './birds.ts';
import { brooderFacts } from './brooder.ts';
import { brooderFloorFacts } from './brooder-floor.ts';
import type { Fact } from './define.ts';
import { feedFacts } from './feed/index.ts';
import { feedStockFacts } from './feed-stock/index.ts';
import { goingOutFacts } from './going-out.ts';
import { groundFacts } from './ground.ts';
import { growthFacts } from './growth/index.ts';
import { headcountFacts } from './headcount.ts';
import { lossFacts } from './losses.ts';
import { nightFacts } from './nights.ts';
import { processFacts } from './process.ts';
import { searchFacts } from './search.ts';
import { usualLossFacts } from './usual-losses.ts';
import { waterFacts } from './water.ts';

const list: readonly Fact[] = [
  ...birdFacts,
  ...nightFacts,
  ...goingOutFacts,
  ...groundFacts,
  ...searchFacts,
  ...growthFacts,
  ...processFacts,
  ...brooderFacts,
  ...brooderFloorFacts,
  ...headcountFacts,
  ...lossFacts,
  ...usualLossFacts,
  ...feedFacts,
  ...feedStockFacts,
  ...waterFacts,
];

/** Every fact by its id. */
export const allFacts: ReadonlyMap<string, Fact> = new Map(list.map((fact) => [fact.id, fact]));
