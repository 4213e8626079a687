/** A finished batch beside the keeper's others: what the meat cost more or less, and which cause made most of it. */
import type { Group } from '../../types.ts';
import { defineFact, type Fact, type Reader } from '../define.ts';

/** What the price of a weight of meat is made of. Money a kg, kg of feed a kg, money a kg of feed, birds, kg. */
export interface Make {
  readonly feedRatio: number;
  readonly feedPrice: number;
  /** All money but feed for each bird that came alive. */
  readonly rest: number;
  readonly survival: number;
  readonly carcass: number;
}

const each = [
  'batch-stage',
  'batch-cost',
  'cost-feed',
  'feed-eaten',
  'carcass-so-far',
  'processed',
  'arrived-alive',
  'batch-per-weight',
  'batch-survival',
  'batch-days',
  'batch-feed-ratio',
  'carcass-mean',
];

const mean = (values: readonly number[]): number | undefined =>
  values.length === 0 ? undefined : values.reduce((sum, one) => sum + one, 0) / values.length;

/** What of a finished group is known; undefined unless all of it is. */
const makeOf = (values: ReadonlyMap<string, number | undefined>): Make | undefined => {
  const [cost, feed, eaten, meat, processed, arrived] = [
    'batch-cost',
    'cost-feed',
    'feed-eaten',
    'carcass-so-far',
    'processed',
    'arrived-alive',
  ].map((fact) => values.get(fact));
  if (!cost || feed === undefined || !eaten || !meat || !processed || !arrived) return undefined;
  return {
    feedRatio: eaten / meat,
    feedPrice: feed / eaten,
    rest: (cost - feed) / arrived,
    survival: processed / arrived,
    carcass: meat / processed,
  };
};

/** Facts of every group by its name. */
const tableOf = (read: Reader): ReadonlyMap<string, ReadonlyMap<string, number | string | undefined>> => {
  const columns = each.map((fact) => ({ fact, rows: read.each(fact) }));
  const names = columns[0]?.rows.map(({ group }: { group: Group }) => group.name) ?? [];
  return new Map(
    names.map((name, row) => [
      name,
      new Map(
        columns.map(({ fact, rows }) => {
          const value = rows[row]?.value;
          return [fact, typeof value === 'boolean' ? undefined : value];
        }),
      ),
    ]),
  );
};

const numbersOf = (row: ReadonlyMap<string, number | string | undefined>): Map<string, number | undefined> =>
  new Map([...row].map(([fact, value]) => [fact, typeof value === 'number' ? value : undefined]));

/** The keeper's other finished batches; none to hold an unfinished one against. */
const others = (read: Reader): readonly Map<string, number | undefined>[] =>
  read.text('batch-stage') !== 'done'
    ? []
    : [...tableOf(read)]
        .filter(([name, row]) => name !== read.group.name && row.get('batch-stage') === 'done')
        .map(([, row]) => numbersOf(row));

const meanOfOthers = (id: string, unit: string, fact: string): Fact =>
  defineFact({
    id,
    unit,
    needs: ['batch-stage'],
    each,
    compute: (read) =>
      mean(
        others(read).flatMap((row) => {
          const value = row.get(fact);
          return value === undefined ? [] : [value];
        }),
      ),
  });

/** One batch less another, by cause, money a kg. The parts add up to the whole difference exactly. */
export const causesOf = (own: Make, other: Make): Readonly<Record<string, number>> => ({
  'feed-eaten': (own.feedRatio - other.feedRatio) * other.feedPrice,
  'the-price-of-feed': own.feedRatio * (own.feedPrice - other.feedPrice),
  losses: own.rest / (own.survival * own.carcass) - own.rest / (other.survival * own.carcass),
  'the-size-of-the-birds':
    own.rest / (other.survival * own.carcass) - own.rest / (other.survival * other.carcass),
  'all-else-that-was-bought': (own.rest - other.rest) / (other.survival * other.carcass),
});

const meanMake = (makes: readonly Make[]): Make | undefined => {
  const [first] = makes;
  if (first === undefined) return undefined;
  const of = (key: keyof Make): number => mean(makes.map((make) => make[key])) ?? 0;
  return {
    feedRatio: of('feedRatio'),
    feedPrice: of('feedPrice'),
    rest: of('rest'),
    survival: of('survival'),
    carcass: of('carcass'),
  };
};

/** The cause that made most of the difference, with what it made. */
const largestCause = (read: Reader): readonly [string, number] | undefined => {
  if (read.text('batch-stage') !== 'done') return undefined;
  const table = tableOf(read);
  const row = table.get(read.group.name);
  const own = row === undefined ? undefined : makeOf(numbersOf(row));
  const other = meanMake(others(read).flatMap((each) => makeOf(each) ?? []));
  if (own === undefined || other === undefined) return undefined;
  return Object.entries(causesOf(own, other)).sort(([, a], [, b]) => Math.abs(b) - Math.abs(a))[0];
};

export const besideFacts = [
  meanOfOthers('others-per-weight', 'money/kg', 'batch-per-weight'),
  meanOfOthers('others-survival', 'ratio', 'batch-survival'),
  meanOfOthers('others-carcass', 'kg', 'carcass-mean'),
  meanOfOthers('others-days', 'day', 'batch-days'),
  meanOfOthers('others-feed-ratio', 'to-one', 'batch-feed-ratio'),
  defineFact({
    id: 'dearer-by',
    unit: 'money/kg',
    needs: ['batch-per-weight', 'others-per-weight'],
    compute: (read) => read.number('batch-per-weight') - read.number('others-per-weight'),
  }),
  defineFact({
    id: 'cheaper-by',
    unit: 'money/kg',
    needs: ['dearer-by'],
    compute: (read) => -read.number('dearer-by'),
  }),
  defineFact({
    id: 'largest-cause',
    unit: 'named',
    needs: ['batch-stage'],
    each,
    compute: (read) => largestCause(read)?.[0],
  }),
  defineFact({
    id: 'largest-cause-makes',
    unit: 'money/kg',
    needs: ['batch-stage'],
    each,
    compute: (read) => largestCause(read)?.[1],
  }),
];
