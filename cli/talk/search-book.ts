/** Which rules and figures some words are about: by name, wording and source, and by a number that is in them. */
import { leavesOf } from '../../engine/rulebook/conditions.ts';
import type { Figure, FigureTable, Rule, Rulebook } from '../../engine/types.ts';
import { readQuantity, shownUnit, toBase } from '../../engine/units.ts';
import { isSmall } from '../understand/phrase-index.ts';
import { stemOf } from '../understand/stem.ts';

export interface Hit {
  readonly kind: 'rule' | 'figure';
  readonly id: string;
  readonly score: number;
}

/** How much a word counts by where it stands; a number that is the figure's own says more than any word. */
const weights = { name: 3, question: 2, wording: 1.5, source: 1, number: 6, ofFigure: 0.6 };

/** A shorter stem begins too many other words. */
const shortest = 3;

/** Words of asking for a rule, which say nothing of which one. */
const askingWords = new Set(
  'does do did can could would should is was were to in at on by or and not no any so if with for into as rule rules figure figures number numbers value source sources come comes came from says say said show list tell get got where who which what why how about behind use uses used using own my your yours our published official book reference citation basis give gives read find search look all every penside wait need needs should must please'
    .split(' ')
    .map(stemOf),
);

const stemsIn = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .replace(/\{[^}]*\}/g, ' ')
    .split(/[^a-z]+/)
    .filter((word) => word.length > 1)
    .map(stemOf);

/** The words that say which one is meant: without numbers, units, and the words of asking. */
export const tellingWords = (book: Rulebook, words: string): readonly string[] => {
  const units = new Set([
    ...book.units.list.flatMap((unit) => [unit.id.toLowerCase(), ...unit.words]),
    'degree',
    'degrees',
  ]);
  const said = words
    .toLowerCase()
    .replace(/[’']s\b/g, '')
    .split(/[^a-z]+/)
    .filter((word) => word.length > 1 && !isSmall(word) && !units.has(word));
  return [...new Set(said.map(stemOf))].filter((stem) => !askingWords.has(stem));
};

/** A number said, with the dimension that it measures where one was said, in base units of it. */
interface Said {
  readonly dimension: string | null;
  readonly value: number;
}

/** Numbers in the words; degrees without a letter are those that the place is shown. */
export const numbersSaid = (book: Rulebook, words: string, system: 'us' | 'metric'): readonly Said[] => {
  const degrees = shownUnit(book.units, 'C', system);
  return [...words.matchAll(/(\d+(?:\.\d+)?)\s*°?\s*([a-z%²³]*)/gi)].map(([, number = '', unit = '']) => {
    const name = /^(deg|degrees?)$/i.test(unit) ? degrees : unit;
    const quantity = name === '' ? undefined : readQuantity(book.units, `${number} ${name}`);
    return quantity === undefined
      ? { dimension: null, value: Number(number) }
      : {
          dimension: book.units.byId[quantity.unit]?.dimension ?? null,
          value: toBase(book.units, quantity),
        };
  });
};

const cellsOf = (cell: number | FigureTable): number[] =>
  typeof cell === 'number' ? [cell] : Object.values(cell).flatMap(cellsOf);

/** Numbers are said rounded. */
const near = (one: number, other: number): boolean => Math.abs(one - other) <= Math.abs(other) * 0.01 + 1e-9;

const hasNumber = (book: Rulebook, figure: Figure, said: Said): boolean => {
  const unit = book.units.byId[figure.unit];
  if (unit === undefined || (said.dimension !== null && said.dimension !== unit.dimension)) return false;
  return figure.values
    .flatMap(({ value }) => cellsOf(value))
    .some((value) =>
      near(said.dimension === null ? value : toBase(book.units, { value, unit: figure.unit }), said.value),
    );
};

interface Place {
  readonly stems: ReadonlySet<string>;
  readonly weight: number;
}

const placesOf = (
  book: Rulebook,
  id: string,
  question: string,
  wording: string,
  sources: readonly string[],
): readonly Place[] => {
  const from = sources.flatMap((source) => {
    const found = book.sources[source];
    return found === undefined ? [] : [`${found.author} ${found.title}`];
  });
  return [
    { stems: new Set(stemsIn(id)), weight: weights.name },
    { stems: new Set(stemsIn(question)), weight: weights.question },
    { stems: new Set(stemsIn(wording)), weight: weights.wording },
    { stems: new Set(stemsIn(from.join(' '))), weight: weights.source },
  ];
};

const rulePlaces = (book: Rulebook, rule: Rule): readonly Place[] => {
  const because = leavesOf(rule.when).map(({ leaf }) => leaf.because);
  const offer = book.questions[rule.question]?.offer ?? '';
  return placesOf(
    book,
    rule.id,
    `${rule.question} ${offer}`,
    [rule.says, rule.whyRight, ...because].join(' '),
    [rule.source],
  );
};

const figurePlaces = (book: Rulebook, figure: Figure): readonly Place[] =>
  placesOf(
    book,
    figure.id,
    '',
    [figure.description, ...figure.values.flatMap(({ note }) => note ?? [])].join(' '),
    figure.values.map(({ source }) => source),
  );

/** A stem counts where it counts most; a stem that begins a longer word is meant by it as well. */
const scoreWords = (stems: readonly string[], places: readonly Place[]): number =>
  stems.reduce((sum, stem) => {
    const found = places
      .filter(
        ({ stems: there }) =>
          there.has(stem) || (stem.length >= shortest && [...there].some((each) => each.startsWith(stem))),
      )
      .map(({ weight }) => weight);
    return sum + Math.max(0, ...found);
  }, 0);

/** All rules and figures that the words are about, best first; equal ones in the order of their ids. */
export const searchBook = (book: Rulebook, words: string, system: 'us' | 'metric'): readonly Hit[] => {
  const stems = tellingWords(book, words);
  const numbers = numbersSaid(book, words, system);
  const byNumber = new Set(
    Object.values(book.figures)
      .filter((figure) => numbers.some((said) => hasNumber(book, figure, said)))
      .map(({ id }) => id),
  );
  const figures = Object.values(book.figures).map(
    (figure): Hit => ({
      kind: 'figure',
      id: figure.id,
      score: scoreWords(stems, figurePlaces(book, figure)) + (byNumber.has(figure.id) ? weights.number : 0),
    }),
  );
  const rules = Object.values(book.rules).map((rule): Hit => {
    const rests = leavesOf(rule.when).some(({ leaf }) => leaf.figure !== null && byNumber.has(leaf.figure));
    const said = scoreWords(stems, rulePlaces(book, rule));
    return { kind: 'rule', id: rule.id, score: said + (rests ? weights.number * weights.ofFigure : 0) };
  });
  return [...figures, ...rules]
    .filter(({ score }) => score > 0)
    .sort((a, b) => b.score - a.score || (a.id < b.id ? -1 : 1));
};
