/** The list of all facts. Adding a model means one line here. */
import { birdFacts } from './birds.ts';
import { brooderFacts } from './brooder.ts';
import { brooderBalanceFacts } from './brooder-balance.ts';
import { brooderFloorFacts } from './brooder-floor.ts';
import { brooderLampFacts } from './brooder-lamps.ts';
import { brooderSetupFacts } from './brooder-setup.ts';
import { chicksToComeFacts } from './chicks-to-come.ts';
import type { Fact } from './define.ts';
import { feedFacts } from './feed/index.ts';
import { feedStockFacts } from './feed-stock/index.ts';
import { freeBirdFacts } from './free-birds.ts';
import { freezerStockFacts } from './freezer-stock.ts';
import { goingOutFacts } from './going-out.ts';
import { groundFacts } from './ground/index.ts';
import { growthFacts } from './growth/index.ts';
import { headcountFacts } from './headcount.ts';
import { hunterFacts } from './hunters/index.ts';
import { keepingFacts } from './keeping/index.ts';
import { keyDateFacts } from './key-dates.ts';
import { lossFacts } from './losses.ts';
import { lossWeekFacts } from './losses-by-week.ts';
import { lossSpanFacts } from './losses-in-span.ts';
import { meatYieldFacts } from './meat-yield.ts';
import { mixingFacts } from './mixing/index.ts';
import { moneyFacts } from './money/index.ts';
import { nightFacts } from './nights.ts';
import { pictureFacts } from './pictures/index.ts';
import { planningFacts } from './planning/index.ts';
import { processFacts } from './process.ts';
import { processDayFacts } from './process-day/index.ts';
import { roomFacts } from './room.ts';
import { searchFacts } from './search.ts';
import { seasonFacts } from './season/index.ts';
import { sellingFacts } from './selling.ts';
import { shareFacts } from './shares.ts';
import { sicknessFacts } from './sickness.ts';
import { toldFacts } from './told.ts';
import { troughFacts } from './trough.ts';
import { usualLossFacts } from './usual-losses.ts';
import { waterFacts } from './water.ts';
import { weatherFacts } from './weather/index.ts';
import { weekendFacts } from './weekends.ts';

const list: readonly Fact[] = [
  ...birdFacts,
  ...nightFacts,
  ...goingOutFacts,
  ...groundFacts,
  ...mixingFacts,
  ...searchFacts,
  ...growthFacts,
  ...processFacts,
  ...processDayFacts,
  ...keepingFacts,
  ...meatYieldFacts,
  ...weekendFacts,
  ...keyDateFacts,
  ...pictureFacts,
  ...brooderFacts,
  ...brooderFloorFacts,
  ...brooderBalanceFacts,
  ...brooderLampFacts,
  ...chicksToComeFacts,
  ...brooderSetupFacts,
  ...roomFacts,
  ...troughFacts,
  ...headcountFacts,
  ...toldFacts,
  ...lossFacts,
  ...lossWeekFacts,
  ...lossSpanFacts,
  ...hunterFacts,
  ...sicknessFacts,
  ...usualLossFacts,
  ...feedFacts,
  ...feedStockFacts,
  ...waterFacts,
  ...weatherFacts,
  ...planningFacts,
  ...seasonFacts,
  ...moneyFacts,
  ...freezerStockFacts,
  ...shareFacts,
  ...freeBirdFacts,
  ...sellingFacts,
];

/** Every fact by its id. */
export const allFacts: ReadonlyMap<string, Fact> = new Map(list.map((fact) => [fact.id, fact]));
