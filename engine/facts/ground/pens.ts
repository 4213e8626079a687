/** Which pens each group lives in and what happened to every pen: set down, moved, taken away. */
import type { Day } from '../../day.ts';
import type { FromEntry, PenMove } from '../../types.ts';
import { defineFact, type Reader } from '../define.ts';
import { settingNumber } from '../setting.ts';
import type { Stride } from '../sums/path.ts';
import { type Happening, happeningsUntil, stripNumber, toTime } from './happenings.ts';

export interface PensOnGround {
  /** All that happened to the pens, in order. */
  readonly strides: readonly Stride[];
  /** Group → the pens it lives in now. */
  readonly homes: ReadonlyMap<string, readonly string[]>;
  /** Group → since when it has lived in them. */
  readonly since: ReadonlyMap<string, Day>;
}

/** What a fact must declare in `each` to use `pensOnGround`. */
export const penEach = ['pens-of-group'];

/** What decides which pens there are: how many each group wants, and how many there are in all. */
interface Pens {
  readonly wanted: ReadonlyMap<string, number>;
  readonly count: number;
}

const pensIn = (read: Reader): Pens => {
  const wanted = new Map(
    read.each('pens-of-group').map(({ group, value }) => [group.name, Number(value ?? 1)]),
  );
  // Where nobody has said how many pens there are, each group has its own.
  const inAll = [...wanted.values()].reduce((sum, each) => sum + each, 0);
  return { wanted, count: Math.max(1, settingNumber(read, 'pens') ?? inAll) };
};

/** Follows the pens through what happened. A group that finds no pen free shares that of the group which came out last. */
const follow = (happenings: readonly Happening[], { wanted, count }: Pens): PensOnGround => {
  const pens = Array.from({ length: count }, (_, n) => `pen ${n + 1}`);
  const homes = new Map<string, readonly string[]>();
  const since = new Map<string, Day>();
  const strides: Stride[] = [];

  const isHeld = (pen: string): boolean => [...homes.values()].some((held) => held.includes(pen));
  const stride = (who: string, does: Stride['does'], { on }: FromEntry, move?: PenMove): void => {
    const lane = stripNumber(move?.strip ?? null);
    strides.push({ who, does, at: toTime(on), lane, by: move?.distance ?? null });
  };
  const leave = (group: string, entry: FromEntry): void => {
    const held = homes.get(group) ?? [];
    homes.delete(group);
    for (const pen of held) if (!isHeld(pen)) stride(pen, 'leaves', entry);
  };
  const settle = (group: string, held: readonly string[], entry: FromEntry): void => {
    homes.set(group, held);
    since.set(group, entry.on);
  };
  const takePens = (group: string, entry: FromEntry): void => {
    const free = pens.filter((pen) => !isHeld(pen)).slice(0, wanted.get(group) ?? 1);
    for (const pen of free) stride(pen, 'sets', entry);
    settle(group, free.length > 0 ? free : ([...homes.values()].at(-1) ?? []), entry);
  };

  for (const each of happenings) {
    const [first, ...others] = [...homes.keys()];
    if (each.is === 'move') {
      const { group } = each.move;
      const moved = new Set(group === null ? [...homes.values()].flat() : (homes.get(group) ?? []));
      for (const pen of moved) stride(pen, 'goes', each, each.move);
    } else if (each.is === 'out') {
      if (!homes.has(each.group)) takePens(each.group, each);
    } else if (each.is === 'home') leave(each.group, each);
    else if (each.is === 'mixed' && first !== undefined) {
      for (const group of others) {
        leave(group, each);
        settle(group, homes.get(first) ?? [], each);
      }
    } else if (each.is === 'parted') {
      const shared = others.filter((group) => sharesWith(homes, group).length > 0);
      for (const group of shared) {
        leave(group, each);
        takePens(group, each);
      }
    }
  }
  return { strides, homes, since };
};

/** Follows the same happenings again only where other pens are there for them. */
const following = (happenings: readonly Happening[]): ((pens: Pens) => PensOnGround) => {
  const known = new Map<string, PensOnGround>();
  return (pens) => {
    const key = JSON.stringify([pens.count, ...pens.wanted]);
    const found = known.get(key) ?? follow(happenings, pens);
    known.set(key, found);
    return found;
  };
};

/** The pens as they came to stand where they do on the day asked about. */
export const pensOnGround = (read: Reader): PensOnGround => {
  const happenings = happeningsUntil(read);
  const pens = pensIn(read);
  read.from(...happenings);
  return read.see(following, happenings)(pens);
};

/** The other groups in a group's pens. */
const sharesWith = (homes: PensOnGround['homes'], group: string): readonly string[] => {
  const own = homes.get(group) ?? [];
  return [...homes].flatMap(([name, held]) =>
    name !== group && held.some((pen) => own.includes(pen)) ? [name] : [],
  );
};

/** The other groups that live in a group's pens, with the day since which they do. */
export const besides = (
  read: Reader,
  group: string,
): readonly { readonly name: string; readonly since: Day }[] => {
  const { homes, since } = pensOnGround(read);
  const own = since.get(group) ?? read.on;
  return sharesWith(homes, group).map((name) => {
    const other = since.get(name) ?? read.on;
    return { name, since: [own, other].sort().at(-1) ?? own };
  });
};

export const penFacts = [
  defineFact({
    id: 'pens-of-group',
    unit: null,
    needs: ['pens', 'arrived-alive'],
    wants: ['pen-area'],
    figures: ['pasture/pen-space-least'],
    compute: (read) => {
      const area = read.maybe('pen-area');
      const room = read.number('arrived-alive') * read.figure('pasture/pen-space-least');
      const wanted = area === undefined ? 1 : Math.ceil(room / Number(area) - 1e-9);
      const pens = Math.max(1, Math.min(wanted, read.number('pens')));
      if (pens > 1) read.assume('pens-by-room', { pens: { value: pens, unit: null } });
      return pens;
    },
  }),
];
