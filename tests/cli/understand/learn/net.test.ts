import { expect, test } from 'vitest';
import { fromBytes, toBytes } from '../../../../cli/understand/learn/bytes.ts';
import { addRow, pack, placeOf } from '../../../../cli/understand/learn/pack.ts';
import { type Example, type Training, train } from '../../../../cli/understand/learn/train.ts';
import { weigh } from '../../../../cli/understand/learn/weigh.ts';

const training: Training = {
  hidden: 16,
  rounds: 1000,
  rate: 0.1,
  dropped: { features: 0, hidden: 0 },
};

/** One of two words alone means one thing, both or neither another: no sum of weights can tell that (Minsky and Papert 1969). */
const eitherOr: readonly Example[] = [
  { features: ['always'], topics: ['both or none'] },
  { features: ['always', 'feed', 'water'], topics: ['both or none'] },
  { features: ['always', 'feed'], topics: ['one'] },
  { features: ['always', 'water'], topics: ['one'] },
];

const likeliest = (chances: ReadonlyMap<string, number>): string | undefined =>
  [...chances].sort((one, other) => other[1] - one[1])[0]?.[0];

test('learns what no plain sum of weights could', () => {
  const weights = pack(train(eitherOr, training));
  expect(eitherOr.map(({ features }) => likeliest(weigh(weights, features).chances))).toEqual(
    eitherOr.map(({ topics }) => topics[0]),
  );
});

test('the same examples give the same bytes', () => {
  const bytes = () => toBytes(pack(train(eitherOr, training)));
  expect(bytes()).toEqual(bytes());
});

test('weights come back from their bytes as they were, also from the middle of a buffer', () => {
  const weights = pack(train(eitherOr, training));
  const bytes = toBytes(weights);
  expect(fromBytes(bytes)).toEqual(weights);
  const among = new Uint8Array(bytes.length + 3);
  among.set(bytes, 3);
  expect(fromBytes(among.subarray(3))).toEqual(weights);
});

test('half a byte a weight stays within half a step, a seventh of the widest weight of its feature', () => {
  const model = train(eitherOr, training);
  const weights = pack(model);
  for (const [feature, row] of model.rows) {
    const packed = new Float64Array(weights.hidden);
    addRow(weights, placeOf(weights, feature), 1, packed);
    const widest = Math.max(...row.map(Math.abs));
    // A scale is rounded up to the next of 255 steps.
    const step = widest / 7 + weights.unit;
    for (const [unit, weight] of row.entries())
      expect(Math.abs((packed[unit] ?? 0) - weight)).toBeLessThanOrEqual(step / 2);
  }
});

test('what the features said adds up to what the line is heard as', () => {
  const examples: readonly Example[] = [
    { features: ['feed', 'bag'], topics: ['buy'] },
    { features: ['feed', 'day'], topics: ['give'] },
    { features: ['warm', 'day'], topics: ['out'] },
  ];
  const weights = pack(train(examples, training));
  const { chances, saidFor } = weigh(weights, ['feed', 'bag', 'never met']);
  expect(likeliest(chances)).toBe('buy');
  const said = saidFor('buy');
  expect(said[2]).toBe(0);
  // A topic's pieces sum to its log odds against the average topic, but for where the units and topics stand by themselves.
  const sums = weights.topics.map((topic) => saidFor(topic).reduce((sum, each) => sum + each, 0));
  expect(sums.reduce((sum, each) => sum + each, 0)).toBeCloseTo(0, 6);
  expect(Math.max(...sums)).toBe(sums[weights.topics.indexOf('buy')]);
});
