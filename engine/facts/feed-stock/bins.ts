/** Feed in hand by ration: what each ration's bags held, and which bags are opened when those of the own ration are empty. */
import type { Reader } from '../define.ts';
import { type Ration, rations } from '../feed/ration.ts';

/** Bags of a named ration, or of feed of which no ration was said. */
export const bins = [...rations, 'plain'] as const;
export type Bin = (typeof bins)[number];

/** kg in each. */
export type Stock = Record<Bin, number>;

export const emptyStock = (): Stock => ({ starter: 0, grower: 0, finisher: 0, plain: 0 });

/** All of it together, kg. */
export const massIn = (stock: Readonly<Stock>): number => bins.reduce((sum, bin) => sum + stock[bin], 0);

/** The bin that feed of a name goes into; a name that is no ration for meat birds says nothing about whom it suits. */
export const binOf = (name: string | null): Bin => rations.find((ration) => ration === name) ?? 'plain';

/** Rations for younger birds, the nearest first: older birds may have them. */
const youngerThan = (ration: Ration): readonly Bin[] => rations.slice(0, rations.indexOf(ration)).reverse();

const olderThan = (ration: Ration): readonly Bin[] => rations.slice(rations.indexOf(ration) + 1);

/** Takes as much as there is from one bin. @returns what is still wanted, kg */
const draw = (stock: Stock, bin: Bin, wanted: number): number => {
  const taken = Math.min(stock[bin], wanted);
  stock[bin] -= taken;
  return wanted - taken;
};

/** What is left in each bin; together it is all that was there less all that was taken, and no bin is below nothing. */
export const leftOf = (put: Readonly<Stock>, taken: Readonly<Record<Ration, number>>): Stock => {
  const stock = { ...put };
  const wanted = { ...taken };
  const drawFrom = (binsFor: (ration: Ration) => readonly Bin[]): void => {
    for (const ration of rations)
      for (const bin of binsFor(ration)) wanted[ration] = draw(stock, bin, wanted[ration]);
  };
  drawFrom((ration) => [ration]);
  drawFrom(() => ['plain']);
  drawFrom(youngerThan);
  // What was eaten was there: bags of the wrong ration were opened before the birds went hungry.
  drawFrom(olderThan);
  return stock;
};

/** Feeds so much of a ration from what suits its age. @returns what is lacking, kg */
export const feedFrom = (stock: Stock, ration: Ration, wanted: number): number =>
  [ration, 'plain' as const, ...youngerThan(ration)].reduce((left, bin) => draw(stock, bin, left), wanted);

/** What is left in each bin as worked out by the facts of that name; the fact declares `binNeeds`. */
export const stockLeft = (read: Reader): Stock => {
  const stock = emptyStock();
  for (const bin of bins) stock[bin] = read.number(`${bin}-left`);
  return stock;
};

export const binNeeds = bins.map((bin) => `${bin}-left`);
