/** How many chicks to order so that the wanted number reach processing as surely as wanted. */
import { addDays } from '../../day.ts';
import type { Value } from '../../types.ts';
import { defineFact, type Fact, type Reader } from '../define.ts';
import { settingNumber } from '../setting.ts';
import { wholeUp } from '../sums/whole.ts';
import { chanceOf, type Prospect, smallestOrder } from './chances.ts';
import { readyAge, readyFigures, readyNeeds, usualKind } from './kind-ready.ts';

/** What a fact must declare to use `prospectOf`. */
export const prospectNeeds = ['order-loss', 'past-exposure'];
export const prospectFigures = ['losses/table-counts-as'];

/** Own flocks make the share an estimate: it is as sure as the birds that it rests on are many. */
export const prospectOf = (read: Reader): Prospect => {
  const past = read.number('past-exposure');
  return {
    loss: read.number('order-loss'),
    restsOn: past > 0 ? read.figure('losses/table-counts-as') + past : null,
  };
};

const orderNeeds = ['birds-wanted', ...prospectNeeds];

/** The chance that an order has which is so many birds larger than the one advised. */
const chanceBeside = (id: string, by: number): readonly Fact[] => [
  defineFact({
    id: `order-${id}`,
    unit: 'bird',
    per: 'flock',
    needs: ['order', 'birds-wanted'],
    compute: (read) => Math.max(read.number('birds-wanted'), read.number('order') + by),
  }),
  defineFact({
    id: `chance-${id}`,
    unit: 'ratio',
    per: 'flock',
    needs: [`order-${id}`, ...orderNeeds],
    figures: prospectFigures,
    compute: (read) => chanceOf(read.number(`order-${id}`), read.number('birds-wanted'), prospectOf(read)),
  }),
];

const sumOf = (values: readonly { readonly value: Value | undefined }[]): number =>
  values.reduce((sum, { value }) => sum + Number(value ?? 0), 0);

export const orderFacts = [
  defineFact({
    id: 'birds-wanted',
    unit: 'bird',
    per: 'flock',
    needs: ['birds-for-eating', 'eating-time'],
    compute: (read) => {
      const birds = read.number('birds-for-eating');
      read.assume('birds-for-eating', {
        birds: { value: birds, unit: 'bird' },
        time: { value: read.number('eating-time'), unit: 'day' },
      });
      return birds;
    },
  }),
  defineFact({
    id: 'order-kind',
    unit: null,
    per: 'flock',
    compute: (read) => {
      const named = read.state.groups.find((group) => read.named.includes(group.name));
      if (named === undefined) read.assume('chicks-of-the-fast-kind');
      return named?.kind ?? usualKind;
    },
  }),
  defineFact({
    id: 'box-loss',
    unit: 'ratio',
    per: 'flock',
    each: ['boxed', 'dead-on-arrival'],
    figures: ['order/dead-in-box', 'order/box-table-counts-as'],
    compute: (read) => {
      const weight = read.figure('order/box-table-counts-as');
      const dead = weight * read.figure('order/dead-in-box') + sumOf(read.each('dead-on-arrival'));
      return dead / (weight + sumOf(read.each('boxed')));
    },
  }),
  defineFact({
    id: 'order-ready-age',
    unit: 'day',
    per: 'flock',
    needs: ['order-kind', ...readyNeeds],
    figures: readyFigures,
    compute: (read) => readyAge(read, read.text('order-kind')),
  }),
  // Birds that a question is about before any have come: as many as it names, ready on the day it asks about.
  defineFact({
    id: 'birds-thought-of',
    unit: 'bird',
    per: 'flock',
    wants: ['birds-told', 'planned-birds'],
    compute: (read) => read.maybe('birds-told') ?? read.maybe('planned-birds'),
  }),
  defineFact({
    id: 'hatch-thought-of',
    unit: 'date',
    per: 'flock',
    needs: ['order-ready-age'],
    compute: (read) => addDays(read.on, -read.number('order-ready-age')),
  }),
  defineFact({
    id: 'growing-loss',
    unit: 'ratio',
    per: 'flock',
    needs: ['loss-rate', 'order-kind', 'order-ready-age'],
    figures: ['losses/pattern'],
    compute: (read) => {
      const behind = read.figure('losses/pattern', [read.text('order-kind'), read.number('order-ready-age')]);
      return Math.min(1, read.number('loss-rate') * behind);
    },
  }),
  defineFact({
    id: 'order-loss',
    unit: 'ratio',
    per: 'flock',
    needs: ['box-loss', 'growing-loss', 'loss-told'],
    compute: (read) =>
      read.number('loss-told') || 1 - (1 - read.number('box-loss')) * (1 - read.number('growing-loss')),
  }),
  // Only a question says these: "90 % sure", "is 10 % extra enough", "if 8 % die".
  defineFact({ id: 'percent-told', unit: 'ratio', per: 'flock', compute: () => 0 }),
  defineFact({ id: 'losses-said', unit: null, per: 'flock', compute: () => 'no' }),
  defineFact({
    id: 'loss-told',
    unit: 'ratio',
    per: 'flock',
    needs: ['percent-told', 'losses-said'],
    compute: (read) => (read.text('losses-said') === 'yes' ? read.number('percent-told') : 0),
  }),
  defineFact({
    id: 'overage',
    unit: 'ratio',
    per: 'flock',
    needs: ['percent-told', 'loss-told'],
    figures: ['order/overage-below'],
    compute: (read) => {
      const told = read.number('percent-told');
      if (told === 0 || read.number('loss-told') > 0) return 0;
      return told <= read.figure('order/overage-below') ? told : 0;
    },
  }),
  defineFact({
    id: 'certainty',
    unit: 'ratio',
    per: 'flock',
    needs: ['percent-told', 'loss-told', 'overage'],
    figures: ['order/certainty'],
    compute: (read) => {
      const told = read.number('percent-told');
      const isMeant = read.number('loss-told') === 0 && read.number('overage') === 0;
      // Nothing living is certain: at 100 % no order would do.
      if (isMeant && told > 0 && told < 1) return told;
      return settingNumber(read, 'certainty') ?? read.figure('order/certainty');
    },
  }),
  defineFact({
    id: 'order',
    unit: 'bird',
    per: 'flock',
    needs: ['certainty', ...orderNeeds],
    figures: prospectFigures,
    compute: (read) => smallestOrder(read.number('birds-wanted'), read.number('certainty'), prospectOf(read)),
  }),
  defineFact({
    id: 'order-extras',
    unit: 'bird',
    per: 'flock',
    needs: ['order', 'birds-wanted'],
    compute: (read) => read.number('order') - read.number('birds-wanted'),
  }),
  defineFact({
    id: 'order-chance',
    unit: 'ratio',
    per: 'flock',
    needs: ['order', ...orderNeeds],
    figures: prospectFigures,
    compute: (read) => chanceOf(read.number('order'), read.number('birds-wanted'), prospectOf(read)),
  }),
  defineFact({
    id: 'expected-alive',
    unit: 'bird',
    per: 'flock',
    needs: ['order', 'order-loss'],
    compute: (read) => read.number('order') * (1 - read.number('order-loss')),
  }),
  ...chanceBeside('two-fewer', -2),
  ...chanceBeside('one-fewer', -1),
  ...chanceBeside('two-more', 2),
  defineFact({
    id: 'chance-without-extras',
    unit: 'ratio',
    per: 'flock',
    needs: orderNeeds,
    figures: prospectFigures,
    compute: (read) => chanceOf(read.number('birds-wanted'), read.number('birds-wanted'), prospectOf(read)),
  }),
  defineFact({
    id: 'order-with-overage',
    unit: 'bird',
    per: 'flock',
    needs: ['birds-wanted', 'overage'],
    compute: (read) => wholeUp(read.number('birds-wanted') * (1 + read.number('overage'))),
  }),
  defineFact({
    id: 'chance-with-overage',
    unit: 'ratio',
    per: 'flock',
    needs: ['order-with-overage', ...orderNeeds],
    figures: prospectFigures,
    compute: (read) =>
      chanceOf(read.number('order-with-overage'), read.number('birds-wanted'), prospectOf(read)),
  }),
];
