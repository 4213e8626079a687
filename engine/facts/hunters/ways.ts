/** Which ways the hunters to reckon with come in, and what of the pen stands against them. */
import { defineFact } from '../define.ts';
import { asNamed, idsIn } from '../named-list.ts';
import { settingFlag } from '../setting.ts';

/** Facts that are yes when one of the hunters to reckon with comes this way. */
const wayFacts = (
  [
    ['comes-from-above', 'hunters/above'],
    ['climbs-in', 'hunters/climbs'],
    ['digs-in', 'hunters/digs'],
    ['slips-in', 'hunters/slips-through'],
    ['reaches-in', 'hunters/reaches-through'],
    ['breaks-in', 'hunters/breaks-in'],
    ['comes-by-night', 'hunters/by-night'],
    ['comes-to-feed', 'hunters/for-feed'],
    ['takes-chicks', 'hunters/takes-chicks'],
    ['is-protected', 'hunters/protected'],
    ['is-somebodys', 'hunters/owned'],
  ] as const
).map(([id, table]) =>
  defineFact({
    id,
    unit: null,
    per: 'flock',
    needs: ['hunters-to-reckon-with'],
    figures: [table],
    compute: (read) =>
      idsIn(read.text('hunters-to-reckon-with')).some((hunter) => read.figure(table, [hunter]) > 0)
        ? 'yes'
        : 'no',
  }),
);

export const wayInFacts = [
  defineFact({
    id: 'hunters-to-reckon-with',
    unit: 'named',
    per: 'flock',
    needs: ['hunter-signs', 'named-hunters', 'hunter-ranking'],
    figures: ['hunters/not-ruled-out', 'hunters/most-shown'],
    compute: (read) => {
      const named = idsIn(read.text('named-hunters'));
      if (read.number('hunter-signs') === 0) return asNamed(named);
      const ranked = idsIn(read.text('hunter-ranking')).map((each) => each.split('='));
      const best = Number(ranked[0]?.[1]);
      const near = ranked
        .filter(([, points]) => best - Number(points) <= read.figure('hunters/not-ruled-out'))
        .slice(0, read.figure('hunters/most-shown'));
      return asNamed([...new Set([...near.map(([hunter = '']) => hunter), ...named])]);
    },
  }),
  ...wayFacts,
  defineFact({
    id: 'pen-closed',
    unit: null,
    per: 'flock',
    compute: (read) => {
      const closed = settingFlag(read, 'pen-cover');
      return closed === undefined ? 'not-told' : closed ? 'yes' : 'no';
    },
  }),
  defineFact({
    id: 'round-the-pens',
    unit: 'm',
    per: 'flock',
    needs: ['pens'],
    compute: (read) => {
      const size = read.state.settings.pen?.at(-1);
      if (size === undefined || size.size === null) return undefined;
      read.from(size);
      return 2 * (size.size[0] + size.size[1]) * read.number('pens');
    },
  }),
  defineFact({
    id: 'birds-in-brooder',
    unit: 'bird',
    per: 'flock',
    each: ['alive', 'place'],
    compute: (read) => {
      const places = read.each('place');
      return read
        .each('alive')
        .filter((_, index) => places[index]?.value === 'brooder')
        .reduce((sum, each) => sum + Number(each.value ?? 0), 0);
    },
  }),
];
