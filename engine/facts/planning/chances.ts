/** The chance that enough of an order live to be processed, and the smallest order that is sure enough. */
import { betaBinomialTail, binomialTail } from '../sums/count-tails.ts';
import { firstWhere } from '../sums/search.ts';

/** What an order can expect: the share lost from the box to processing, and how many birds that share rests on; none where it is taken as known. */
export interface Prospect {
  readonly loss: number;
  readonly restsOn: number | null;
}

/** An order this many times the birds wanted is no plan any more. */
const mostTimes = 20;

/**
 * Chance, 0..1, that at least `wanted` of `order` chicks reach processing. Own past flocks make the share an estimate
 * (beta-binomial); without them it is taken as it stands (binomial).
 */
export const chanceOf = (order: number, wanted: number, { loss, restsOn }: Prospect): number =>
  restsOn === null || loss <= 0 || loss >= 1
    ? binomialTail(order, 1 - loss, wanted)
    : betaBinomialTail(order, (1 - loss) * restsOn, loss * restsOn, wanted);

/** The smallest order with at least this chance; undefined where no order within reason has it. */
export const smallestOrder = (wanted: number, certainty: number, prospect: Prospect): number | undefined =>
  firstWhere(wanted, wanted * mostTimes, (order) => chanceOf(order, wanted, prospect) >= certainty);
