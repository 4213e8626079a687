/** Birds processed, from words. */
import { spansOf } from '../spans.ts';
import { readCount } from './count.ts';
import { pickGroup } from './group.ts';
import { ownUnit, readWeights } from './mass.ts';
import { type Build, decimal, known, lacking, numbers, says, type Told, written } from './told.ts';

const isAll = (told: Told): boolean =>
  says(told, 'all the', 'all of them', 'the rest', 'rest of', 'the last of', 'all done');

const countIn = (told: Told, group: string | null): { count: number | null; assumed: readonly string[] } => {
  const count = readCount(told);
  if (count !== null) return { count, assumed: [] };
  const alive = told.about.groups.find((each) => each.name === group)?.alive;
  return alive !== undefined && isAll(told)
    ? { count: alive, assumed: [`taking all as ${alive}, those alive on record`] }
    : { count: null, assumed: [] };
};

/** Words that make one weight the mean; without them it is that of all. */
const means = ['average', 'averaged', 'averaging', 'mean', 'each', 'apiece'];

export const buildProcess: Build = (told) => {
  const picked = pickGroup(told, () => true);
  const { count, assumed } = countIn(told, picked.group);
  const head = numbers(told).filter((span) => span.value === count);
  const { weights, assumed: unitAssumed } = readWeights(told, head.slice(0, 1));
  const [first] = weights;
  const isOneOfMany = says(told, 'biggest', 'smallest', 'heaviest', 'lightest', 'best', 'largest');
  const isTotal =
    weights.length === 1 && !isOneOfMany && !says(told, ...means) && (count === null || count > 1);
  const isMean = says(told, ...means) && weights.length === 1;
  const mean = isMean
    ? spansOf(told.line.spans, 'quantity').find((span) => span.dimension === 'mass')
    : undefined;
  const meanValue = mean?.value ?? Number.parseFloat(first ?? '');
  const dressed = isTotal
    ? first
    : isMean && count !== null
      ? written(meanValue * count, mean?.unit ?? ownUnit(told).id)
      : undefined;
  const fields = {
    group: picked.group,
    count,
    dressed: dressed ?? null,
    weights: isTotal || isMean || weights.length !== count ? null : weights,
  };
  return {
    fields: known(fields),
    missing: lacking(fields, 'group', 'count'),
    assumed: [
      ...picked.assumed,
      ...assumed,
      ...(weights.length > 0 ? unitAssumed : []),
      ...(isMean && count !== null ? [`taking ${decimal(meanValue)} as the mean of ${count}`] : []),
    ],
  };
};
