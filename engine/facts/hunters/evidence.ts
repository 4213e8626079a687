/** What speaks for and against each hunter, and which of them are likely: points of a declared table, added up. */
import { addDays } from '../../day.ts';
import { defineFact, type Reader } from '../define.ts';
import { asNamed, idsIn } from '../named-list.ts';

const table = 'hunters/evidence';
const pointFigures = [
  table,
  'hunters/usual',
  'hunters/named-points',
  'hunters/taken-points',
  'hunters/seen-points',
  'pasture/hunters-remembered',
];
/** Signs by which a hunter that is named was really there. */
const beingThere = ['tracks', 'hunter-seen', 'hawk-seen'];

/** What gives a hunter points, or takes them. */
interface Weight {
  readonly id: string;
  readonly points: number;
}

/** Entries of a list that are recent enough to count. */
const lately = <T extends { readonly on: string }>(read: Reader, entries: readonly T[]): readonly T[] => {
  const since = addDays(read.on, -read.figure('pasture/hunters-remembered'));
  return entries.filter((each) => each.on > since && each.on <= read.on);
};

/** Hunters that losses of late were put down to. */
const blamed = (read: Reader): readonly string[] => {
  const losses = lately(
    read,
    read.state.groups.flatMap((group) => group.losses),
  ).filter((each) => read.causeClass(each.cause) === 'hunter');
  read.from(...losses);
  return [...new Set(losses.map((each) => each.cause))];
};

const hunters = (read: Reader): readonly string[] => read.namesOf(table);

/** Points that one sign gives a hunter; 0 where the table says nothing. */
const points = (read: Reader, hunter: string, sign: string): number =>
  read.maybeFigure(table, [hunter, sign]) ?? 0;

/** Everything that gives or takes a hunter points: signs, having been named or seen, losses put down to it, and how usual it is. */
const weighed = (read: Reader, hunter: string): readonly Weight[] => {
  const signs = idsIn(read.text('hunter-evidence'));
  const wasThere = signs.some((sign) => beingThere.includes(sign));
  const named = idsIn(read.text('causes-told')).includes(hunter);
  const beside: readonly Weight[] = [
    ...(named
      ? [{ id: 'named', points: read.figure(wasThere ? 'hunters/seen-points' : 'hunters/named-points') }]
      : []),
    ...(blamed(read).includes(hunter)
      ? [{ id: 'took-birds', points: read.figure('hunters/taken-points') }]
      : []),
    { id: 'usual', points: read.figure('hunters/usual', [hunter]) },
  ];
  return [...signs.map((id) => ({ id, points: points(read, hunter, id) })), ...beside];
};

const sum = (weights: readonly Weight[]): number => weights.reduce((all, each) => all + each.points, 0);

/** What gives points in one direction, each with its points, the weightiest first. */
const inDirection = (weights: readonly Weight[], direction: 1 | -1): string =>
  weights
    .filter((each) => each.points * direction > 0)
    .sort((a, b) => (b.points - a.points) * direction || (a.id < b.id ? -1 : 1))
    .map((each) => `${each.id}=${each.points}`)
    .join(' ');

/** The hunter at a place of the ranking, 1 for the likeliest. */
const rankedFact = (id: string, place: number) =>
  defineFact({
    id,
    unit: 'named',
    per: 'flock',
    needs: ['hunter-ranking'],
    compute: (read) => idsIn(read.text('hunter-ranking'))[place - 1]?.split('=')[0],
  });

const speaksFact = (id: string, hunter: string, direction: 1 | -1) =>
  defineFact({
    id,
    unit: 'named',
    per: 'flock',
    needs: [hunter, 'hunter-evidence', 'causes-told'],
    figures: pointFigures,
    compute: (read) => inDirection(weighed(read, read.text(hunter)), direction),
  });

export const evidenceFacts = [
  defineFact({
    id: 'hunter-evidence',
    unit: 'named',
    per: 'flock',
    needs: ['signs-told', 'told-by-night', 'told-by-day', 'told-in-brooder'],
    figures: [table, 'pasture/hunters-remembered'],
    compute: (read) => {
      const recorded = lately(read, read.state.signs).filter(
        (each) => read.signClass(each.sign) === 'hunter',
      );
      read.from(...recorded);
      const seen = [...idsIn(read.text('signs-told')), ...recorded.map((each) => each.sign)];
      const left = [...new Set(seen)].filter((sign) =>
        hunters(read).some((hunter) => points(read, hunter, sign) !== 0),
      );
      // When and where it came is only of use beside what it left.
      const beside = [
        ...(read.text('told-by-night') === 'yes' ? ['by-night'] : []),
        ...(read.text('told-by-day') === 'yes' ? ['by-day'] : []),
        ...(read.text('told-in-brooder') === 'yes' ? ['in-brooder'] : []),
      ];
      return asNamed(left.length > 0 ? [...left, ...beside] : []);
    },
  }),
  defineFact({
    id: 'hunter-signs',
    unit: 'sign',
    per: 'flock',
    needs: ['hunter-evidence'],
    compute: (read) => idsIn(read.text('hunter-evidence')).length,
  }),
  defineFact({
    id: 'named-hunters',
    unit: 'named',
    per: 'flock',
    needs: ['causes-told'],
    figures: [table, 'pasture/hunters-remembered'],
    compute: (read) => {
      const told = idsIn(read.text('causes-told')).filter((each) => hunters(read).includes(each));
      return asNamed([...new Set([...told, ...(told.length > 0 ? [] : blamed(read))])]);
    },
  }),
  defineFact({
    id: 'hunters-named',
    unit: null,
    per: 'flock',
    needs: ['named-hunters'],
    compute: (read) => idsIn(read.text('named-hunters')).length,
  }),
  defineFact({
    id: 'hunter-ranking',
    unit: 'named',
    per: 'flock',
    needs: ['hunter-evidence', 'causes-told'],
    figures: pointFigures,
    compute: (read) => {
      const all = hunters(read)
        .map((hunter) => ({ hunter, weights: weighed(read, hunter) }))
        // Being usual alone is no reason to suspect it.
        .filter(({ weights }) => weights.some(({ id, points: given }) => id !== 'usual' && given > 0))
        .map(({ hunter, weights }) => ({ hunter, points: sum(weights) }));
      const ranked = all.sort((a, b) => b.points - a.points || (a.hunter < b.hunter ? -1 : 1));
      return ranked.map((each) => `${each.hunter}=${each.points}`).join(' ');
    },
  }),
  rankedFact('likely-hunter', 1),
  rankedFact('second-hunter', 2),
  rankedFact('third-hunter', 3),
  speaksFact('likely-for', 'likely-hunter', 1),
  speaksFact('likely-against', 'likely-hunter', -1),
  speaksFact('second-for', 'second-hunter', 1),
  speaksFact('second-against', 'second-hunter', -1),
  speaksFact('third-for', 'third-hunter', 1),
  speaksFact('third-against', 'third-hunter', -1),
  ...(['likely', 'second', 'third'] as const).map((place, index) =>
    defineFact({
      id: `${place}-points`,
      unit: 'point',
      per: 'flock',
      needs: ['hunter-ranking'],
      compute: (read) => {
        const points = idsIn(read.text('hunter-ranking'))[index]?.split('=')[1];
        return points === undefined ? undefined : Number(points);
      },
    }),
  ),
  defineFact({
    id: 'hunter-lead',
    unit: 'point',
    per: 'flock',
    needs: ['likely-points'],
    wants: ['second-points'],
    // Nobody second means that nothing speaks for anybody else.
    compute: (read) => read.number('likely-points') - Number(read.maybe('second-points') ?? 0),
  }),
  ...(['second', 'third'] as const).map((place) =>
    defineFact({
      id: `${place}-behind`,
      unit: 'point',
      per: 'flock',
      needs: ['likely-points', `${place}-points`],
      compute: (read) => read.number('likely-points') - read.number(`${place}-points`),
    }),
  ),
];
