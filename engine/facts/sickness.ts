/** What the signs of sickness that were seen ask for: whom to call, whom to part, and what each of them may come of. */
import { defineFact, type Reader } from './define.ts';
import { signsOfSickness } from './losses.ts';
import { asNamed } from './named-list.ts';

const seen = { needs: ['signs-told'], figures: ['health/signs-stand'] } as const;

/** How many of the signs seen a table marks with 1. */
const marked = (read: Reader, table: string): number =>
  signsOfSickness(read).reduce((sum, sign) => sum + (read.maybeFigure(table, [sign]) ?? 0), 0);

/** Facts that are yes when one of these signs was seen. */
const showsFacts = (
  [
    ['shows-blood', ['bloody-droppings']],
    ['shows-pasted-vent', ['pasty-vent']],
    ['shows-bad-legs', ['lame']],
    ['shows-lying-on-back', ['flipped']],
    ['shows-short-breath', ['gasping']],
    ['shows-weak-heart', ['blue-comb', 'big-belly']],
  ] as const
).map(([id, signs]) =>
  defineFact({
    id,
    unit: null,
    needs: [...seen.needs],
    figures: [...seen.figures],
    compute: (read) =>
      signsOfSickness(read).some((each) => signs.some((sign) => sign === each)) ? 'yes' : 'no',
  }),
);

const countFacts = (
  [
    ['vet-signs', 'health/vet-sign'],
    ['signs-to-part', 'health/keep-apart-sign'],
  ] as const
).map(([id, table]) =>
  defineFact({
    id,
    unit: 'sign',
    needs: [...seen.needs],
    figures: [...seen.figures, table],
    compute: (read) => marked(read, table),
  }),
);

export const sicknessFacts = [
  ...countFacts,
  ...showsFacts,
  defineFact({
    id: 'signs-seen',
    unit: 'named',
    needs: [...seen.needs],
    figures: [...seen.figures],
    compute: (read) => asNamed(signsOfSickness(read)),
  }),
  defineFact({
    id: 'sick-birds',
    unit: 'bird',
    needs: [...seen.needs],
    figures: [...seen.figures],
    compute: (read) => {
      const signs = signsOfSickness(read);
      const counted = read.state.signs.filter(
        (each) => each.count !== null && signs.includes(each.sign) && each.group === read.group.name,
      );
      read.from(...counted);
      // One bird may show several signs: the most counted with one sign is the least that are sick.
      return Math.max(signs.length > 0 ? 1 : 0, ...counted.map((each) => each.count ?? 0));
    },
  }),
  defineFact({
    id: 'looks-sick',
    unit: null,
    needs: ['sick-signs', 'lost-today-and-yesterday'],
    figures: ['health/telephone-deaths'],
    compute: (read) =>
      read.number('sick-signs') > 0 ||
      read.number('lost-today-and-yesterday') >= read.figure('health/telephone-deaths')
        ? 'yes'
        : 'no',
  }),
  defineFact({
    id: 'other-groups',
    unit: null,
    compute: (read) =>
      read.state.groups.filter((each) => each.name !== read.group.name && each.arrived <= read.on).length,
  }),
];
