/** Figures of the processing day, the cold and the freezer, each beside its source and whether that was read. */
import { expect, test } from 'vitest';
import { shipped } from '../helpers/flock-of.ts';

// Read (published), read in a page that relays it (relayed), from memory, or derived.
test.each([
  // J. Northcutt, University of Georgia: 8 to 12 hours with water, 2 to 3 more above 90 °F.
  ['process/feed-off-least', 8, 'northcutt-feed-off', 'published'],
  ['process/feed-off-most', 12, 'northcutt-feed-off', 'published'],
  ['process/feed-off-hot-adds', 2, 'northcutt-feed-off', 'published'],
  ['process/feed-passes-slowly', 90, 'northcutt-feed-off', 'published'],
  // Ask Extension 2014: breast 34 % of the carcass. Grower Guidelines 2007, as quoted: 72 % fast, 68 to 70 % slow.
  ['process/breast-share', 34, 'ask-extension-2014', 'published'],
  ['process/dressing', { fast: 72, slow: 68, other: 70 }, 'dressing-yields', 'relayed'],
  // Former 9 CFR 381.66(b)(2): 4, 6 and 8 hours below 4, up to 8 and above 8 lb; the numbers are from memory.
  ['keep/chill-light', 4, 'former-usda-chill', 'memory'],
  ['keep/chill-heavy', 8, 'former-usda-chill', 'memory'],
  ['keep/chill-hours', { light: 4, middle: 6, heavy: 8 }, 'former-usda-chill', 'memory'],
  // FSIS: giblets at 40 °F within 2 hours; 165 °F; 2 hours out, 1 above 90 °F; fridge 40 °F, freezer 0 °F.
  ['keep/giblet-hours', 2, 'fsis-giblets', 'published'],
  ['keep/cooked-at', 165, 'fsis-basics', 'published'],
  ['keep/out-most', 2, 'fsis-basics', 'published'],
  ['keep/out-most-hot', 1, 'fsis-basics', 'published'],
  ['keep/out-hot', 90, 'fsis-basics', 'published'],
  ['keep/refrigerator', 40, 'fsis-basics', 'published'],
  ['keep/freezer', 0, 'fsis-basics', 'published'],
  // BC home-freezing booklet: chill 24 hours before freezing. USDA chart: 12, 9 and 3 to 4 months.
  ['keep/rest', 24, 'bc-freezing', 'published'],
  ['keep/months', { whole: 12, parts: 9, giblets: 4 }, 'usda-storage-chart', 'relayed'],
  // Fraser and Lackey 2004: up to 35 lb/ft³ packed tight. USDA, relayed: 2 to 3 lb a cubic foot a day.
  ['freezer/parts', 35, 'fraser-lackey-2004', 'published'],
  ['freezer/rate', 2, 'usda-freezing', 'relayed'],
  // PNW 665, NC Choices and the University of Wisconsin: break-even and net.
  ['money/budget-fast', 5.2, 'pnw-665', 'published'],
  ['money/budget-slow', 7.87, 'pnw-665', 'published'],
  ['money/budget-small-farm', 6.42, 'nc-choices', 'published'],
  ['money/budget-net', 2.43, 'uw-2002', 'published'],
  // USDA ERS, 2021: 68.1 lb without bones for each person in a year.
  ['household/average-boneless', 68.1, 'ers-2021', 'relayed'],
])('%s is %o by %s, %s', (figure, value, source, standing) => {
  expect(shipped.figures[figure]?.values.at(-1)).toMatchObject({ value, source });
  expect(shipped.sources[source]?.standing).toBe(standing);
});
